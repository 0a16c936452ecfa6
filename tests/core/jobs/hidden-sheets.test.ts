import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import {
  type Book,
  checkBooks,
  openForJob,
  readSchedules,
  tonnageOf,
  type Visibility,
} from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { heldStandard } from "../../_support/held-standard";

const HEADER: Cell[] = ["Member", "Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A"];
const rows = (count: number): Cell[][] => [HEADER, ["B1", "01", "H16", count, 2000, "00", 2000]];

/** A book in memory with a sheet for each name. */
function bookOf(sheets: Readonly<Record<string, Visibility>>): Book {
  return {
    name: "yard.xlsx",
    sheets: Object.entries(sheets).map(([name, visibility]) => ({ name, visibility })),
    read: (name) => sheetFromRows(name, rows(10)),
    setting: () => null,
  };
}

const read = (book: Book, sheet: string | null) => {
  const opened = openForJob(book, { sheet, standard: null });
  if (isRefusal(opened)) throw new Error(opened.code);
  const known = readSchedules(opened);
  if (isRefusal(known)) throw new Error(known.code);
  return known;
};

describe("hidden sheets", () => {
  const book = bookOf({ Bars: "visible", "Old copy": "hidden", Draft: "very hidden" });

  it("should be counted only when named, and told", () => {
    const known = read(book, null);
    // 10 x 2 m x 1.579 kg/m (UK three-decimal table) = 31.58 kg, once
    expect(tonnageOf([known]).reckoned.tonnage.total).toBe(0.03158);
    expect(known.notes).toEqual([
      'sheet "Old copy" is hidden and is not counted: name it to have it read',
      'sheet "Draft" is very hidden and is not counted: name it to have it read',
    ]);
    const named = read(book, "Old copy");
    expect(named.schedules.map(({ sheet }) => sheet.name)).toEqual(["Old copy"]);
    expect(named.notes).toEqual([]);
  });

  it("should be alike in a check, and not supersede what is seen", () => {
    const [checked] = checkBooks([book], { sheet: null, standard: null });
    if (checked === undefined || isRefusal(checked)) throw new Error("not checked");
    expect(checked.report.sheets.map(({ sheet }) => sheet)).toEqual(["Bars"]);
    expect(checked.tonnage.tonnage.total).toBe(0.03158);
  });

  it("should be named where what is seen holds no schedule", () => {
    const cover = bookOf({ Cover: "visible", Bars: "hidden", Draft: "very hidden" });
    const book: Book = {
      ...cover,
      read: (name) => sheetFromRows(name, name === "Cover" ? [["Cover"]] : rows(10)),
    };
    const [checked] = checkBooks([book], { sheet: null, standard: null });
    if (checked === undefined || !isRefusal(checked)) throw new Error("a cover is no schedule");
    expect(refusalText(checked)).toMatch(
      /^sheet "Cover" has no header row.*; sheet "Bars" is hidden and is not counted: name it to have it read; sheet "Draft" is very hidden/,
    );
  });

  it("should be named where there is nothing else", () => {
    const opened = openForJob(bookOf({ A: "hidden" }), { sheet: null, standard: null });
    expect(isRefusal(opened) && opened.code).toBe("job-sheets-hidden");
  });
});

describe("a job of several books", () => {
  it("should add up over all of them", () => {
    const one = read(bookOf({ Bars: "visible" }), null);
    const other = read(bookOf({ Bars: "visible" }), null);
    const { tonnage } = tonnageOf([one, other]).reckoned;
    expect([tonnage.total, tonnage.rows]).toEqual([0.06316, 2]);
  });
});

describe("hidden columns", () => {
  it("should be named by heading and letter, once a sheet, where they are read", () => {
    const seen = bookOf({ Bars: "visible" });
    const hides = (...columns: number[]): Book => ({
      ...seen,
      read: (name) =>
        Object.assign(sheetFromRows(name, [[...HEADER, null], ...rows(10).slice(1)]), {
          isHiddenColumn: (column: number) => columns.includes(column),
        }),
    });
    // the eighth column is blank, and nothing is read of it
    expect(read(hides(3, 5, 7), null).notes).toEqual([
      'sheet "Bars": 2 hidden columns read all the same: "Total no." (D), "Shape code" (F)',
    ]);
    expect(read(hides(7), null).notes).toEqual([]);
  });

  it("should be a note of the audit, which every surface shows", () => {
    const standard = heldStandard("BS8666:2005");
    const sheet = Object.assign(sheetFromRows("Bars", [[...HEADER, null], ...rows(10).slice(1)]), {
      isHiddenColumn: (column: number) => column === 3,
    });
    const told = runAudit({ sheets: [sheet], standard }).byRow.filter(({ message }) =>
      message.includes("hidden"),
    );
    expect(told.map(({ code, severity, message }) => [code, severity, message])).toEqual([
      ["READ102", "note", '1 hidden column read all the same: "Total no." (D)'],
    ]);
  });
});
