import type { TableReading } from "../bar-row";
import { tellLooseBars } from "./loose-bars";
import { takeOtherTables } from "./other-tables";
import { passOverFoot, takeFootFromBars } from "./pass-over-foot";
import type { DraftRow } from "./row-draft";
import type { SheetSums } from "./sheet-sums";
import { type RowsRead, takeSumsOfSizes } from "./sums-of-sizes";

/** What only all rows together say of some of them: sums at the end, the foot, bars above all heads. True where bars were taken for them, or may be after an edit. */
export function settleRows(
  bars: DraftRow[],
  tables: readonly TableReading[],
  sums: SheetSums,
  read: RowsRead,
): boolean {
  const isSummed = takeSumsOfSizes(bars, sums, read);
  const isAsked = takeOtherTables(bars, sums, read);
  const hasFoot = takeFootFromBars(bars, read.classes, read.reasons, read.cells);
  passOverFoot(read.classes, read.reasons, bars.at(-1)?.row);
  tellLooseBars(read.classes, read.reasons, read.cells, tables, read.standard);
  return isSummed || isAsked || hasFoot;
}
