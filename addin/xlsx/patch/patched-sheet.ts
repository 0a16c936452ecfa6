import type { SheetLayout } from "../read/read-sheet";
import { sheetPieces } from "../read/sheet-pieces";
import { attribute, xmlTags } from "../xml/xml-text";
import type { RowPatch } from "./patch-rows";
import { patchedRows } from "./patched-rows";

/** The bytes of a worksheet with its rows changed, and `head` and `tail` about them; the tail is asked for last. */
export function* patchedSheet(
  pieces: Iterable<Uint8Array>,
  patch: RowPatch,
  layout: SheetLayout,
): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  for (const piece of sheetPieces(pieces)) {
    if (piece.kind === "rows") yield* patchedRows(piece.bytes, piece.prefix, patch);
    else if (piece.kind === "head") yield encoder.encode(openedHead(layout.head));
    else yield encoder.encode(patch.remaining(piece.prefix) + closedTail(layout.tail, piece.prefix));
  }
}

/** `<sheetData/>` of an empty sheet is opened, so that rows can follow. */
function openedHead(head: string): string {
  return head.endsWith("/>") ? `${head.slice(0, -2).trimEnd()}>` : head;
}

function closedTail(tail: string, prefix: string): string {
  return tail.startsWith(`</${prefix}sheetData`) ? tail : `</${prefix}sheetData>${tail}`;
}

/** Style of a column that has no cell in a row. */
export function columnStyles(head: string): (column: number) => number {
  const spans = [...xmlTags(head)]
    .filter((tag) => tag.name === "col" && tag.kind !== "close")
    .map((tag) => ({
      first: Number(attribute(tag.attributes, "min") ?? 1) - 1,
      last: Number(attribute(tag.attributes, "max") ?? 1) - 1,
      style: Number(attribute(tag.attributes, "style") ?? 0),
    }));
  return (column) => spans.find((span) => column >= span.first && column <= span.last)?.style ?? 0;
}
