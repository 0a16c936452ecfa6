import type { RoleEvidence, TableEvidence } from "./table-evidence";
import type { Words } from "./word-reading";

/** The lengths are in the unit that words, a title or their magnitude give: the unit of what is made of them follows. */
export function followsLength(
  { role }: RoleEvidence,
  { lengthColumn, roles }: TableEvidence,
  words: Words,
): boolean {
  if (role === "length" || lengthColumn === null) return false;
  const unit = words.get(lengthColumn)?.unit ?? null;
  return unit !== null && roles.get(lengthColumn)?.unit === unit;
}
