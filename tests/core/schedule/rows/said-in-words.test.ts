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
    ["Job: Ewden bridge, schedule EW-01, revision A, BS 8666:2020"],
    ["Job: Ewden bridge, schedule EW-01, rev A, 12 March 2031"],
    ["Job: Ewden bridge, EW-01 revision A, BS 8666:2020"],
    ["Job: Ewden bridge - Schedule: EW-01 - Revision: A - BS 8666:2020"],
    ["Job: Ewden bridge, EW-01 rev. A"],
  ])("should end a job's name at what the title names next: %s", (text) => {
    const said = { schedule: "EW-01", drawing: null, revision: "A" };
    expect(saidInWords(text)).toEqual({ ...said, rest: "Job: Ewden bridge" });
  });

  it("should keep what follows where nothing stands before", () => {
    expect(saidInWords("Revision B, Job: Ewden bridge").rest).toBe("Job: Ewden bridge");
  });

  it.each([
    "Bar schedule",
    "Page 2 rev A of the specification",
    "Sheet 1 rev A",
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
