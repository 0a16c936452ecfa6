import { MM_PER_UNIT } from "../units/unit-table";
import type { BarFacts } from "./bar-facts";
import { fewBlanks } from "./few-blanks";

/** "@ 150", "61 @ 20 c/c", "150 mm crs", "spacing 200", with what may stand behind it */
const AT =
  /@\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|in|")?\s*(?:$|[,;.()]|c\s?\/\s?c|o\.?c\b|crs|ctrs?|cts|cent|each|both|[EFNTBUL]{1,2}\d?\b)/i;
const CENTRES =
  /(?<!\d)(\d+(?:[.,]\d+)?)\s*(mm|cm|in|")?\s*(?:c\s?\/\s?c|o\.c\.|crs\b|ctrs?\b|cts\b|cent(?:re|er)s)/i;
const SPACING = /\bspac(?:ing|ed)\s*(?:at|of|:|=|@)?\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|in|")?/i;

/** a lower number is a count of something */
const LEAST = 10;
const LEAST_INCHES = 1;
/** beyond it a number without a unit is in mm */
const MOST_CM = 50;

/**
 * The spacing that a remark says, mm: in the unit typed, else in inches where the standard has them, in cm where the
 * sheet's lengths are in cm, or in metres and the number is small, and in mm; null where it says none.
 *
 * @example spacingSaid(facts) // 20, of "61 @ 20 c/c"
 */
export function spacingSaid({ row, standard }: BarFacts): number | null {
  const { remark } = row;
  if (remark === null || !/\d/.test(remark)) return null;
  const words = fewBlanks(remark);
  const found = AT.exec(words) ?? CENTRES.exec(words) ?? SPACING.exec(words);
  if (found === null) return null;
  const typed = found[2]?.toLowerCase().replace('"', "in");
  const value = Number((found[1] ?? "").replace(",", "."));
  const ofLengths = row.table.columns.get("length")?.unit;
  // who writes metres says centimetres: "@20"
  const isInCm = ofLengths === "cm" || (ofLengths === "m" && value <= MOST_CM);
  const unit = (typed ?? (isInCm ? "cm" : standard.unit)) as "mm" | "cm" | "in";
  return value < (unit === "in" ? LEAST_INCHES : LEAST) && unit !== "cm" ? null : value * MM_PER_UNIT[unit];
}
