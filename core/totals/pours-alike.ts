import { plain } from "../audit/sheet-revision";

/** Pours that differ by spaces, signs and letters' case alone, "P1" and "P 1": a question each. */
export function poursAlikeWords(pours: readonly string[]): string[] {
  const spellings = new Map<string, string[]>();
  for (const pour of pours) {
    const key = plain(pour);
    if (key === "") continue;
    const known = spellings.get(key);
    if (known === undefined) spellings.set(key, [pour]);
    else known.push(pour);
  }
  return [...spellings.values()]
    .filter((known) => known.length > 1)
    .map((known) => {
      const names = known.map((pour) => `"${pour}"`).join(", ");
      return `pours written ${names} are counted apart: are they one pour?`;
    });
}
