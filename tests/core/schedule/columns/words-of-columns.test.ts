import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";
import { reckonTonnage } from "../../../../core/totals";

const standard = resolveStandard("BS8666:2005") as Standard;

describe("lengths of several hundred under a head in metres", () => {
  const rows: Cell[][] = [
    ["Mark", "Size", "Total", "Length (m)"],
    ["1", "H16", 20, 360],
    ["2", "H12", 28, 245],
    ["3", "H20", 30, 585],
    ["4", "H10", 120, 182],
  ];
  const sheet = sheetFromRows("List", rows);

  it("may be in cm, which is offered, or in mm", () => {
    const { findings } = runAudit({ sheets: [sheet], standard });
    expect(findings.map(({ message }) => message).join()).toContain(
      "the header says m, but the middle value is 245: cm is meant, or mm",
    );
  });

  it("are not said to be missing from the rows that hold them", () => {
    const { notInTotal } = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
    expect([...new Set(notInTotal.map(({ why }) => why))]).toEqual([
      "a length is written, but is not used until what is asked of it is answered",
    ]);
  });
});

it("names the columns that were looked at and confirm nothing", () => {
  const row = (mark: string): Cell[] => [mark, "H16", 10, 2, "00", null];
  const rows: Cell[][] = [
    ["Mark", "Size", "Total", "Length (m)", "Shape", "Mass kg"],
    ...["1", "2", "3", "4", "5"].map(row),
  ];
  const reasons = (readSchedule(sheetFromRows("List", rows), standard).guesses ?? []).map(
    ({ reason }) => reason,
  );
  expect(reasons).toContainEqual(
    expect.stringContaining('for sure: too few rows have figures in "Mass kg" that can be tested'),
  );
});
