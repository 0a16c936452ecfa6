import { addressAt } from "../../../core/schedule/cell-address";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { hasBarFunction, storedFormula } from "../../workbook/bar-formula-names";
import { parseAddress } from "../../workbook/cell-address";
import { encodeCellText, encodeXml } from "./encode-xml";

/** What a cell is to hold. */
interface CellContent {
  readonly value: Cell;
  /** as typed, without the equals sign; `value` is its result as stored */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
}

interface Stored {
  /** the type attribute */
  readonly type: string;
  readonly content: string;
}

/** Where a cell stands and how its file is written. */
interface CellPlace {
  readonly address: string;
  /** the cell's attributes, its address among them */
  readonly attributes: string;
  /** of the file's elements: "x:" */
  readonly prefix?: string;
  /** the metadata that marks a dynamic array */
  arrayMark(): number;
  /** how a text that stands by itself is kept; in the cell where nothing else is said */
  storeText?(text: string): Stored;
}

/**
 * The XML of one cell: every writer's. A formula that fills several cells, or calls a BAR function, is a
 * dynamic array.
 */
export function cellXml(place: CellPlace, { value, formula, fills }: CellContent): string {
  const { prefix = "", address, attributes } = place;
  const open = `<${prefix}c${attributes}`;
  if (formula === undefined) {
    const { type, content } =
      typeof value === "string"
        ? (place.storeText?.(value) ?? textInCell(value, prefix))
        : storedResult(value, prefix);
    return content === "" ? `${open}/>` : `${open}${type}>${content}</${prefix}c>`;
  }
  const { type, content } = storedResult(value, prefix);
  const isArray = fills !== undefined || hasBarFunction(formula);
  const text = encodeXml(storedFormula(formula));
  const mark = isArray ? ` cm="${place.arrayMark()}"` : "";
  const kind = isArray ? ` t="array" ref="${filledRange(address, fills)}"` : "";
  return `${open}${type}${mark}><${prefix}f${kind}>${text}</${prefix}f>${content}</${prefix}c>`;
}

/** A text that stays in its cell, so that no other part of the file changes. */
function textInCell(value: string, prefix: string): Stored {
  const text = `<${prefix}t xml:space="preserve">${encodeCellText(value)}</${prefix}t>`;
  return { type: ' t="inlineStr"', content: `<${prefix}is>${text}</${prefix}is>` };
}

/** A value as a cell stores a formula's result: both empty for a blank. */
function storedResult(value: Cell, prefix: string): Stored {
  const v = (content: string): string => `<${prefix}v>${content}</${prefix}v>`;
  if (value === null) return { type: "", content: "" };
  if (typeof value === "number") return { type: "", content: v(String(value)) };
  if (typeof value === "boolean") return { type: ' t="b"', content: v(value ? "1" : "0") };
  if (isCellError(value)) return { type: ' t="e"', content: v(encodeXml(value.error)) };
  return { type: ' t="str"', content: v(encodeCellText(value)) };
}

/** Range that an array formula in `address` fills: "B2:C4", or the one cell. */
function filledRange(address: string, fills: CellContent["fills"]): string {
  const place = parseAddress(address);
  if (fills === undefined || place === null || (fills.rows === 1 && fills.columns === 1)) return address;
  return `${address}:${addressAt(place.row + fills.rows - 1, place.column + fills.columns - 1)}`;
}
