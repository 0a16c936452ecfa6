import type { ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { IN_COLUMN_UNIT } from "../schedule/columns/in-column-unit";
import type { Sheet } from "../schedule/sheet";

/** A sum that the schedule gives for its masses, which the bars that were read do not come near. */
export interface SumBeyond {
  readonly sheet: string;
  readonly cell: string;
  /** kg */
  readonly mass: number;
  /** kg of all bars that were read */
  readonly made: number;
}

interface Read {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
}

/** a sum that most of the bars make is one's own slip, and told by itself */
const FAR = 1.2;
/** masses of one list by two tables */
const NEAR = 0.02;

/**
 * The heaviest of the schedules' own sums of mass, where it is far above what the bars make and no other sum is near
 * that: bars may have been read for one member of several, or not at all. Null where the sums bear the bars out.
 *
 * @param made kg of all bars that were read
 */
export function sumBeyond(schedules: readonly Read[], made: number): SumBeyond | null {
  let heaviest: SumBeyond | null = null;
  for (const { sheet, reading } of schedules) {
    for (const { row, cells, kind, table } of reading.totals) {
      const column = table?.columns.get("mass");
      const typed = cells.find((cell) => cell.column === column?.column)?.value;
      if (column === undefined || typed === undefined || kind === "summary") continue;
      const mass = typed * IN_COLUMN_UNIT[column.unit ?? "kg"];
      if (Math.abs(mass - made) <= NEAR * made) return null;
      if (mass <= (heaviest?.mass ?? 0)) continue;
      heaviest = { sheet: sheet.name, cell: cellAddress(sheet, row, column.column), mass, made };
    }
  }
  return heaviest !== null && made > 0 && heaviest.mass > FAR * made ? heaviest : null;
}
