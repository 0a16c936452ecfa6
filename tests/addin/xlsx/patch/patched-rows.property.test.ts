import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RowPatch } from "../../../../addin/xlsx/patch/patch-rows";
import { patchedRows } from "../../../../addin/xlsx/patch/patched-rows";
import { PLAIN_STYLES, StylePatch } from "../../../../addin/xlsx/patch/style-patch";

/** Ways in which files write a row's tag; a row without a number follows its neighbour. */
const TAGS = [
  (row: number) => ` r="${row}"`,
  (row: number) => ` r="${row}" spans="1:3" ht="20"`,
  (row: number) => ` spans="1:3" r="${row}"`,
  (row: number) => ` r='${row}'`,
  () => "",
];

const written = fc
  .array(fc.record({ gap: fc.integer({ min: 1, max: 3 }), tag: fc.nat(30), cells: fc.nat(3) }), {
    minLength: 1,
    maxLength: 40,
  })
  .map((rows) => {
    let number = 0;
    return rows.map(({ gap, tag, cells }) => {
      // mostly the usual way, as in files
      const way = tag < TAGS.length ? tag : 0;
      number += way === 4 ? 1 : gap;
      const inside = Array.from(
        { length: cells },
        (_, column) => `<p:c r="${"ABC"[column]}${number}" s="1"><p:v>${number}</p:v></p:c>`,
      );
      const open = `<p:row${TAGS[way]!(number)}`;
      return cells === 0 ? `${open}/>` : `${open}>${inside.join("")}</p:row>`;
    });
  });

const wanted = fc.uniqueArray(fc.nat(90), { maxLength: 12 });

function patchOf(rows: readonly number[]): RowPatch {
  const flags = rows.map((row) => ({ row, firstColumn: 0, lastColumn: 2, colour: "unsafe" as const }));
  return new RowPatch(
    { flags },
    new StylePatch(PLAIN_STYLES),
    () => 0,
    () => 1,
  );
}

describe("patchedRows", () => {
  it("should write what a patch of the whole text writes, wherever the text is cut", () => {
    fc.assert(
      fc.property(written, wanted, fc.integer({ min: 1, max: 40 }), (rows, marked, run) => {
        for (const prefix of ["p:", ""]) {
          const own = rows.map((row) => (prefix === "" ? row.replaceAll("p:", "") : row));
          const whole = patchOf(marked);
          const expected = whole.apply(own.join(""), prefix) + whole.remaining(prefix);
          const inPieces = patchOf(marked);
          let text = "";
          for (let at = 0; at < own.length; at += run) {
            const bytes = new TextEncoder().encode(own.slice(at, at + run).join(""));
            for (const piece of patchedRows(bytes, prefix, inPieces)) text += new TextDecoder().decode(piece);
          }
          expect(text + inPieces.remaining(prefix)).toBe(expected);
        }
      }),
      { numRuns: 300 },
    );
  });
});
