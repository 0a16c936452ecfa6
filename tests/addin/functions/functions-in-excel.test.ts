import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { excelWorkbook } from "../../../addin/excel/excel-workbook";
import { forgetDefaultStandard, readDefaultStandardBy } from "../../../addin/functions/default-standard";
import { functionsMetadata } from "../../../addin/functions/functions-metadata";
import { shopSheet } from "../../../addin/functions/shop-sheet";
import { shopOfWorkbook } from "../../../addin/pane/model/shop-of-workbook";
import { functionEnvironment } from "../../../addin/workbook/function-environment";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import { COST } from "../../../core/formulas/cost";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { errorArgument } from "../../_support/office-host/function-calls";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";

/** Worksheet functions called by the host through the real custom-functions runtime. */
let open: OpenExcel;
const counts = new Map<string, number>();

/** Excel hands over every declared argument: a range as its rows, one left out as null. */
const padded = (id: string, given: unknown[]) =>
  Array.from({ length: counts.get(id) ?? 0 }, (_, index) => given[index] ?? null);
const bar = (id: string, ...given: unknown[]) => open.excel.functions.call(id, ...padded(id, given));
const one = (value: unknown) => [[value]];

beforeAll(async () => {
  open = await openInJsdom();
  await import("../../../addin/functions/associate-functions");
  for (const { id, parameters } of (await functionsMetadata("https://x")).functions) {
    counts.set(id, parameters.length);
  }
});
afterAll(() => open.close());

test("a call that comes before the page knows the workbook's standard waits for it", async () => {
  await excelWorkbook().saveSetting("Barwright.Standard", "ACI318:2019");
  const early = bar("FORMER", one("#5"));
  await new Promise((resolve) => setTimeout(resolve, 100));
  readDefaultStandardBy(() => excelWorkbook().setting("Barwright.Standard"));
  const stated = await bar("FORMER", one("#5"), one("ACI318:2019"));
  expect((await early).value).toEqual(stated.value);
  await excelWorkbook().saveSetting("Barwright.Standard", null);
  forgetDefaultStandard();
});
beforeEach(() => forgetDefaultStandard());

/** Legs 500 and 1200 with a right angle about a former of 64 on a 16 bar: r + d = 48, r + d/2 = 40. */
const RIGHT_ANGLE = 500 + 1200 - 2 * 48 + (Math.PI / 2) * 40;

describe("a worksheet function in Excel", () => {
  test("answers one cell", async () => {
    const answer = await bar("DEVELOPED", one("500 +90 1200"), one("H16"), null, one("BS8666:2005"), one(64));
    expect(answer.ok).toBe(true);
    expect((answer.value as number[][])[0]?.[0]).toBeCloseTo(RIGHT_ANGLE, 8);
  });

  test("answers a column of rows, one row broadcasting, blank for blank", async () => {
    const answer = await bar(
      "DEVELOPED",
      [["500 +90 1200"], [""], ["600 +90 1200"], [""]],
      one("H16"),
      null,
      one("BS8666:2005"),
      one(64),
    );
    const rows = answer.value as unknown[][];
    expect(rows.map((row) => row.length)).toEqual([1, 1, 1]);
    expect(rows[0]?.[0]).toBeCloseTo(RIGHT_ANGLE, 8);
    expect(rows[1]?.[0]).toBe("");
    expect(rows[2]?.[0]).toBeCloseTo(RIGHT_ANGLE + 100, 8);
  });

  test("stands each refusal and each error cell in its own row", async () => {
    const answer = await bar(
      "DEVELOPED",
      [["500 +90 1200"], [errorArgument("#REF!")], ["500 +190 1200"], ["no path"], ["500 +90 1200"]],
      one("H16"),
      null,
      one("BS8666:2005"),
      one(64),
    );
    expect(answer.ok).toBe(true);
    const cells = (answer.value as unknown[][]).map((row) => row[0]);
    expect(cells[0]).toBeCloseTo(RIGHT_ANGLE, 8);
    expect(cells[4]).toBeCloseTo(RIGHT_ANGLE, 8);
    expect(cells[1]).toMatchObject({
      type: "Error",
      basicValue: "#VALUE!",
      message: expect.stringContaining("#REF!"),
    });
    expect(cells[2]).toMatchObject({
      type: "Error",
      basicValue: "#VALUE!",
      message: expect.stringContaining("190"),
    });
    expect(cells[3]).toMatchObject({ type: "Error", message: expect.stringContaining("no path") });
  });

  test("shows a single refusal with its words", async () => {
    const answer = await bar("MASS", one("H17"), one("BS8666:2005"));
    expect(answer.ok).toBe(false);
    expect(answer.errorCode).toBe(1);
    expect(answer.value).toMatch(/17/);
    expect(String(answer.value).length).toBeGreaterThan(20);
  });

  test("refuses ranges of unequal length with both lengths", async () => {
    const answer = await bar("DEVELOPED", [["21"], ["21"], ["21"]], [["H16"], ["H20"]]);
    expect(answer).toMatchObject({ ok: false, errorCode: 7, value: expect.stringMatching(/3 rows.*2/) });
  });

  test("takes whole columns and ends at the last row that is not blank", async () => {
    const column = (value: string) =>
      Array.from({ length: 1_048_576 }, (_, row) => [row > 0 && row < 10_001 ? value : ""]);
    const answer = await bar(
      "DEVELOPED",
      column("500 +90 1200"),
      column("H16"),
      null,
      one("BS8666:2005"),
      one(64),
    );
    const rows = answer.value as unknown[][];
    expect(rows.length).toBe(10_001);
    expect(rows[0]?.[0]).toBe("");
    expect(rows[10_000]?.[0]).toBeCloseTo(RIGHT_ANGLE, 8);
  });

  test("reads a text where a number is due only if it says one", async () => {
    const dims = (value: unknown) =>
      bar("CUTLENGTH", one("11"), one("H16"), [[1000, value]], one("BS8666:2005"));
    const number = await dims(400);
    expect(number.ok).toBe(true);
    expect((await dims("400")).value).toEqual(number.value);
    expect((await dims("400 mm")).value).toEqual(number.value);
    const words = await dims("four hundred");
    expect(words).toMatchObject({ ok: false, value: expect.stringContaining("four hundred") });
    expect(await dims(true)).toMatchObject({ ok: false, value: expect.stringContaining("TRUE") });
  });

  test("refuses the date that Excel made of 1-2", async () => {
    // 46024 is the second of January 2026
    const shape = await bar("CUTLENGTH", one(46_024), one("H16"), [[1000, 400]], one("BS8666:2005"));
    expect(shape).toMatchObject({ ok: false, value: expect.stringContaining("46024") });
    const size = await bar("MASS", one(46_024), one("BS8666:2005"));
    expect(size).toMatchObject({ ok: false, value: expect.stringContaining("46024") });
  });

  test("takes a formatted number and an empty cell for what they are", async () => {
    const formatted = { type: "FormattedNumber", basicValue: 64, numberFormat: "0" };
    const answer = await bar(
      "DEVELOPED",
      one("500 +90 1200"),
      one("H16"),
      one(""),
      one("BS8666:2005"),
      one(formatted),
    );
    expect((answer.value as number[][])[0]?.[0]).toBeCloseTo(RIGHT_ANGLE, 8);
  });

  test("is not found under another name", async () => {
    expect(await open.excel.functions.call("NOSUCH")).toMatchObject({ ok: false });
  });

  test("can be taken back by Excel without harm to the next", async () => {
    open.excel.functions.callAndCancel("MASS", one("H16"), one("BS8666:2005"), null);
    expect(await bar("MASS", one("H16"), one("BS8666:2005"))).toMatchObject({ ok: true });
  });
});

test("a fault of the add-in itself is told as one", async () => {
  const definition = WORKSHEET_FUNCTIONS.get("AREA") as { call: (...given: never[]) => unknown };
  const { call } = definition;
  definition.call = () => {
    throw new Error("no such table");
  };
  const answer = await bar("AREA", one("H16"), one("EC2:2004"));
  definition.call = call;
  expect(answer).toMatchObject({
    ok: false,
    errorCode: 7,
    value: expect.stringMatching(/BAR.AREA failed.*no such table/),
  });
});

describe("the standard in force", () => {
  const massOfN16 = () => bar("FORMER", one(16));

  test("is the workbook's own, read once for any number of cells, and falls back to BS 8666:2005", async () => {
    const fallback = await bar("FORMER", one(20), one("BS8666:2005"));
    expect((await bar("FORMER", one(20))).value).toEqual(fallback.value);
    await excelWorkbook().saveSetting("Barwright.Standard", "ACI318:2019");
    forgetDefaultStandard();
    const before = open.excel.requests.length;
    const inches = padded("FORMER", [one("#5")]);
    const answers = await open.excel.functions.callMany("FORMER", Array(1_000).fill(inches));
    expect(open.excel.requests.length - before).toBeLessThanOrEqual(1);
    expect(new Set(answers.map((answer) => JSON.stringify(answer.value))).size).toBe(1);
    const stated = await bar("FORMER", one("#5"), one("ACI318:2019"));
    expect(answers[0]?.value).toEqual(stated.value);
    await excelWorkbook().saveSetting("Barwright.Standard", null);
  });

  test("that the workbook names wrongly is refused with what it says", async () => {
    await excelWorkbook().saveSetting("Barwright.Standard", "XX 1:2000");
    forgetDefaultStandard();
    expect(await massOfN16()).toMatchObject({ ok: false, value: expect.stringContaining("XX 1:2000") });
    await excelWorkbook().saveSetting("Barwright.Standard", null);
    forgetDefaultStandard();
    expect(await massOfN16()).toMatchObject({ ok: true });
  });
});

describe("a machine that is named", () => {
  const trials = [
    ["size", "former", "grade", "bent to", "released"],
    [16, 64, 500, 90, 82],
  ];
  const bentTo = (machine: string) =>
    bar("COMPENSATED", one(90), one("H16"), null, one(64), one(500), trials, one("plain"), one(machine));

  test("is any where the workbook has no Shop sheet, else one of its benders, up to what it turns", async () => {
    shopSheet.readBy(() => shopOfWorkbook(excelWorkbook()));
    // bent to 90 came back to 82: 98, by the plain rule (common practice)
    expect(await bentTo("Bender A")).toMatchObject({ ok: true, value: [[98]] });
    const rows = [
      ["machine", "largest angle"],
      ["Bender A", 91],
    ].map((row) => row.map((value) => ({ value })));
    await excelWorkbook().addSheet("Shop", { rows });
    expect(shopSheet.forget()).toBe(true);
    const before = open.excel.requests.length;
    expect(await bentTo("Bender A")).toMatchObject({
      ok: false,
      value: expect.stringContaining("beyond the 91 degrees that Bender A turns"),
    });
    const asked = open.excel.requests.length - before;
    expect(await bentTo("Bender Z")).toMatchObject({
      ok: false,
      value: expect.stringMatching(/machine "Bender Z" is none of the Shop sheet.*Bender A/),
    });
    expect(open.excel.requests.length - before - asked).toBeLessThanOrEqual(1);
    shopSheet.readBy(async () => ({}));
  });
});

describe("BAR.COST without rates", () => {
  const sizes = [["H16"], ["H16"]];
  const masses = [[600], [400]];

  test("goes by those of the Shop sheet, as the workbench and the command line do, and follows them", async () => {
    shopSheet.readBy(() => shopOfWorkbook(excelWorkbook()));
    expect(await bar("COST", sizes, masses)).toMatchObject({
      ok: false,
      value: expect.stringContaining("no rates are known"),
    });
    const rows = [
      ["size", "supply per tonne", "waste %"],
      [16, 900, 10],
    ].map((row) => row.map((value) => ({ value })));
    await excelWorkbook().addSheet("Shop", { rows }, "replace");
    expect(shopSheet.forget()).toBe(true);
    // 1 t and a tenth of it as waste, at 900 a tonne
    const expected = ["total", 1, 0.1];
    const inExcel = (await bar("COST", sizes, masses)) as { value: unknown[][] };
    expect(inExcel.value.at(-1)?.slice(0, 3)).toEqual(expected);
    expect(inExcel.value.at(-1)?.at(-1)).toBeCloseTo(990, 9);
    const cells = rows.map((row) => row.map(({ value }) => value));
    const book = { sheets: [{ name: "Shop" }], read: () => sheetFromRows("Shop", cells) };
    const elsewhere = COST.call([sizes, masses], functionEnvironment(book, "BS8666:2005"));
    expect(inExcel.value).toEqual(elsewhere.map((row) => row.map((cell) => cell ?? "")));
    shopSheet.readBy(async () => ({}));
  });
});

test("10,000 lengths spill from one call, in one request, and a second call is answered from memory", async () => {
  const shapes = Array.from({ length: 10_000 }, (_, row) => [`${500 + row} +90 1200`]);
  const definition = WORKSHEET_FUNCTIONS.get("DEVELOPED") as { call: (...given: never[]) => unknown };
  let worked = 0;
  const call = definition.call;
  definition.call = (...given) => {
    worked += 1;
    return call(...given);
  };
  const ask = () => bar("DEVELOPED", shapes, one("H16"), null, one("BS8666:2005"), one(64));
  const rows = (await ask()).value as number[][];
  await ask();
  definition.call = call;
  expect(worked).toBe(1);
  expect(rows.length).toBe(10_000);
  expect(rows[9_999]?.[0]).toBeCloseTo(RIGHT_ANGLE + 9_999, 8);
});
