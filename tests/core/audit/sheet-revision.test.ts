import { describe, expect, it } from "vitest";
import { sheetRevision } from "../../../core/audit/sheet-revision";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { heldStandard } from "../../_support/held-standard";

const LIST: Cell[][] = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A"],
  ["B1", "01", "H16", 2, 1000, "00", 1000],
];

function revisionOf(name: string, title: Cell[][] = []) {
  const sheet = sheetFromRows(name, [...title, ...LIST]);
  return sheetRevision(new SheetFacts(sheet, readSchedule(sheet, heldStandard("BS8666:2005"))));
}

describe("sheetRevision", () => {
  it.each([
    ["Rev A", "A"],
    ["Culvert rev B", "B"],
    ["S-101_RevC", "C"],
    ["S-101 (rev. P2)", "P2"],
    ["Beams Revision 3", "3"],
    ["Beams rev A (superseded)", "A"],
    ["Plan 12 Index D", "D"],
  ])("reads the name %s", (name, revision) => {
    expect(revisionOf(name).revision).toBe(revision);
  });

  it.each(["Sheet1", "Ground floor", "Prev B", "Review", "Beams B1", "Revised beams"])(
    "finds none in the name %s",
    (name) => {
      expect(revisionOf(name)).toEqual({ schedule: null, revision: null });
    },
  );

  it("knows two names of one schedule from two of others", () => {
    expect(revisionOf("Culvert rev A").schedule).toBe(revisionOf("culvert - Rev. B").schedule);
    expect(revisionOf("Culvert rev A").schedule).not.toBe(revisionOf("Pump house rev B").schedule);
  });

  it("takes the title block before the name", () => {
    const title = (ref: string, revision: string, job = "Marrow Fen"): Cell[][] => [
      ["Job", job],
      ["Schedule ref", ref, "Rev", revision],
    ];
    expect(revisionOf("Sheet1", title("S-101", "B"))).toEqual({ schedule: "MARROWFEN S101", revision: "B" });
    expect(revisionOf("Rev A", title("S-101", "Rev. C 12/03")).revision).toBe("C");
    expect(revisionOf("Sheet1", title("S-101", "-")).revision).toBe("-");
    expect(revisionOf("Sheet1", title("S-101", "as built"))).toMatchObject({ revision: null });
    const other = revisionOf("Sheet1", title("S-101", "B", "Tallow Lane"));
    expect(other.schedule).not.toBe("MARROWFEN S101");
  });

  it("takes a revision out of the reference", () => {
    const title: Cell[][] = [["Schedule ref", "S-101 rev B"]];
    expect(revisionOf("Sheet1", title)).toEqual({ schedule: " S101", revision: "B" });
  });

  // how offices fill the same block in: common practice
  it.each<[string, Cell[][]]>([
    ["a cell each with a colon", [["Job: Ewden bridge"], ["Schedule: EW-01", "Rev: B"]]],
    ["a cell each without", [["Job: Ewden bridge", "Schedule EW-01", "Rev B"]]],
    ["one cell", [["Job: Ewden bridge"], ["Bar schedule EW-01 rev B"]]],
    ["one cell behind the job", [["Job: Ewden bridge, schedule EW-01, revision B"]]],
    ["another name of the list", [["Job: Ewden bridge"], ["BBS No.: EW-01", "Revision B"]]],
  ])("takes the title block however it is filled in: %s", (_, title) => {
    expect(revisionOf("Sheet1", title)).toEqual({ schedule: "EWDENBRIDGE EW01", revision: "B" });
  });

  it("takes the first that the title names", () => {
    const title: Cell[][] = [["Bar schedule EW-01 rev B"], ["replaces schedule EW-01 rev A"]];
    expect(revisionOf("Sheet1", title)).toEqual({ schedule: " EW01", revision: "B" });
  });
});
