import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../../addin/xlsx/write/new-workbook";
import { partText } from "../../../_support/compare-packages";

describe("writeNewWorkbook", () => {
  it("should read back whatever was written", () => {
    // null and "" are both a blank; XML has no other control characters than these
    const text = fc
      .string({ minLength: 1, unit: "binary" })
      .filter((one) => /^[^\p{Cc}\p{Cs}\uFFFE\uFFFF]+$/u.test(one));
    const cell = fc.oneof(
      text,
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.boolean(),
      fc.constant(null),
    );
    const rows = fc.array(fc.array(cell, { maxLength: 6 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(rows, (written) => {
        const sheet = openWorkbook(writeNewWorkbook({ sheets: [{ name: "S", rows: written }] })).read("S");
        written.forEach((row, at) => {
          row.forEach((value, column) => {
            const read = sheet.valueAt(at, column);
            // a cell has no nought below nought; all else comes back to the last bit
            expect(read).toBe(Object.is(value, -0) ? 0 : value);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  it("writes looks, widths, merges, frozen rows and names", () => {
    const bytes = writeNewWorkbook({
      sheets: [
        {
          name: "A & B",
          rows: [
            [{ value: "Title", look: { bold: true, fill: "#d9e2ec", fontSize: 14 } }],
            [{ value: 450, look: { numberFormat: '"("0")"', strike: true } }],
          ],
          widths: [20, 8],
          frozenRows: 1,
          merges: ["A1:B1"],
          hiddenRows: new Set([1]),
        },
      ],
      names: new Map([["Barwright.Standard", '"EC2:2004"']]),
    });
    const workbook = openWorkbook(bytes);
    const sheet = workbook.read("A & B");
    expect(workbook.formats[sheet.styleAt(0, 0)]).toMatchObject({
      bold: true,
      fill: "#d9e2ec",
      fontSize: 14,
    });
    expect([sheet.shown?.(1, 0), sheet.isStruckThrough?.(1, 0), sheet.isHiddenRow?.(1)]).toEqual([
      "(450)",
      true,
      true,
    ]);
    expect([sheet.columns[0]?.width, sheet.frozen.rows, sheet.merges?.length]).toEqual([20, 1, 1]);
    expect(workbook.names).toEqual([
      { name: "Barwright.Standard", refersTo: '"EC2:2004"', sheetIndex: null },
    ]);
  });

  it("stores a formula with its result, and ours as Excel stores an add-in's", async () => {
    const rows = [
      [
        { value: 3, formula: "1+2" },
        { value: "bend", formula: 'BAR.MARKS("21","H16",A2:C2)', fills: { rows: 3, columns: 9 } },
      ],
    ];
    const bytes = writeNewWorkbook({ sheets: [{ name: "S", rows }] });
    const xml = await partText(bytes, "xl/worksheets/sheet1.xml");
    expect(xml).toContain('<c r="A1"><f>1+2</f><v>3</v></c>');
    expect(xml).toContain(
      '<c r="B1" t="str" cm="1"><f t="array" ref="B1:J3">_xldudf_BAR_MARKS(&quot;21&quot;,&quot;H16&quot;,A2:C2)</f><v>bend</v></c>',
    );
    expect(await partText(bytes, "xl/metadata.xml")).toContain("XLDAPR");
  });
});
