import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { columns, rows } from "./grid-selections";
import type { RemotePort } from "./port-page";

declare const remote: RemotePort;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
  await page.goto(`${inject("pages")}workbench/port.html`);
  await page.waitForFunction(() => "remote" in globalThis);
});
afterAll(() => browser.close());

/** Three bars of 2 m, their numbers in C, number by length in D, a sum in D5. */
const BARS = {
  name: "Bars",
  rows: [
    ["Mark", "Length", "No", "Total"],
    ["01", 2000, 3, { value: 6000, formula: "B2*C2" }],
    ["02", 2000, 4, { value: 8000, formula: "B3*C3" }],
    ["03", 2000, 5, { value: 10000, formula: "B4*C4" }],
    [null, null, null, { value: 24000, formula: "SUM(D2:D4)" }],
  ],
};

const openBook = (bytes: Uint8Array) => page.evaluate((b) => remote.open(b, "book.xlsx"), [...bytes]);
const run = (sheet: string, id: string, params: object) =>
  page.evaluate(([s, i, p]) => remote.run(s, i, p), [sheet, id, params] as const);
const type = (sheet: string, cell: string, value: string | number) =>
  page.evaluate(([s, c, v]) => remote.type(s, c, v), [sheet, cell, value] as const);
const saved = async () => openWorkbook(Uint8Array.from(await page.evaluate(() => remote.save())));

describe("formulas of the grid", () => {
  test("should hold what the user's own names stand for, wherever that moved to", async () => {
    const names = new Map([
      ["Sum_mm", "Bars!$D$5"],
      ["Numbers", "Bars!$C$2:$C$4"],
      ["Waste", "0.025"],
    ]);
    const open = (over: ReadonlyMap<string, string>, total: number) =>
      openBook(
        writeNewWorkbook({
          sheets: [
            BARS,
            {
              name: "Rest",
              rows: [
                ["kept"],
                [{ value: total, formula: "Sum_mm/1000*(1+Waste)" }],
                [{ value: 12, formula: "SUM(Numbers)" }],
              ],
            },
          ],
          names: over,
        }),
      );
    const rest = async () => {
      const { rows: shown } = await page.evaluate(() => remote.read("Rest"));
      const sheet = (await saved()).read("Rest");
      const values = [sheet.valueAt(1, 0), sheet.valueAt(2, 0)];
      return { shown: [shown[1]?.[0], shown[2]?.[0]], saved: values };
    };
    const settled = (values: number[]) => expect.poll(rest).toEqual({ shown: values, saved: values });
    // 24 m and a fortieth of it; 3 + 4 + 5 bars
    await open(names, 24.6);
    await settled([24.6, 12]);
    await run("Bars", "sheet.command.insert-row", { ...rows(2, 2), direction: 0 });
    // another is the total if the name did not follow
    await type("Bars", "C3", 100);
    await settled([24.6, 112]);
    await run("Bars", "sheet.command.remove-row", rows(1, 1));
    // 8000 + 10000 mm
    await settled([18.45, 109]);
    await run("Bars", "sheet.command.insert-col", { ...columns(1, 1), direction: 3 });
    await run("Bars", "sheet.command.set-worksheet-name", { name: "Bars of May" });
    await settled([18.45, 109]);
    for (let step = 0; step < 3; step += 1) await run("Rest", "univer.command.undo", {});
    await settled([24.6, 112]);
    for (let step = 0; step < 2; step += 1) await run("Rest", "univer.command.redo", {});
    await type("Bars", "D3", 8);
    // 8 bars in place of the 4 of the second row: 16000 + 10000 mm
    await settled([26.65, 113]);
    // another workbook's names are its own
    await open(new Map([...names, ["Sum_mm", "Bars!$D$4"]]), 10.25);
    await settled([10.25, 12]);
  });

  test("should work out what formulas ask of a table, and keep how they ask it", async () => {
    const mass = (row: number) =>
      `ROUND(B${row}*C${row}/1000*INDEX(Units[kgm],MATCH(A${row},Units[Size],0)),1)`;
    const given = withTable(
      writeNewWorkbook({
        sheets: [
          {
            name: "Bars",
            rows: [
              ["Size", "Length", "No", "Mass"],
              // 3 m at 0.617 and 1.579 kg/m, invented for the test: 1.851 and 4.737 kg
              ["H10", 1000, 3, { value: 1.9, formula: mass(2) }],
              ["H16", 1000, 3, { value: 4.7, formula: mass(3) }],
              [null, null, null, { value: 6.6, formula: "SUM(D2:D3)" }],
            ],
          },
          {
            name: "Units of steel",
            rows: [
              ["Size", "kgm", "of ten"],
              ["H10", 0.617, { value: 6.17, formula: "Units[[#This Row],[kgm]]*10" }],
              ["H16", 1.579, { value: 15.79, formula: "Units[[#This Row],[kgm]]*10" }],
            ],
          },
        ],
      }),
      "Units",
      "A1:C3",
      ["Size", "kgm", "of ten"],
    );
    // nothing comes out otherwise than the file holds it
    expect(await openBook(given)).toBe(false);
    const { rows: seen } = await page.evaluate(() => remote.read("Bars"));
    expect(seen.map((row) => row[3])).toEqual(["Mass", 1.9, 4.7, 6.6]);
    await type("Bars", "C3", 6);
    await type("Units of steel", "B2", 0.6);
    const text = async () => {
      const book = await saved();
      const [bars, units] = [
        book.read("Bars", { formulas: true }),
        book.read("Units of steel", { formulas: true }),
      ];
      const formulas = [bars.formulaAt(1, 3), bars.formulaAt(2, 3), units.formulaAt(1, 2)];
      return {
        values: [bars.valueAt(1, 3), bars.valueAt(2, 3), bars.valueAt(3, 3), units.valueAt(1, 2)],
        formulas: formulas.map((one) => one?.text),
      };
    };
    const asked = [mass(2), mass(3), "Units[[#This Row],[kgm]]*10"];
    // 3 x 0.6 = 1.8 kg of 10 mm, 6 x 1.579 = 9.474 kg of 16 mm
    await expect.poll(text).toEqual({ values: [1.8, 9.5, 11.3, 6], formulas: asked });
    await run("Units of steel", "sheet.command.insert-row", { ...rows(2, 2), direction: 0 });
    await type("Units of steel", "A3", "H12");
    await type("Units of steel", "B3", 0.888);
    await type("Bars", "A3", "H12");
    // 6 x 0.888 = 5.328 kg
    await expect.poll(text).toEqual({ values: [1.8, 5.3, 7.1, 6], formulas: asked });
  });

  test("should keep the results that a file holds where the grid cannot come to them", async () => {
    const book = () =>
      writeNewWorkbook({
        sheets: [
          {
            name: "Bars",
            rows: [
              [2, { value: 5, formula: "NOSUCHFUNCTION(A1)" }, { value: 10, formula: "B1*2" }],
              [3, { value: 7, formula: "IFERROR(NOSUCHFUNCTION(A2),0)" }, { value: 21, formula: "B2*A2" }],
              [4, { value: 8, formula: "A3*2" }],
            ],
          },
        ],
      });
    const seen = async () => (await page.evaluate(() => remote.read("Bars"))).rows;
    expect(await openBook(book())).toBe(true);
    expect(await seen()).toEqual([
      [2, 5, 10],
      [3, 7, 21],
      [4, 8, null],
    ]);
    expect(await page.evaluate(() => remote.isEdited())).toBe(false);
    await type("Bars", "A3", 5);
    await expect.poll(seen).toEqual([
      [2, 5, 10],
      [3, 7, 21],
      [5, 10, null],
    ]);
    await type("Bars", "A1", 4);
    const error = { error: "#NAME?" };
    await expect.poll(seen).toEqual([
      [4, error, error],
      [3, 7, 21],
      [5, 10, null],
    ]);
    const bars = (await saved()).read("Bars");
    const uncalculated = { error: "#N/A", uncalculated: true };
    expect(bars.valueAt(0, 1)).toMatchObject(uncalculated);
    expect(bars.valueAt(0, 2)).toMatchObject(uncalculated);
    expect([bars.valueAt(1, 1), bars.valueAt(1, 2), bars.valueAt(2, 1)]).toEqual([7, 21, 10]);
  });
});

/** The same workbook, the cells of its second sheet a table. */
function withTable(bytes: Uint8Array, name: string, range: string, columns: readonly string[]): Uint8Array {
  const parts = unzipSync(bytes);
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const put = (part: string, change: (xml: string) => string): void => {
    parts[part] = strToU8(change(strFromU8(parts[part] ?? new Uint8Array())));
  };
  const list = columns.map((column, at) => `<tableColumn id="${at + 1}" name="${column}"/>`).join("");
  put(
    "xl/tables/table1.xml",
    () =>
      `<table xmlns="${main}" id="1" name="${name}" displayName="${name}" ref="${range}"><tableColumns count="${columns.length}">${list}</tableColumns></table>`,
  );
  put(
    "xl/worksheets/_rels/sheet2.xml.rels",
    () =>
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${relations}/table" Target="../tables/table1.xml"/></Relationships>`,
  );
  put("xl/worksheets/sheet2.xml", (xml) =>
    xml.replace(
      "</worksheet>",
      `<tableParts count="1"><tablePart xmlns:r="${relations}" r:id="rId1"/></tableParts></worksheet>`,
    ),
  );
  put("[Content_Types].xml", (xml) =>
    xml.replace(
      "</Types>",
      '<Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/></Types>',
    ),
  );
  return zipSync(parts);
}
