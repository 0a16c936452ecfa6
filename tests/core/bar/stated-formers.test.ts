import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { formersIn } from "../../../core/bar/stated-formers";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

// EN 1992-1-1 table 8.1N has 4 d up to 16 mm and 7 d above, DIN 1045-1 table 23 4 ds below 20 mm and 7 ds from it on: from memory
describe("formers in a note", () => {
  it.each([
    ["Formers: 4d up to 16, 7d above", 4, 7, 16],
    ["Mandrins : mini 4\u00d8 pour \u00d8 <= 16, 7\u00d8 pour \u00d8 > 16", 4, 7, 16],
    ["Biegerollen: 4 ds bei ds < 20 mm, 7 ds bei ds >= 20 mm. Lagerl\u00e4nge 14 m", 4, 7, 20],
    ["mandrini 4 \u00d8 fino al 16, oltre 7 \u00d8; taglio = somma dei lati", 4, 7, 16],
    ["Former 5d throughout", 5, 5, Number.POSITIVE_INFINITY],
  ])("%s", (note, all, thick, beyond) => {
    expect(formersIn(note)).toEqual([{ all, thick, beyond }]);
  });

  it.each([
    "Pin 5d main bars, 4d ligs",
    "Former 7d from 20 mm",
    "Formers of B500B 5d",
    "Hooks 10d",
    "Former 100 mm",
  ])("are not said by %s", (note) => {
    expect(formersIn(note)).toEqual([]);
  });
});

it("a former below what a note says is told of where no document judges it", () => {
  const list = (note: string, ...formers: readonly number[]): readonly string[] => {
    const rows: Cell[][] = formers.map((former, at) => [
      ...[`P${at + 1}`, at < 3 ? "HA12" : "HA20", 10, "crosse", 300, 1500, 1800, former],
    ]);
    const heads = ["Mark", "Size", "Total no.", "Shape", "A", "B", "Length mm", "Former mm"];
    const sheets = [sheetFromRows("List", [[note], heads, ...rows])];
    return runAudit({ sheets, standard: heldStandard("BS8666:2005") })
      .findings.filter(({ code }) => code === "BEND109")
      .map(({ cell, severity, outcome, message }) => `${cell} ${severity} ${outcome}: ${message}`);
  };
  const note = "Formers: 4d up to 16, 7d above";
  // 4 x 12 = 48, 7 x 20 = 140
  expect(list(note, 50, 50, 50, 140, 150)).toEqual([]);
  expect(list(note, 50, 50, 50, 150, 80)).toEqual([
    "H7 unsafe unsure: former 80 mm is below the 140 mm of HA20 by A1, 7 d: if it is no slip, ask the designer",
  ]);
  expect(list("Formers 4d or 7d", 50, 50, 50, 150, 80)).toEqual([]);
  // most go by something else
  expect(list(note, 50, 50, 50, 80, 80)).toEqual([]);
});
