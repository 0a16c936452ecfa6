import { describe, expect, it } from "vitest";
import type { RowClass } from "../../../../core/schedule/bar-row";
import { explainRows } from "../../../../core/schedule/explain-reading";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import type { RowReasonCode } from "../../../../core/schedule/rows/row-reason";
import { rowReasonText } from "../../../../core/schedule/rows/row-reason-text";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

const HEADER = "Member|Bar mark|Size|No. of mbrs|No. in each|Total no.|Length (mm)|Shape code|A|B".split("|");
const BAR: readonly Cell[] = ["B1", "01", "H16", 1, 8, 8, 1400, "11", 1000, 400];

/** Each row as it is typed under a header and a bar, and what it is and why. */
const ROWS: readonly (readonly [readonly Cell[], RowClass, RowReasonCode])[] = [
  [BAR, "bar", "size-count-length"],
  [["B1", "02", "H16", null, null, "8 nos", "1.4 m", "11", 1000, 400], "bar", "fields-of-a-bar"],
  [[null, "07", "H16"], "bar", "size-and-mark"],
  [["Total", null, null, null, null, 16, 22_400], "total", "sum-word"],
  // abstracts below a list, as lists of many countries have them: common practice
  [["H16", 407.7, "kg"], "total", "sum-by-size"],
  [["ds 16", 265.6], "total", "sum-by-size"],
  [[null, null, "Ø8", 0.588, "ton"], "total", "sum-by-size"],
  [["12 mm", 315.37, "kg"], "total", "sum-by-size"],
  // a mass under the size, below 100 kg and with a fraction; a whole number there may be a bar begun
  [[null, "R8", 86.7], "total", "sum-by-size"],
  [[null, "R8", 12], "bar", "size-and-mark"],
  // a word that heads the lines stands in the first of them
  [["riepilogo", "\u00d88", 318.3, "kg"], "total", "sum-by-size"],
  [["Wastage 3 %", null, null, null, null, null, 672], "note", "wastage-word"],
  [[null, null, null, null, null, 16, 22_400], "total", "numbers-alone"],
  [["BEAM B2 (6 Nos)"], "heading", "member-heading"],
  [[null, null, null, null, null, null, null, null, "bend on site"], "note", "text-alone"],
  [["Page 2 of 3"], "note", "title-or-foot"],
  [["Site ref: Alder Row", "Dwg: S-14", null, "Rev: B", null, "Prepared by: a.n."], "note", "title-or-foot"],
  [HEADER, "heading", "header-again"],
  [[null, "09", null, null, null, null, null, null, null, null, "C"], "unread", "mark-alone"],
  // a mark of two words that lost its bar, and no mass beside it
  [[null, "pad 09", null, null, null, null, null, null, null, null, "C"], "unread", "mark-alone"],
  [[null, null, "see drawing", null, null, "lots"], "unread", "size-unread"],
];

/** Sums of a page under marks, sizes and masses; kg as typed in the rows, added by hand. */
const PAGE: readonly Cell[][] = [
  ["Mark", "Size", "Total no.", "Length (mm)", "Mass (kg)"],
  ["01", "H12", 10, 2000, 17.8],
  ["02", "H16", 20, 2000, 63.2],
];
const SUMS_OF_PAGE: readonly (readonly [label: string, mass: number, RowClass, RowReasonCode])[] = [
  // words for sums among others, whatever the sum is
  ["Sivu 2 yhteensä kg", 90, "total", "sum-word"],
  ["Blad 2 summa vikt", 90, "total", "sum-of-rows"],
  ["第2页合计", 90, "total", "sum-word"],
  // words that nobody knows beside what the rows add up to: 17.8 + 63.2
  ["Seite 2 zusammen", 81, "total", "sum-of-rows"],
  ["Sayfa 2 toplamı", 81, "total", "sum-word"],
  ["Seite 2 zusammen", 82, "unread", "mark-alone"],
  // one word is a mark
  ["03", 81, "unread", "mark-alone"],
];

describe("what a row is, and why", () => {
  it.each(ROWS)("%j should be a %s: %s", (row, rowClass, code) => {
    const sheet = sheetFromRows("S", [HEADER, BAR, row]);
    const reading = readSchedule(sheet, standardNamed("BS8666:2005"));
    const explained = explainRows(sheet, reading)[2];
    expect(explained).toMatchObject({ row: 3, class: rowClass, because: { code } });
    expect(rowReasonText(explained?.because ?? { code: "no-name" })).not.toContain("{");
  });

  it.each(SUMS_OF_PAGE)(
    "%s with %d kg under rows of 81 kg should be a %s: %s",
    (label, mass, rowClass, code) => {
      const { rowClasses, rowReasons } = readSchedule(
        sheetFromRows("S", [...PAGE, [label, null, null, null, mass]]),
        standardNamed("BS8666:2005"),
      );
      expect([rowClasses[3], rowReasons[3]?.code]).toEqual([rowClass, code]);
    },
  );

  it("should leave no row of a sheet without a reason", () => {
    const sheet = sheetFromRows("S", [["Bar schedule"], [], HEADER, BAR, [], BAR]);
    const { rowReasons } = readSchedule(sheet, standardNamed("BS8666:2005"));
    expect(rowReasons.map(({ code }) => code)).toEqual([
      ...["outside-of-tables", "nothing-filled", "header", "size-count-length", "nothing-filled"],
      "size-count-length",
    ]);
  });
});
