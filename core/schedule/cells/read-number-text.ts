/** How a comma between digits is to be taken; `grouped` where commas are decimal and a point parts thousands. */
export type CommaUse = "thousands" | "decimal" | "grouped";

const PLAIN = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/;
const GROUPED = /^[+-]?\d{1,3}(?:[ ']\d{3})+(?:[.,]\d+)?$/;
const COMMA_GROUPS = /^[+-]?[1-9]\d{0,2}(?:,\d{2,3})*,\d{3}(?:\.\d+)?$/;
const DOT_GROUPS = /^[+-]?\d{1,3}(?:\.\d{3})+,\d+$/;
const POINT_GROUPS = /^[1-9]\d{0,2}(?:\.\d{3})+$/;
const ONE_COMMA = /^[+-]?\d+,\d+$/;

/**
 * The number of a cleaned text with blanks, apostrophes, commas or points between its groups; null
 * where it is none. A comma before exactly three digits follows `comma`; any other comma is decimal.
 *
 * @example readNumberText("1 250", "thousands") // 1250
 */
export function readNumberText(text: string, comma: CommaUse): number | null {
  if (comma === "grouped" && isGrouped(text)) return finite(Number(text.replace(/\./g, "")));
  if (PLAIN.test(text)) return finite(Number(text));
  if (GROUPED.test(text)) return finite(Number(text.replace(/[ ']/g, "").replace(",", ".")));
  if (DOT_GROUPS.test(text)) return finite(Number(text.replace(/\./g, "").replace(",", ".")));
  if (ONE_COMMA.test(text) && (comma !== "thousands" || !COMMA_GROUPS.test(text))) {
    return finite(Number(text.replace(",", ".")));
  }
  if (COMMA_GROUPS.test(text)) return finite(Number(text.replace(/,/g, "")));
  return null;
}

/** Points with three digits behind each: 1.250 and 12.400.000. */
export function isGrouped(text: string): boolean {
  return POINT_GROUPS.test(text);
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

const LOOKALIKES: ReadonlyMap<string, string> = new Map([
  ["O", "0"],
  ["o", "0"],
  ["Q", "0"],
  ["l", "1"],
  ["I", "1"],
  ["|", "1"],
  ["S", "5"],
  ["s", "5"],
  ["B", "8"],
  ["Z", "2"],
  ["z", "2"],
]);

/** The digits that a text with look-alike letters may have meant, or null: "1O5O" gives "1050". */
export function lookalikeDigits(text: string): string | null {
  if (!/^[\dOoQlI|SsBZz.,]{2,}$/.test(text) || !/\d/.test(text) || !/[^\d.,]/.test(text)) return null;
  return text.replace(/[^\d.,]/g, (sign) => LOOKALIKES.get(sign) ?? sign);
}
