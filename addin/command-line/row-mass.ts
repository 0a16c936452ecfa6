import { RowFacts } from "../../core/audit/row-facts";
import { SheetFacts } from "../../core/audit/sheet-facts";
import type { ScheduleReading, Sheet } from "../../core/schedule";
import type { Standard } from "../../core/standards";

const MM_PER_METRE = 1000;

/** Mass of one bar row and what it rests on. */
export interface RowMass {
  /** kg */
  readonly mass: number;
  readonly from: "cut length" | "typed length" | "typed mass";
  readonly pour: string | null;
  readonly size: string;
}

/**
 * Mass of each bar row, kg: count, mass per metre and the cut length of its shape; the typed length where
 * the shape gives none; the typed mass where neither does. Null where none of them is held.
 */
export function rowMasses(sheet: Sheet, reading: ScheduleReading, standard: Standard): (RowMass | null)[] {
  const sheetFacts = new SheetFacts(sheet, reading);
  return reading.bars.map((row) => {
    const facts = new RowFacts(row, sheetFacts, standard);
    const { bar, count } = facts;
    const named = { pour: row.pour, size: facts.sizeName };
    const cut = facts.cut?.length ?? null;
    const length = cut ?? row.length;
    if (bar !== null && count !== null && length !== null) {
      const mass = (length / MM_PER_METRE) * bar.massPerMetre * count;
      return { mass, from: cut === null ? "typed length" : "cut length", ...named };
    }
    return row.mass === null ? null : { mass: row.mass, from: "typed mass", ...named };
  });
}
