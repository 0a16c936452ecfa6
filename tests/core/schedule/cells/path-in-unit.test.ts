import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { pathInUnit, unitsAtLegs } from "../../../../core/schedule/cells/path-in-unit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

describe("a path of bare numbers", () => {
  // the legs add up to 3.05 m or 3050 mm
  const CASES: [string, number | null, string][] = [
    ["0,30 +90 2,45 +90 0,30", 3000, "0,30m +90 2,45m +90 0,30m"],
    ["0.30 +90r60 (2.45) -90 0.30", 3000, "0.30m +90r60 (2.45m) -90 0.30m"],
    ["30 +90 245 +90 30", 3000, "30cm +90 245cm +90 30cm"],
    ["300 +90 2450 +90 300", 3000, "300 +90 2450 +90 300"],
    // nothing proves it, a leg says its own unit, a hook has a length of its own
    ["0,30 +90 2,45 +90 0,30", null, "0,30 +90 2,45 +90 0,30"],
    ["0,30 +90 2,45 +90 0,30", 5000, "0,30 +90 2,45 +90 0,30"],
    ["0.30m +90 2.45 +90 0.30", 3000, "0.30m +90 2.45 +90 0.30"],
    ["hook90 2.45 +90 0.30", 3000, "hook90 2.45 +90 0.30"],
    ["21", 3000, "21"],
  ];
  it.each(CASES)("%s of %s mm", (path, length, read) => expect(pathInUnit(path, length, "mm")).toBe(read));

  it("keeps the inches of a standard in inches", () => {
    expect(pathInUnit("1 +90 2", 76.2, "in")).toBe("1 +90 2");
  });
});

it("takes a unit that stands apart to its leg", () => {
  expect(unitsAtLegs("30 cm +90 245 cm +90 (30 cm)")).toBe("30cm +90 245cm +90 (30cm)");
});

describe("a list in metres", () => {
  const standard = resolveStandard("DIN-EC2:2013") as Standard;
  const HEADS = ["Bauteil", "Pos", "Stück", "Ø", "Einzellänge [m]", "Gesamtlänge [m]", "Biegeform"];
  const found = (path: string, count: Cell = 12, total: Cell = "36,00") => {
    const rows = [
      HEADS,
      ["UZ1", 1, 8, 25, "7,35", "58,80", null],
      ["UZ1", 2, 6, 16, "7,20", "43,20", null],
      ["UZ1", 3, count, 12, "3,00", total, path],
    ];
    return runAudit({ sheets: [sheetFromRows("Liste", rows)], standard });
  };

  it("has its paths in metres too", () => {
    for (const path of ["0,30 +90 2,45 +90 0,30", "30 cm +90 245 cm +90 30 cm"])
      expect(found(path).findings.map(({ code }) => code)).not.toContainEqual(
        expect.stringMatching(/BEND|SHAPE|LEN10[23]/),
      );
  });

  it("has points between the thousands of its counts where commas part its decimals", () => {
    const report = found("0,30 +90 2,45 +90 0,30", "1.200", "3600,00");
    expect(report.sheets[0]?.reading.bars[2]?.total).toBe(1200);
    expect(report.findings.map(({ code }) => code)).not.toContain("READ101");
  });
});

it("leaves a count with a point unread where points part the decimals", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const rows: Cell[][] = [
    ["Mark", "Size", "Total no.", "Length m", "Shape code"],
    ["1", "H16", "1.200", "2.50", "00"],
    ["2", "H16", "4", "3.25", "00"],
  ];
  const { findings } = runAudit({ sheets: [sheetFromRows("Bars", rows)], standard });
  expect(findings.map(({ code, cell }) => `${code} ${cell}`)).toContain("READ101 C2");
});
