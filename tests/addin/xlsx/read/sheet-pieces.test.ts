import { describe, expect, it } from "vitest";
import { sheetPieces } from "../../../../addin/xlsx/read/sheet-pieces";

const ROWS = Array.from(
  { length: 60 },
  (_, row) => `<row r="${row + 1}"><c r="A${row + 1}"><v>${row * 7919}</v></c></row>`,
).join("\n");
const HEAD = '<worksheet xmlns="urn:x"><cols><col min="1" max="2"/></cols><sheetData>';
const TAIL = '</sheetData><mergeCells><mergeCell ref="A1:B1"/></mergeCells></worksheet>';
const BYTES = new TextEncoder().encode(HEAD + ROWS + TAIL);

/** One and the same memory for every piece, as an unpacker has it. */
function* inReusedMemory(size: number, bytes: Uint8Array): Generator<Uint8Array> {
  const room = new Uint8Array(size);
  for (let at = 0; at < bytes.length; at += size) {
    const part = bytes.subarray(at, at + size);
    room.fill(0x58);
    room.set(part);
    yield room.subarray(0, part.length);
  }
}

describe("sheetPieces", () => {
  it.each([1, 7, 33, 64, 500, 2000, BYTES.length])(
    "should cut a sheet the same whose pieces of %i bytes stand in memory that is used again",
    (size) => {
      const found = { head: "", rows: "", tail: "" };
      for (const piece of sheetPieces(inReusedMemory(size, BYTES)))
        found[piece.kind] += piece.kind === "rows" ? new TextDecoder().decode(piece.bytes) : piece.text;
      expect(found).toEqual({ head: HEAD, rows: ROWS, tail: TAIL });
    },
  );
});
