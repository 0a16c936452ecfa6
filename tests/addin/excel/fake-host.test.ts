import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";

/** The fake host itself, through the real library: what the other tests lean on. */
let open: OpenExcel;

beforeEach(async () => {
  open = await openInJsdom();
});
afterEach(() => open.close());

describe("the library takes the fake host for Excel", () => {
  test("and reads back what it wrote, in one request each", async () => {
    const before = open.excel.requests.length;
    const [values, formulas] = await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1:B2");
      range.values = [
        [1, "H16"],
        [true, ""],
      ];
      await context.sync();
      range.load("values,formulas");
      await context.sync();
      return [range.values, range.formulas];
    });
    expect(values).toEqual([
      [1, "H16"],
      [true, ""],
    ]);
    expect(formulas).toEqual(values);
    expect(open.excel.requests.length - before).toBe(2);
  });

  test.each([
    ["00", 0],
    ["0012", 12],
    ["1E2", 100],
    ["1-2", 46_024],
    ["MAR1", 46_082],
    ["(250)", -250],
    ["1,250", 1250],
    ["TRUE", true],
    ["H16", "H16"],
    ["#5", "#5"],
    ["'00", "00"],
  ])("and %s written to a General cell becomes %s", async (typed, kept) => {
    // serials: 1 January 2026 is 46,023 and 1 March 46,082 by the day count from 30 December 1899
    expect(await writeAndRead(typed, null)).toEqual(kept);
  });

  test("but a cell formatted as text first keeps it", async () => {
    expect(await writeAndRead("1E2", "@")).toBe("1E2");
  });

  test("refuses by name what it does not emulate", async () => {
    const asked = Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().pivotTables.load("items");
      await context.sync();
    });
    await expect(asked).rejects.toMatchObject({
      code: "ApiNotFound",
      message: expect.stringContaining("PivotTables"),
    });
  });

  test("answers ItemNotFound, a wrong size and an oversized request as Excel does", async () => {
    const failing = (write: (sheet: Excel.WorksheetCollection) => void) =>
      Excel.run(async (context) => {
        write(context.workbook.worksheets);
        await context.sync();
      });
    await expect(failing((sheets) => sheets.getItem("Nope").activate())).rejects.toMatchObject({
      code: "ItemNotFound",
    });
    await expect(
      failing((sheets) => {
        sheets.getActiveWorksheet().getRange("A1:B2").values = [[1]];
      }),
    ).rejects.toMatchObject({ code: "InvalidArgument" });
    await expect(
      failing((sheets) => {
        const rows = Array.from({ length: 60_000 }, () => Array(12).fill("some text here"));
        sheets.getActiveWorksheet().getRange("A1:L60000").values = rows;
      }),
    ).rejects.toMatchObject({ code: "RequestPayloadSizeLimitExceeded" });
  });

  test("gives null for more than five million cells", async () => {
    const values = await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A:F").load("values");
      await context.sync();
      return range.values;
    });
    expect(values).toBeNull();
  });

  test("takes a request back with one undo", async () => {
    await writeAndRead(5, null);
    await writeAndRead(7, null);
    open.excel.workbook.undo();
    expect(await writeAndRead(null, null)).toBe(5);
  });
});

async function writeAndRead(value: unknown, format: string | null): Promise<unknown> {
  return Excel.run(async (context) => {
    const cell = context.workbook.worksheets.getActiveWorksheet().getRange("A1");
    if (format !== null) cell.numberFormat = [[format]];
    if (value !== null) cell.values = [[value]];
    cell.load("values");
    await context.sync();
    return cell.values[0]?.[0];
  });
}
