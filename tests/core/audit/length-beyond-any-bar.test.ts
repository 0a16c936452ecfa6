import { describe, expect, it } from "vitest";
import longerThanStock from "../../../core/audit/rules/longer-than-stock";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { tonnageNotes } from "../../../core/totals/tonnage-notes";

const standard = resolveStandard("BS8666:2005") as Standard;

/** a German list in metres, with one length and one number of its own */
const list = (length: Cell, count = 60, remark: string | null = null) =>
  sheetFromRows("Stahlliste", [
    ["Pos", "Ø mm", "Anzahl", "Einzellänge m", "Bemerkung"],
    ["1", 12, 10, 3.2, null],
    ["2", 10, 24, 2.4, null],
    ["3", 16, 8, 4.1, null],
    ["4", 8, count, length, remark],
    ["5", 12, 30, 2, null],
    ["6", 10, 40, 1.85, null],
  ]);

const told = (...of: Parameters<typeof list>): string[] =>
  runAudit({ sheets: [list(...of)], standard, rules: [longerThanStock] }).findings.map(
    ({ cell, outcome, message }) => `${cell} ${outcome}: ${message}`,
  );

const notes = (...of: Parameters<typeof list>): string[] => {
  const sheet = list(...of);
  const reckoned = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
  return tonnageNotes(reckoned).filter((note) => note.includes("no bar is rolled in"));
};

// straight bars are rolled to 18 m, a few longer to order (common practice)
describe("a length that no bar is rolled in", () => {
  it("should be asked about as a slip of unit, with the lengths that may be meant", () => {
    expect(told(115)).toEqual([
      "D5 unsure: length 115000 mm is longer than any bar that is rolled: 11500 mm or 1150 mm may be meant, in another unit or with its point misplaced; correct the cell, or ask the designer",
    ]);
    expect(told(200)).toEqual([
      "D5 unsure: length 200000 mm is longer than any bar that is rolled: 2000 mm may be meant, in another unit or with its point misplaced; correct the cell, or ask the designer",
    ]);
    expect(told(1.15)).toEqual([]);
  });

  it("should stay a matter of laps where a lap is named, and a run of bars where there is one", () => {
    expect(told(115, 60, "Übergreifungsstoß")).toEqual([]);
    expect(told(115, 1)).toEqual([
      "D5 broken: length 115000 mm is over the stock length 12000 mm, and no lap is named: ask the designer where to lap",
    ]);
  });

  it("should be named under the total with the part that rests on it", () => {
    // 60 x 115 m x 0.395 kg/m = 2725.5 kg, the others 28.4 + 35.5 + 51.8 + 53.3 + 45.7 kg (BS 4449:2005, table 7)
    expect(notes(115)).toEqual([
      "weighed by number and length, against another figure of the row: D5 2725.5 kg (93 % of the total), by a length that no bar is rolled in",
    ]);
    expect(notes(1.15)).toEqual([]);
    expect(notes(115, 60, "Übergreifungsstoß")).toEqual([]);
  });
});
