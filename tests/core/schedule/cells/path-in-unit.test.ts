import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { pathInUnit, unitOfPaths, unitsAtLegs } from "../../../../core/schedule/cells/path-in-unit";
import { turnsApart } from "../../../../core/schedule/cells/turns-apart";
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
  it.each(CASES)("%s of %s mm", (path, length, read) =>
    expect(pathInUnit(path, length, "mm", null)).toBe(read),
  );

  it("keeps the inches of a standard in inches", () => {
    expect(pathInUnit("1 +90 2", 76.2, "in", null)).toBe("1 +90 2");
  });
});

it("takes a unit that stands apart to its leg", () => {
  expect(unitsAtLegs("30 cm +90 245 cm +90 (30 cm)")).toBe("30cm +90 245cm +90 (30cm)");
});

describe("a path in a column of them", () => {
  const PATH = "30 +90 100 +90 30";
  // outside dimensions of 1.60 m about a former of 4 bar sizes: 1600 - 2 x (0.43 x 48 + ...) is near 1550 mm
  const LENGTHS = [1.55, 1.54, 1.53, 1.5, 1.57, 1.58, 1.6, 1.65, 1.7, 1.75, 1.8, 1.9, 1.3];
  const standard = resolveStandard("DIN-EC2:2013") as Standard;
  const report = (lengths: readonly (number | null)[], path = PATH) => {
    const heads = ["Pos.", "Stück", "Ø [mm]", "Einzellänge [m]", "Biegeform"];
    const rows: Cell[][] = [heads, ...lengths.map((length, at): Cell[] => [at + 1, 30, 12, length, path])];
    return runAudit({ sheets: [sheetFromRows("Liste", rows)], standard });
  };
  const shapes = (lengths: readonly (number | null)[], path?: string) =>
    new Set(report(lengths, path).sheets[0]?.reading.bars.map(({ shape }) => shape));

  it("is in the unit of the column, however wrong the length beside it", () => {
    expect(shapes(LENGTHS)).toEqual(new Set(["30cm +90 100cm +90 30cm"]));
    const told = report(LENGTHS).findings.filter(({ code }) => code.startsWith("LEN10"));
    // 1900 - 1550 mm and 1300 - 1550 mm
    expect(told.map(({ message }) => message).join()).toMatch(/1900 mm is 3[45]\d mm over/);
    expect(told.map(({ message }) => message).join()).toMatch(/1750 mm is (?:19[0-9]|200) mm over/);
  });

  it("does not flip to make a length right that is ten times too long", () => {
    expect(shapes([1.55, 1.55, 15.5], "300 +90 1000 +90 300")).toEqual(new Set(["300 +90 1000 +90 300"]));
    const { findings } = report([1.55, 1.55, 15.5], "300 +90 1000 +90 300");
    expect(findings.map(({ code, row }) => `${code} ${row}`)).toContain("UNIT101 4");
  });

  it("is in it without a length and with a hook too", () => {
    expect(shapes([1.55, 1.54, null])).toEqual(new Set(["30cm +90 100cm +90 30cm"]));
    expect(pathInUnit("hook90 2.45 +90 0.30", null, "mm", "m")).toBe("hook90 2.45m +90 0.30m");
  });

  it("goes by its own length where the column is of two minds", () => {
    const of = (path: string, length: number): [string, number] => [path, length];
    expect(unitOfPaths([of(PATH, 1550), of(PATH, 155)])).toBeNull();
    expect(unitOfPaths([of(PATH, 1550), of(PATH, 1550), of(PATH, 155)])).toBe("cm");
    expect(pathInUnit(PATH, 1900, "mm", null)).toBe("30cm +90 100cm +90 30cm");
  });
});

describe("a turn that stands at its leg", () => {
  const SPREAD: [string, string][] = [
    ["40+90 200+90 40", "40 +90 200 +90 40"],
    ["40 + 90 200 - 45 40", "40 +90 200 -45 40"],
    ["400+90r60 (2000)-90 400", "400 +90r60 (2000) -90 400"],
    // legs that are added, a run, a turn that no bend has
    ["40+90+200", "40+90+200"],
    ["40+90", "40+90"],
    ["400+900 200", "400+900 200"],
    ["21", "21"],
  ];
  it.each(SPREAD)("%s", (typed, read) => expect(turnsApart(typed)).toBe(read));

  it("is read in a schedule as if it stood apart", () => {
    const standard = resolveStandard("DIN-EC2:2013") as Standard;
    const rows: Cell[][] = [
      ["Pos.", "Stück", "Ø [mm]", "Einzellänge [m]", "Biegeform"],
      [1, 40, 12, 2.74, "40+90 200+90 40"],
    ];
    const { findings, sheets } = runAudit({ sheets: [sheetFromRows("Liste", rows)], standard });
    expect(sheets[0]?.reading.bars[0]?.shape).toBe("40cm +90 200cm +90 40cm");
    expect(findings.map(({ message }) => message).join()).not.toContain("were not checked (rows");
  });
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
