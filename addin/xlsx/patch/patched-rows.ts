import { rowEnd, standsAt } from "../read/row-bytes";
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
  for (const { start, end, row, isNumbered } of rowsOf(bytes, prefix, patch)) {
    if (Number.isFinite(row) && !patch.wants(row, isNumbered)) {
      patch.passes(row);
      continue;
    }
    if (start > untouched) yield bytes.subarray(untouched, start);
    yield encoder.encode(patch.apply(decoded(bytes.subarray(start, end)), prefix));
    untouched = end;
  }
  if (untouched < bytes.length) yield bytes.subarray(untouched);
}

interface RowPlace {
  readonly start: number;
  readonly end: number;
  readonly row: number;
  readonly isNumbered: boolean;
}

function* rowsOf(bytes: Uint8Array, prefix: string, patch: RowPatch): Generator<RowPlace> {
  const openText = `<${prefix}row`;
  const open = new TextEncoder().encode(openText);
  const close = new TextEncoder().encode(`</${prefix}row`);
  let at = bytes.indexOf(LESS_THAN);
  while (at >= 0) {
    if (!standsAt(bytes, at, open) || !isNameEnd(bytes[at + open.length])) {
      at = bytes.indexOf(LESS_THAN, at + 1);
      continue;
    }
    const end = rowEnd(bytes, at, close);
    // one without an end is told of by the thorough reading
    if (end < 0) {
      yield { start: at, end: bytes.length, row: Number.POSITIVE_INFINITY, isNumbered: false };
      return;
    }
    const number = plainNumber(bytes, at + open.length);
    const tag = number === null ? readRowTag(decoded(bytes.subarray(at, end)), openText, patch.last) : null;
    yield { start: at, end, row: number ?? tag!.row, isNumbered: tag?.isNumbered ?? true };
    at = bytes.indexOf(LESS_THAN, end);
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
