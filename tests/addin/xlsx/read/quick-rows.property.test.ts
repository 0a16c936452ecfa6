import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CellStore } from "../../../../addin/xlsx/read/cell-store";
import { QuickRows } from "../../../../addin/xlsx/read/quick-rows";
import { readSheet } from "../../../../addin/xlsx/read/read-sheet";

const strings = { texts: ["mark", "", "H16 ", "Länge"], struck: new Set([2]) };
const SOURCE = { name: "S", strings, formats: [], formulas: false, from1904: false };

/** Cells as programs write them, plain and not. */
const cell = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => `<v>${value}</v>`),
  fc.integer({ min: -1e9, max: 1e9 }).map((value) => `<v>${value / 1000}</v>`),
  fc
    .bigInt({ min: 0n, max: 10n ** 22n })
    .map((value) => `<v>${String(value).replace(/(\d{1,9})$/, ".$1")}</v>`),
  fc.constantFrom(
    "<v></v>",
    "<v>-</v>",
    "<v>1.</v>",
    "<v>.5</v>",
    "<v> 7 </v>",
    "<v>007</v>",
    "<v>x</v>",
    "<v/>",
    "",
  ),
  fc.constantFrom("<f>1+1</f><v>2</v>", "<f>A1</f>"),
);
const typed = fc.constantFrom(
  ' t="s"><v>0</v>',
  ' t="s"><v>1</v>',
  ' t="s"><v>2</v>',
  ' t="s"><v>3</v>',
  ' t="s"><v>9</v>',
  ' t="b"><v>1</v>',
  ' t="b"><v>0</v>',
  ' t="b"><v>2</v>',
  ' t="n"><v>12.5</v>',
  ' t="e"><v>#REF!</v>',
  ' t="inlineStr"><is><t>bar &amp; tie</t></is>',
  ' t="inlineStr"><is><t xml:space="preserve"> Länge_x000A_</t></is>',
  ' t="inlineStr"><is><r><t>two</t></r><r><t>runs</t></r></is>',
  ' t="inlineStr"><is><t></t></is>',
  ' t="str"><v>x</v>',
);
const cells = fc.array(
  fc.record({
    column: fc.constantFrom("A", "B", "C", "Z", "AB", "XFD", "XFE", ""),
    style: fc.constantFrom("", ' s="3"', ' s="70000"'),
    inside: fc.oneof(
      cell.map((inside) => `>${inside}`),
      typed,
    ),
  }),
  { maxLength: 4 },
);
const row = fc.record({
  step: fc.integer({ min: 1, max: 3 }),
  attributes: fc.constantFrom(
    "",
    ' spans="1:4"',
    ' spans="1:4" x14ac:dyDescent="0.25"',
    ' ht="30" customHeight="1"',
    ' hidden="true"',
    ' s="2" customFormat="1"',
  ),
  gap: fc.constantFrom("", "\n"),
  cells,
});

const rowsXml = fc.array(row, { maxLength: 6 }).map((rows) => {
  let number = 0;
  return rows.map(({ step, attributes, gap, cells: inside }) => {
    number += step;
    const written = inside.map(
      (each) =>
        `<c${each.column === "" ? "" : ` r="${each.column}${number}"`}${each.style}${each.inside}</c>`,
    );
    return `${gap}<row r="${number}"${attributes}>${written.join("")}</row>`;
  });
});

const pieces = (rows: string): Uint8Array[] => [
  new TextEncoder().encode(`<worksheet><sheetData>${rows}</sheetData></worksheet>`),
];

function read(rows: string) {
  const sheet = readSheet({ ...SOURCE, pieces: pieces(rows) });
  const at = [...sheet.rowNumbers].map((number) => [
    number,
    sheet.rowHeight(number),
    sheet.isHiddenRow?.(number - sheet.top),
    sheet.styleAt(number, 9),
    [...sheet.cellsOfRow(number)],
  ]);
  const struck = at.flatMap(([number]) =>
    [0, 1, 2].map((column) => sheet.isStruckThrough?.((number as number) - sheet.top, column - sheet.left)),
  );
  return { at, struck };
}

describe("rows read straight from their bytes", () => {
  it("should hold what the thorough reading holds", () => {
    fc.assert(
      fc.property(rowsXml, (rows) => {
        // a blank behind the name is as legal, and plain to no quick reader
        const thorough = rows.map((each) => each.replace("<row r=", "<row  r="));
        let quick: unknown;
        let other: unknown;
        try {
          other = read(thorough.join(""));
        } catch (error) {
          other = String(error);
        }
        try {
          quick = read(rows.join(""));
        } catch (error) {
          quick = String(error);
        }
        expect(quick).toEqual(other);
      }),
      { numRuns: 2_000 },
    );
  });

  it("are those that most sheets consist of, to the last byte", () => {
    const xml =
      '<row r="1" spans="1:2" x14ac:dyDescent="0.25"><c r="A1" s="1" t="s"><v>0</v></c><c r="B1" s="4"/></row>' +
      '<row r="2" ht="15"><c r="A2"><v>-0.1</v></c><c r="C2" t="inlineStr"><is><t>H16</t></is></c></row>';
    const bytes = new TextEncoder().encode(xml);
    const store = new CellStore();
    const quick = new QuickRows(
      store,
      strings,
      () => undefined,
      () => undefined,
    );
    expect(quick.read(bytes, 0)).toBe(bytes.length);
    const at = (line: number, column: number) => store.cell(store.find(line, column));
    expect([at(0, 0), at(0, 1), at(1, 0), at(1, 2)]).toEqual(["mark", null, -0.1, "H16"]);
  });
});
