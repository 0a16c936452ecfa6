import { findText, lastText, rowEnd, standsAt } from "../read/row-bytes";
import { readRowTag } from "../read/scan-cells";
import { decoded } from "../read/sheet-pieces";
import type { RowPatch } from "./patch-rows";

const LESS_THAN = 0x3c;
const GREATER_THAN = 0x3e;
const QUOTE = 0x22;
const NUMBER = new TextEncoder().encode(' r="');

/**
 * The bytes of a run of whole rows with the changes made. Rows that nothing is asked of go out as the bytes
 * that came in; only the others are read.
 */
export function* patchedRows(bytes: Uint8Array, prefix: string, patch: RowPatch): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  if (patch.looksAtEveryCell) {
    yield encoder.encode(patch.apply(decoded(bytes), prefix));
    return;
  }
  let untouched = 0;
  const rows = new RowPlaces(bytes, prefix);
  let last = rows.lastNumber();
  for (;;) {
    // most rows go out as they came in: the next that is wanted behind them is looked for by its number
    if (last !== null && !patch.looksAtEveryRow) {
      const { nextWanted } = patch;
      if (nextWanted === null || nextWanted > last) {
        patch.passes(last);
        break;
      }
      if (!rows.jumpTo(nextWanted)) last = null;
    }
    if (!rows.next(patch.last)) break;
    if (Number.isFinite(rows.row) && !patch.wants(rows.row, rows.isNumbered)) {
      patch.passes(rows.row);
      continue;
    }
    if (rows.start > untouched) yield bytes.subarray(untouched, rows.start);
    yield encoder.encode(patch.apply(decoded(bytes.subarray(rows.start, rows.end)), prefix));
    untouched = rows.end;
  }
  if (untouched < bytes.length) yield bytes.subarray(untouched);
}

/** The rows of some bytes, one after another. */
class RowPlaces {
  start = 0;
  end = 0;
  /** from 0; infinite for one without an end, of which the thorough reading tells */
  row = -1;
  isNumbered = false;
  private at: number;
  private readonly openText: string;
  private readonly open: Uint8Array;
  private readonly close: Uint8Array;

  constructor(
    private readonly bytes: Uint8Array,
    prefix: string,
  ) {
    this.openText = `<${prefix}row`;
    this.open = new TextEncoder().encode(this.openText);
    this.close = new TextEncoder().encode(`</${prefix}row`);
    this.at = bytes.indexOf(LESS_THAN);
  }

  /** Passes over all rows up to one that says its number as most do; false where none does. */
  jumpTo(row: number): boolean {
    if (this.at < 0) return false;
    const found = findText(this.bytes, new TextEncoder().encode(`${this.openText} r="${row + 1}"`), this.at);
    if (found >= 0) this.at = found;
    return found >= 0;
  }

  /** The number that the last row says of itself; null where it says none in the usual place, or has no end. */
  lastNumber(): number | null {
    const at = lastText(this.bytes, this.open);
    return at < 0 || rowEnd(this.bytes, at, this.close) < 0
      ? null
      : plainNumber(this.bytes, at + this.open.length);
  }

  /** Goes to the next row, `last` being the number of the one before; false where there is none. */
  next(last: number): boolean {
    const { bytes, open } = this;
    while (this.at >= 0 && !(standsAt(bytes, this.at, open) && isNameEnd(bytes[this.at + open.length])))
      this.at = bytes.indexOf(LESS_THAN, this.at + 1);
    if (this.at < 0) return false;
    this.start = this.at;
    const end = rowEnd(bytes, this.start, this.close);
    if (end < 0) {
      this.end = bytes.length;
      this.row = Number.POSITIVE_INFINITY;
      this.isNumbered = false;
      this.at = -1;
      return true;
    }
    this.end = end;
    const number = plainNumber(bytes, this.start + open.length);
    const tag =
      number === null ? readRowTag(decoded(bytes.subarray(this.start, end)), this.openText, last) : null;
    this.row = number ?? tag!.row;
    this.isNumbered = tag?.isNumbered ?? true;
    this.at = bytes.indexOf(LESS_THAN, end);
    return true;
  }
}

/** The row that ` r="5"` names where it stands first, from 0; null where it does not. */
function plainNumber(bytes: Uint8Array, from: number): number | null {
  if (!standsAt(bytes, from, NUMBER)) return null;
  let at = from + NUMBER.length;
  let number = 0;
  for (; bytes[at]! >= 0x30 && bytes[at]! <= 0x39; at += 1) number = number * 10 + bytes[at]! - 0x30;
  return bytes[at] === QUOTE && number > 0 ? number - 1 : null;
}

function isNameEnd(code: number | undefined): boolean {
  return code !== undefined && (code === GREATER_THAN || code === 0x2f || code <= 32);
}
