import { describe, expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../../addin/pane/engine/other-sheets";
import { confirmGuess, correctColumn } from "../../../../addin/pane/model/settings-edits";
import { summaryLine } from "../../../../addin/pane/panels/check/summary-line";
import { settingsFromText, settingsToText } from "../../../../core/audit/settings-text";
import { sheetFromRows } from "../../../../core/schedule";

/**
 * Size, number of bars, length in m, with the mass by hand: number x length x kg/m of BS 4449:2005 table 7
 * (10: 0.617, 12: 0.888, 16: 1.579, 20: 2.466).
 */
const BARS: readonly (readonly [number, number, number, number])[] = [
  [12, 10, 4.5, 39.96],
  [16, 20, 3.2, 101.056],
  [12, 8, 5.1, 36.2304],
  [20, 12, 6.15, 181.9908],
  [16, 24, 2.85, 108.0036],
  [10, 40, 1.9, 46.892],
  [12, 16, 4.05, 57.5424],
];
const HEAD = ["Bar mark", "Size", "Total no.", "Length (mm)", "Shape code", "Mass (kg)"];
const WILD = [1.7, 0.3, 12.1, 5.9, 0.9, 3.3, 7.7];

const sheetOf = (perMetre: number, massOf: (mass: number, row: number) => number) =>
  sheetFromRows("Bars", [
    HEAD,
    ...BARS.map(([size, count, metres, mass], row) => [
      String(row + 1),
      size,
      count,
      Math.round(metres * perMetre),
      "00",
      massOf(mass, row),
    ]),
  ]);

async function checked(sheet: ReturnType<typeof sheetOf>, settings: string | null = null) {
  const engine = createLocalEngine();
  const asked = { sheet, shop: null, otherSheets: NO_OTHER_SHEETS, standard: "BS8666:2005", settings };
  return { engine, view: await engine.check(asked) };
}

describe("totals that are held back", () => {
  const sheet = sheetOf(1000, (mass, row) => mass * WILD[row]!);

  test("should be shown nowhere: totals, line to pass on, findings sheet, what a change comes to", async () => {
    const { engine, view } = await checked(sheet);
    expect(view.held).toContain("no other reading agrees");
    const totals = await engine.totals("Bars");
    expect(totals).toMatchObject({
      held: expect.stringContaining("held back"),
      total: "",
      pours: [],
      table: [],
    });
    expect(summaryLine(view)).toContain("no tonnes, totals are held back");
    const cells = (await engine.findings("Bars")).rows.flatMap((row) => row.map(({ value }) => value));
    expect(cells.filter((cell) => String(cell).startsWith("No tonnes: totals are held back")).length).toBe(2);
    expect(cells).not.toContain("Total, t");
    const { effect } = await engine.follows("Bars", [{ cell: "D2", to: 4600 }]);
    expect(effect).toContain("totals are held back");
    expect((await engine.page("tickets", "Bars", null)).notes.join()).toContain("totals are held back");
  });

  test("should be shown once the user has said that the sheet is read right", async () => {
    const { view } = await checked(sheet);
    const [asked] = view.findings.filter(({ guess }) => guess === "totals-held");
    expect(asked?.message).toBe(view.held);
    const settings = settingsToText(confirmGuess("Bars", "totals-held", true)(settingsFromText(null)));
    const { engine, view: then } = await checked(sheet, settings);
    expect(then.held).toBeNull();
    // the masses above add up by cut length: 571.6752 kg
    expect((await engine.totals("Bars")).total).toBe("0.572");
  });
});

describe("a header that the rows contradict", () => {
  const sheet = sheetOf(100, (mass) => mass);

  test("should offer both readings, and keep neither before the user chooses", async () => {
    const { view } = await checked(sheet);
    const [finding] = view.findings.filter(({ ways }) => ways.length > 0);
    expect(finding?.ways.map(({ words }) => words)).toEqual([
      "Right as read now: Length (mm) is cut length in cm",
      "Read it the other way: Length (mm) is cut length in mm",
    ]);
    expect(view.decisions.corrections).toEqual([]);
    const [now, other] = finding!.ways.map(({ correction: { column, ...said } }) =>
      settingsToText(correctColumn("Bars", column, said)(settingsFromText(null))),
    );
    const total = async (settings: string) =>
      (await (await checked(sheet, settings)).engine.totals("Bars")).total;
    expect(await total(now!)).toBe("0.572");
    // every mass says that lengths are in cm: in mm they are read as the user says, and not added up unasked
    const { view: then } = await checked(sheet, other!);
    expect(then.columns.find(({ kind }) => kind === "length")).toMatchObject({ unit: "mm", corrected: true });
    expect(then.held).toContain("7 of 7 rows disagree with the mass column");
  });
});

test("why each column and row was read so is told as the command line does, rows alike together", async () => {
  const { engine } = await checked(sheetOf(1000, (mass) => mass));
  const { columns, rows, held } = await engine.explain("Bars");
  expect(held).toBeNull();
  expect(columns.find(({ letter }) => letter === "D")).toEqual({
    letter: "D",
    header: "Length (mm)",
    why: "cut length in mm (as its header says), by words; 7 of 7 rows agree",
    kept: 7,
    tested: 7,
  });
  expect(rows.map(({ first, last, class: kind }) => `${first}-${last} ${kind}`)).toEqual([
    "1-1 heading",
    "2-8 bar",
  ]);
});

// ten centimetres is a habit of other countries, and nobody said that the list is of BS 8666
test("a standard that nobody chose is assumed in the pane as on the command line", async () => {
  const rows = [3210, 4320, 2870, 5130, 1990, 3660].map((length, at) => [String(at + 1), 12, 10, length]);
  const sheet = sheetFromRows("Bars", [["Stahlliste"], ["Pos.", "Ø", "Stück", "Länge mm"], ...rows]);
  const told = async (standard: string) => {
    const engine = createLocalEngine();
    const view = await engine.check({
      sheet,
      shop: null,
      otherSheets: NO_OTHER_SHEETS,
      standard,
      settings: null,
    });
    return view.findings.filter(({ code }) => code === "STANDARD103" || code === "LEN107");
  };
  const severities = async (standard: string) =>
    (await told(standard)).map(({ code, severity }) => `${code} ${severity}`).sort();
  expect(await severities("")).toEqual(["LEN107 note", "STANDARD103 note"]);
  expect(await severities("BS8666:2005")).toEqual(["LEN107 off-standard"]);
});
