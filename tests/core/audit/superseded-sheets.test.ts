import { describe, expect, it } from "vitest";
import { openAudit, recheck, runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");
const HEADER = ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A"];

function schedule(name: string, reference: string, revision: string, marks: readonly string[]): Sheet {
  const bars = marks.map((mark): Cell[] => ["B1", mark, "H16", 2, 1000, "00", 1000]);
  return sheetFromRows(name, [
    ["Job", "Marrow Fen"],
    ["Schedule ref", reference, "Rev", revision],
    HEADER,
    ...bars,
  ]);
}

const OLD = schedule("First", "S-101", "A", ["01", "02"]);
const NEW = schedule("Second", "S-101", "B", ["01", "02"]);
/** the same member and marks, and another schedule */
const OTHER = schedule("Third", "S-102", "C", ["01", "02"]);

const superseded = (question: Parameters<typeof runAudit>[0]) =>
  runAudit(question).findings.flatMap(({ code, sheet, cell, severity, message }) =>
    code === "REV101" ? [{ sheet, cell, severity, message }] : [],
  );

describe("a schedule that stands twice in a workbook", () => {
  it("is superseded by the later revision of its title block, and by no other schedule", () => {
    expect(superseded({ sheets: [OLD, NEW, OTHER], standard })).toEqual([
      {
        sheet: "First",
        cell: "B4",
        severity: "unsafe",
        message:
          "revision A of mark 01 is superseded by revision B in sheet Second, row 4: strike the row through",
      },
      {
        sheet: "First",
        cell: "B5",
        severity: "unsafe",
        message:
          "revision A of mark 02 is superseded by revision B in sheet Second, row 5: strike the row through",
      },
    ]);
  });

  it("is no second list of the same bars", () => {
    const { findings } = runAudit({ sheets: [OLD, NEW], standard });
    expect(findings.filter(({ code }) => code === "MARK104")).toEqual([]);
  });

  it("is found where only the older sheet is judged, and nothing is said of the others", () => {
    const report = runAudit({ sheets: [NEW, OLD, OTHER], only: "First", standard });
    expect(report.sheets.map(({ sheet }) => sheet)).toEqual(["First"]);
    expect(report.rows.bars).toBe(2);
    expect(new Set(report.findings.map(({ sheet }) => sheet))).toEqual(new Set(["First"]));
    expect(report.findings.filter(({ code }) => code === "REV101")).toHaveLength(2);
    expect(superseded({ sheets: [NEW, OLD, OTHER], only: "Second", standard })).toEqual([]);
  });

  it("is found anew after an edit of the sheet that is judged", () => {
    const audit = openAudit({ sheets: [OLD, NEW], only: "First", standard });
    const renamed = schedule("First", "S-101", "A", ["01", "09"]);
    const found = recheck(audit, renamed, 4, 4).report.findings.filter(({ code }) => code === "REV101");
    expect(found.map(({ message }) => message)).toEqual([
      "revision A of mark 01 is superseded by revision B in sheet Second, row 4: strike the row through",
      "revision A of mark 09 is superseded: revision B in sheet Second has no such mark: strike the row through",
    ]);
  });

  it("is known by the names of its sheets, though a sheet's name is taken for the member", () => {
    const list = (name: string, marks: readonly string[]): Sheet =>
      sheetFromRows(name, [
        HEADER.slice(1),
        ...marks.map((mark): Cell[] => [mark, "H16", 2, 1000, "00", 1000]),
      ]);
    expect(
      superseded({ sheets: [list("Deck rev A", ["01"]), list("Deck rev B", ["01"])], standard }),
    ).toEqual([
      expect.objectContaining({
        sheet: "Deck rev A",
        message: expect.stringContaining("sheet Deck rev B, row 2"),
      }),
    ]);
    // one sheet a member, named after it
    expect(superseded({ sheets: [list("B1", ["01"]), list("B2", ["01"])], standard })).toEqual([]);
  });

  it("says nothing where the title block leaves the revision open", () => {
    expect(
      superseded({ sheets: [schedule("First", "S-101", "see drawing", ["01"]), NEW], standard }),
    ).toEqual([]);
  });
});
