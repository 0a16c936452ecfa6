import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { cellAddress, parseAddress } from "../../workbook/cell-address";
import { encodeCellText, encodeXml } from "../xml/encode-xml";

/** A value as a cell stores a formula's result: the type attribute and the `v` element, both empty for a blank. */
export function storedResult(value: Cell, prefix = ""): { type: string; content: string } {
  const v = (content: string): string => `<${prefix}v>${content}</${prefix}v>`;
  if (value === null) return { type: "", content: "" };
  if (typeof value === "number") return { type: "", content: v(String(value)) };
  if (typeof value === "boolean") return { type: ' t="b"', content: v(value ? "1" : "0") };
  if (isCellError(value)) return { type: ' t="e"', content: v(encodeXml(value.error)) };
  return { type: ' t="str"', content: v(encodeCellText(value)) };
}

/** Range that an array formula in `address` fills: "B2:C4", or the one cell. */
export function filledRange(
  address: string,
  fills?: { readonly rows: number; readonly columns: number },
): string {
  const place = parseAddress(address);
  if (fills === undefined || place === null || (fills.rows === 1 && fills.columns === 1)) return address;
  return `${address}:${cellAddress(place.row + fills.rows - 1, place.column + fills.columns - 1)}`;
}
