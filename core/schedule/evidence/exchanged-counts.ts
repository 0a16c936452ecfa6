import { WEIGH } from "./evidence.data";
import type { Agreement } from "./reading-agreement";
import type { IdentityName, TableEvidence } from "./table-evidence";
import type { Words } from "./word-reading";

const AMOUNTS: ReadonlySet<IdentityName> = new Set<IdentityName>(["mass", "totalLength", "bySize"]);

/** Words give the total to another column, which by the rows counts one member's bars, and keep little so. */
export function isExchangedWithTotal(
  column: number,
  words: Words,
  ofWords: readonly Agreement[],
  { roles }: TableEvidence,
): boolean {
  const { wordsKeep } = WEIGH.value;
  if (ofWords.some(({ identity, share }) => AMOUNTS.has(identity) && share > wordsKeep)) return false;
  return [...words].some(
    ([other, { role }]) => other !== column && role === "total" && roles.get(other)?.role === "each",
  );
}
