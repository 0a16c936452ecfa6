import type { BarFacts } from "./bar-facts";

/** mm, outside: the two sides of a closed link whose A and B are its sides; null for any other bar. */
export function linkSides(facts: BarFacts): { readonly long: number; readonly short: number } | null {
  const { definition } = facts;
  if (definition === null || definition.closed !== true || definition.kind === "circle") return null;
  const a = facts.dim("A");
  const b = facts.dim("B");
  return a === null || b === null ? null : { long: Math.max(a, b), short: Math.min(a, b) };
}
