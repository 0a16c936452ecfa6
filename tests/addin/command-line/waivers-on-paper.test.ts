import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { textConstant } from "../../../addin/workbook/defined-name";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { auditSettings } from "../../../core/audit/audit-settings";
import { settingsToText } from "../../../core/audit/settings-text";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-waivers-"));
const at = (name: string) => join(folder, name);
// 50 mm is below the 64 mm of BS 8666:2005 Table 2 for 16 mm; 925 is no length of shape 11 with these legs
const ROWS = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "B", "Former mm"],
  ["B1", "01", "H16", 2, 875, "11", 500, 400, 50],
  ["B1", "02", "H16", 2, 925, "11", 500, 400, 64],
];
const WAIVED = "waived: BEND101 former too small, S!I2, by A. Detailer, 2031-03-02: the mandrel is measured";
const OFF = "rule turned off: LEN102 length differs, by B. Checker, 2031-03-04: lengths are agreed";

function writeBook(name: string): string {
  const waiver = { code: "BEND101", sheet: "S", key: "B1 | 01", reason: "the mandrel is measured" };
  const settings = auditSettings.parse({
    waivers: [{ ...waiver, by: "A. Detailer", date: "2031-03-02" }],
    rulesOff: [{ code: "LEN102", reason: "lengths are agreed", by: "B. Checker", date: "2031-03-04" }],
  });
  const names = new Map([["Barwright.Audit", textConstant(settingsToText(settings) as string)]]);
  writeFileSync(at(name), writeNewWorkbook({ sheets: [{ name: "S", rows: ROWS }], names }));
  return at(name);
}

it("should say on the findings sheet what is not told, with the findings themselves", async () => {
  const run = await barwright(["check", writeBook("a.xlsx"), "--out", at("a-out.xlsx")]);
  expect(run.exit).toBe(0);
  const sheet = openWorkbook(new Uint8Array(readFileSync(at("a-out.xlsx")))).read("Findings");
  const texts: string[] = [];
  for (let row = 0; row < sheet.rowCount; row += 1)
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row, column);
      if (typeof cell === "string") texts.push(cell);
    }
  expect(texts).toContain("Not told, because somebody said so");
  expect(texts).toContain(`${WAIVED} (1 row of 2 bars not told, unsafe)`);
  expect(texts).toContain(`${OFF} (1 row of 2 bars not told)`);
  expect(texts.filter((text) => text.startsWith("former 50 mm is below"))).toHaveLength(1);
  expect(
    texts.some((text) =>
      text.endsWith("not told of 2 rows of 4 bars (unsafe: 1 row of 2 bars) by 1 waiver, 1 rule off"),
    ),
  ).toBe(true);
});

it("should say on tickets and labels who cleared a bar, and on the page what is not told", async () => {
  const book = writeBook("b.xlsx");
  const args = ["--out", at("t.html"), "--labels", at("l.html"), "--bundle-limit", "500"];
  const run = await barwright(["tickets", book, ...args]);
  expect(run.err).toContain("not told of 2 rows of 4 bars (unsafe: 1 row of 2 bars) by 1 waiver, 1 rule off");
  const tickets = readFileSync(at("t.html"), "utf8");
  expect(tickets).toContain(`${WAIVED} (1 row of 2 bars not told, unsafe)`);
  const [, first = "", second = ""] = tickets.split('<article class="ticket">');
  expect(first).toMatch(
    /not told<\/b> unsafe: former 50 mm is below .*\(waived by A\. Detailer, 2031-03-02: the mandrel is measured\)/,
  );
  expect(first).not.toContain("Do not make this bar");
  expect(second).toMatch(/not told<\/b> off-standard: .*\(rule turned off by B\. Checker, 2031-03-04/);
  const labels = readFileSync(at("l.html"), "utf8");
  const [, label = "", other = ""] = labels.split('<article class="label">');
  expect(label).toMatch(/Not told: unsafe: former 50 mm .*by A\. Detailer, 2031-03-02/);
  expect(other.split("</article>")[0]).not.toContain("Not told");
});

it("should say in a comparison what either book does not tell", async () => {
  writeFileSync(at("old.xlsx"), writeNewWorkbook({ sheets: [{ name: "S", rows: ROWS }] }));
  const run = await barwright(["compare", at("old.xlsx"), writeBook("new.xlsx")]);
  expect(run.out).toContain(
    "newer, not told: waived: BEND101 former too small, S, B1 | 01, by A. Detailer, 2031-03-02",
  );
  expect(run.out).not.toContain("older, not told");
  const json = JSON.parse((await barwright(["compare", at("old.xlsx"), at("new.xlsx"), "--json"])).out);
  expect(json.waivers.before).toEqual([]);
  expect(json.waivers.after).toHaveLength(2);
});

it.each([
  ["cutplan", []],
  ["tonnage", []],
  ["inspect", ["--every", "1"]],
])("should say beside the result of %s what is not told, and of whom", async (command, more) => {
  const book = writeBook(`${command}.xlsx`);
  const run = await barwright([command, book, ...more]);
  for (const words of [WAIVED, OFF])
    expect(run.err).toContain(`not told: ${words} (1 row of 2 bars not told`);
  if (command !== "cutplan") return;
  const page = await barwright([command, book, "--out", at("cut.html")]);
  expect(page.err).toContain("written:");
  expect(readFileSync(at("cut.html"), "utf8")).toContain(WAIVED);
  const json = JSON.parse((await barwright([command, book, "--json"])).out);
  expect(json.notTold).toHaveLength(2);
});
