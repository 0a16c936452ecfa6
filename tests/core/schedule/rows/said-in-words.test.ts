import { describe, expect, it } from "vitest";
import { saidInWords } from "../../../../core/schedule/rows/said-in-words";

const NOTHING = { schedule: null, drawing: null, revision: null };

// how title blocks are filled in by hand: common practice
describe("what a title says of itself in words", () => {
  it.each([
    ["Bar schedule EW-01 rev A", { schedule: "EW-01", revision: "A" }],
    ["Schedule LF-07", { schedule: "LF-07" }],
    ["Bar bending schedule no. 101 (Rev. B)", { schedule: "101", revision: "B" }],
    ["BBS No EW 01", { schedule: "EW 01" }],
    ["Dwg EW-01", { drawing: "EW-01" }],
    ["DWG S/101-2, Rev P2", { drawing: "S/101-2", revision: "P2" }],
    ["Revision B", { revision: "B" }],
    ["Rev. 3", { revision: "3" }],
  ])("should take it out of %s", (text, said) => {
    expect(saidInWords(text)).toEqual({ ...NOTHING, rest: "", ...said });
  });

  it("should leave what else the cell says as it was typed", () => {
    expect(saidInWords("Job: Ewden bridge, pier 1, schedule EW-01, revision A")).toEqual({
      ...{ schedule: "EW-01", drawing: null, revision: "A", rest: "Job: Ewden bridge, pier 1" },
    });
  });

  it.each([
    "Bar schedule",
    "Schedule of bars for the pier",
    "Schedule 2 of 5",
    "Drawing shows 12 bars",
    "Revised beams",
    "Revision of the lengths",
    "see drawing for laps",
    "Drawings 101 to 104 apply",
  ])("should take nothing out of %s", (text) => {
    expect(saidInWords(text)).toEqual({ ...NOTHING, rest: text });
  });
});
