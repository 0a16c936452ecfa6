import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/size-column-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { reckonTonnage } from "../../../../core/totals/reckon-tonnage";
import { standardNamed } from "../rule-cases";

const HEADER = ["Bar mark", "Dia (mm)", "No. of bars", "Cutting length (m)", "8", "12", "16", "20"];

function said(...rows: (readonly Cell[])[]): string[] {
  const sheets = [sheetFromRows("BBS", [HEADER, ...rows])];
  const { findings } = runAudit({ sheets, standard: standardNamed("INDIA-SITE"), rules: [rule] });
  return findings.map(({ cell, message }) => `${cell}: ${message}`);
}

it("should be silent where the length stands under the bar's own size", () => {
  expect(said(["a", 12, 10, 2, null, 20, null, null], ["b", 16, 4, 3, 0, 0, 12, 0])).toEqual([]);
});

it("should name the length under another size", () => {
  expect(said(["a", 12, 61, 5.1, null, null, 311.1, null])).toEqual([
    "G2: 311.1 stands under 16, but the bar of this row is 12: it is added to the wrong size",
  ]);
});

it("should doubt the mass of a row whose length stands under another size", () => {
  const rows = [HEADER, ["a", 12, 61, 5.1, null, null, 311.1, null], ["b", 16, 4, 3, 0, null, 12, null]];
  const sheet = sheetFromRows("BBS", rows);
  const standard = standardNamed("INDIA-SITE");
  const { doubted } = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
  // 61 x 5.1 m at the 1.58 kg/m of IS 1786:2008 table 1 for 16 mm (from memory): 491.5 kg
  expect(doubted.map(({ row }) => [row.otherwise?.by, row.otherwise?.mass.toFixed(0)])).toEqual([
    ["column by size", "492"],
  ]);
});

it("should leave rows under several sizes to the totals", () => {
  expect(said(["a", 12, 10, 2, 20, null, 20, null])).toEqual([]);
});

// KS D 3504 has D19 at 19.1 mm; HD and SHD name the strength before the same number
it("should take a size that two tables hold a tenth apart for one", () => {
  const sheet = sheetFromRows("BBS", [
    ["Bar mark", "Dia", "No. of bars", "Cutting length (m)", "D10", "D13", "D19", "D22"],
    ["a", "SHD19", 10, 2, null, null, 20, null],
    ["b", "HD13", 10, 2, null, 20, null, null],
    ["c", "HD13", 10, 3, null, null, 30, null],
  ]);
  const { findings } = runAudit({ sheets: [sheet], standard: standardNamed("BS8666:2005"), rules: [rule] });
  expect(findings.map(({ cell }) => cell)).toEqual(["G4"]);
});

// the sign stands for ribbed steel over lists of metric bars: common practice
it("should take #6 over bars of 6 mm for their own size, and tell a length under another", () => {
  const sheet = sheetFromRows("Wykaz", [
    ["Bar mark", "Dia (mm)", "No. of bars", "Cutting length (m)", "#6", "#8", "#10", "#20"],
    ["a", 6, 48, 1.36, 65.28, null, null, null],
    ["b", 20, 10, 1.57, null, null, null, 15.7],
    ["c", 10, 10, 2, null, null, null, 20],
  ]);
  const { findings } = runAudit({ sheets: [sheet], standard: standardNamed("INDIA-SITE"), rules: [rule] });
  expect(findings.map(({ cell }) => cell)).toEqual(["H4"]);
});
