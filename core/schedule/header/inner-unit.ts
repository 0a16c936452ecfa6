import type { ColumnUnit } from "../bar-row";
import { HEADER_UNITS } from "./header-units.data";

const UNITS: ReadonlyMap<string, ColumnUnit> = new Map(HEADER_UNITS.rows);
const INNER_UNIT =
  /^(.*\p{L}.*?)(?:,\s*\(?|\s*\(|\s+)(mm|cm|m|kgs?|t|lbs?|мм|см|м|кг|т)\)?\s+((?:1\s+)?\p{L}{2}.*)$/u;

/** "Mass, kg" over "of one": the unit stands among the words that two rows of a header make up. */
export function innerUnit(plain: string): { readonly text: string; readonly unit: ColumnUnit } | null {
  const [, before = "", written = "", after = ""] = INNER_UNIT.exec(plain) ?? [];
  const unit = UNITS.get(written);
  return unit === undefined ? null : { text: `${before} ${after}`, unit };
}
