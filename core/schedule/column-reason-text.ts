import type { UnitReason } from "./bar-row";
import { columnWords } from "./columns/column-words";
import type { ColumnExplained } from "./explain-reading";

const UNIT_WORDS: Readonly<Record<UnitReason["code"], string>> = {
  written: "as its header says",
  standard: "the unit of the standard",
  magnitude: "by the size of its numbers",
  dimensions: "so that the dimensions make up the lengths",
  "against-header": "against its header, by the size of its numbers",
  arithmetic: "by the arithmetic of the rows",
  user: "as its user said",
};

/** What a column was taken for and why: "cut length in mm (as its header says), by words; 40 of 40 rows agree". */
export function columnReasonText({ kind, unit, by, unitBy, kept, tested }: ColumnExplained): string {
  const inUnit = unit === null ? "" : ` in ${unit}${unitBy === null ? "" : ` (${UNIT_WORDS[unitBy]})`}`;
  const agree =
    kept === null || tested === null ? "" : `; ${Math.round(kept)} of ${Math.round(tested)} rows agree`;
  return `${columnWords(kind)}${inUnit}, by ${by}${agree}`;
}
