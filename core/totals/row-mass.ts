import { BarFacts } from "../bar/bar-facts";
import { SheetFacts } from "../bar/sheet-facts";
import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";

const MM_PER_METRE = 1000;
const DIGITS = 13;

/** Mass of one bar row and what it rests on. */
export interface RowMass {
  /** kg */
  readonly mass: number;
  readonly from: "cut length" | "typed length" | "typed mass";
  readonly pour: string | null;
  readonly size: string;
  /** mm of one bar */
  readonly cutLength: number | null;
  readonly count: number | null;
}

/**
 * Mass of each bar row, kg: count, mass per metre and the cut length of its shape; the typed length where
 * the shape gives none; the typed mass where neither does. Null where none of them is held.
 */
export function rowMasses(sheet: Sheet, reading: ScheduleReading, standard: Standard): (RowMass | null)[] {
  const sheetFacts = new SheetFacts(sheet, reading);
  return reading.bars.map((row) => {
    const facts = new BarFacts(row, sheetFacts, standard);
    const { bar, count } = facts;
    const cut = facts.cut?.length ?? null;
    const length = cut ?? row.length;
    const named = { pour: row.pour, size: facts.sizeName, cutLength: length, count };
    if (bar !== null && count !== null && length !== null) {
      // the same digits as a worksheet function gives: what lies beyond is noise of the float
      const mass = Number(((length / MM_PER_METRE) * bar.massPerMetre * count).toPrecision(DIGITS));
      return { mass, from: cut === null ? "typed length" : "cut length", ...named };
    }
    return row.mass === null ? null : { mass: row.mass, from: "typed mass", ...named };
  });
}
