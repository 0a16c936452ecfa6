import type { PackageParts } from "../read/package-parts";

/** Parts that nothing but the one part leads to: its drawings, charts and printer settings. */
export function partsOnlyOf(parts: PackageParts, part: string): string[] {
  const own = reached(parts, part, null);
  const others = reached(parts, "", part);
  return [...own].filter((name) => name !== part && !others.has(name));
}

/** Names of the parts that relationships lead to from a part, `past` not entered. */
function reached(parts: PackageParts, from: string, past: string | null): Set<string> {
  const known = new Set<string>();
  const waiting = [from];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const { target, external } of parts.relationships(at)) {
      const name = external ? null : parts.nameOf(target);
      if (name === null || name === past || known.has(name)) continue;
      known.add(name);
      waiting.push(name);
    }
  }
  return known;
}
