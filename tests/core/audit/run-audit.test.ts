import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { ExampleRow } from "../../../core/audit/rule";
import { openAudit, recheck, runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { seededSchedule } from "../../bench/seeded-schedule";
import { standardNamed } from "./rule-cases";

const standard = standardNamed("BS8666:2005");

function sheetOf(rows: readonly ExampleRow[]): Sheet {
  return exampleSheets({ rows })[0] as Sheet;
}

describe("runAudit", () => {
  it("should give findings in order of row, the worst first", () => {
    const sheet = sheetOf([
      { size: "H16", shape: "11", A: 501, B: 400, length: 875, former: 50, members: 1, each: 2, total: 3 },
      { size: "H16", shape: "00", A: 1000, length: 1025 },
    ]);
    const found = runAudit({ sheets: [sheet], standard }).findings.map(({ row, severity }) => [
      row,
      severity,
    ]);
    expect(found).toEqual([
      [null, "note"],
      [2, "unsafe"],
      [2, "off-standard"],
      [2, "off-standard"],
      [3, "off-standard"],
    ]);
  });

  it("should count every row of the used range once and name the header's row", () => {
    const sheet = sheetFromRows("S", [
      ["Slab 1"],
      ["Member", "Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A"],
      ["B1", "01", "H16", 2, 1000, "00", 1000],
      [null],
      ["TOTAL", null, null, 2],
    ]);
    const report = runAudit({ sheets: [sheet], standard });
    expect(report.sheets[0]?.header).toBe(2);
    const { rows } = report;
    expect(rows.bars).toBe(1);
    expect(rows.bars + rows.headings + rows.totals + rows.notes + rows.blank + rows.unread).toBe(5);
  });

  it("should put addresses in the sheet's own coordinates", () => {
    const inner = sheetOf([{ size: "H16", shape: "00", A: 1000, length: 1025 }]);
    const report = runAudit({ sheets: [{ ...inner, top: 10, left: 2 }], standard });
    expect(report.findings.filter(({ row }) => row !== null).map(({ row, cell }) => [row, cell])).toEqual([
      [12, "I12"],
    ]);
  });

  it("should tell nothing of a rule that is turned off, and take changed limits", () => {
    const CHANGED = "limit changed in this workbook (no name given, no date given: no reason given)";
    const sheets = [sheetOf([{ size: "H20", shape: "00", A: 9500, length: 9500 }])];
    const settings = auditSettings.parse({
      rulesOff: ["READ104"],
      limits: { stockLength: 9000, handLift: 20 },
    });
    const report = runAudit({ sheets, standard, settings });
    expect(report.findings.map(({ code, cite }) => [code, cite?.document])).toEqual([
      ["SUPPLY101", CHANGED],
      ["LIFT101", CHANGED],
    ]);
  });

  it("should not tell a finding that is waived, say who waived it, and tell of a waiver that no longer applies", () => {
    const sheets = [sheetOf([{ size: "H16", shape: "00", A: 1000, length: 1025 }])];
    const named = { by: "A. Detailer", date: "2031-03-02" };
    const waiver = {
      code: "LEN102",
      sheet: "Schedule",
      key: "B1 | 01",
      reason: "agreed with the site",
      ...named,
    };
    const old = { code: "SUM101", sheet: "Schedule", key: "B1 | 01", reason: "was wrong once", ...named };
    const settings = auditSettings.parse({ waivers: [waiver, old] });
    const report = runAudit({ sheets, standard, settings });
    expect(report.findings.map(({ code, cell }) => [code, cell])).toEqual([
      ["READ104", null],
      ["SETTING101", "B2"],
    ]);
    expect(report.waivers).toMatchObject([
      {
        rule: "LEN102",
        sheet: "Schedule",
        row: 2,
        reason: "agreed with the site",
        ...named,
        bars: 1,
        unsafe: 0,
      },
    ]);
    expect(report.outdatedWaivers).toEqual([old]);
  });

  it("should read a sheet as its user corrected it, and use a guess that was confirmed", () => {
    const rows = [
      ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A", "B", "Offcut"],
      ["01", "H16", 2, 875, "11", 500, 400, 60],
    ];
    const read = (readings: unknown) => {
      const settings = auditSettings.parse({ readings });
      return runAudit({ sheets: [sheetFromRows("S", rows)], standard, settings }).sheets[0]?.reading.bars[0];
    };
    expect(read([])).toMatchObject({ dims: [500, 400], former: null });
    expect(read([{ sheet: "S", columns: [{ column: "Offcut", kind: "former" }] }])?.former).toBe(60);
    expect(read([{ sheet: "T", columns: [{ column: "Offcut", kind: "former" }] }])?.former).toBeNull();
  });

  it("should find nothing but the planted rows in a clean schedule", () => {
    const { matrix, planted } = seededSchedule(2000);
    const { byRow: findings } = runAudit({ sheets: [sheetFromRows("S", matrix)], standard });
    const rows = new Set(findings.flatMap(({ row }) => (row === null ? [] : [row])));
    expect([...rows].filter((row) => (row - 1) % 20 !== 0)).toEqual([]);
    expect(rows.size).toBe(planted);
  });

  it("should never put NaN or an unfilled place into a message", () => {
    const { matrix } = seededSchedule(400);
    const { findings } = runAudit({ sheets: [sheetFromRows("S", matrix)], standard });
    expect(findings.filter(({ message }) => /NaN|undefined|\{\w+\}/.test(message))).toEqual([]);
  });
});

describe("recheck", () => {
  const { matrix } = seededSchedule(120);
  const cells = fc.oneof<fc.Arbitrary<Cell>[]>(
    fc.constant(null),
    fc.integer({ min: 0, max: 3000 }),
    fc.constantFrom<Cell>("H20", "21", "11", "B500B", "M00002", "07", "x", "B"),
  );

  it("should find what a whole audit of the changed sheet finds", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 18 }), cells), {
          minLength: 1,
          maxLength: 4,
        }),
        (edits) => {
          let rows = matrix;
          let audit = openAudit({ sheets: [sheetFromRows("S", rows)], standard });
          for (const [row, column, to] of edits) {
            rows = rows.map((old, at) =>
              at === row ? old.map((cell, place) => (place === column ? to : cell)) : old,
            );
            audit = recheck(audit, sheetFromRows("S", rows), row, row);
          }
          const whole = runAudit({ sheets: [sheetFromRows("S", rows)], standard });
          expect(audit.report.findings).toEqual(whole.findings);
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });

  it("should judge every shape anew once the codes are of another list, and back", () => {
    const codes = ["51", "37", "51", "38", "51", "37"];
    const rows = (first: readonly string[]): ExampleRow[] =>
      codes.map((code, at) => ({ size: "T16", shape: first[at] ?? code, A: 600, B: 501, C: 500, length: 1 }));
    const before = sheetOf(rows([]));
    const after = sheetOf(rows(["38"]));
    const whole = (sheet: Sheet) => runAudit({ sheets: [sheet], standard }).findings;
    expect(whole(before).some(({ code }) => code === "SIZE105")).toBe(false);
    expect(whole(after).map(({ code }) => code)).toContain("SIZE105");
    // one question, and nothing else is said of a shape
    expect(whole(after).filter(({ code }) => code.startsWith("SHAPE") || code === "LEN102")).toEqual([]);
    const there = recheck(openAudit({ sheets: [before], standard }), after, 1, 1);
    expect(there.report.findings).toEqual(whole(after));
    expect(recheck(there, before, 1, 1).report.findings).toEqual(whole(before));
  });

  it("should refuse a sheet that was not audited", () => {
    const audit = openAudit({ sheets: [sheetFromRows("S", matrix)], standard });
    expect(() => recheck(audit, sheetFromRows("other", matrix), 1, 1)).toThrow('no sheet "other"');
  });
});

describe("any cells at all", () => {
  const odd = fc.oneof(
    fc.constant(null),
    fc.double({ noNaN: true }),
    fc.integer({ min: -9, max: 99999 }),
    fc.string({ maxLength: 12 }),
    fc.constantFrom<Cell>(
      "H16",
      "21",
      "11",
      "51",
      "67",
      "77",
      "500 +90 400",
      "(300)",
      "1200-1800 step 50",
      "TOTAL",
      "EF",
    ),
    fc.constant<Cell>({ error: "#REF!" }),
    fc.boolean(),
  ) as fc.Arbitrary<Cell>;

  it("should never throw, and never say NaN", () => {
    const [header] = seededSchedule(1).matrix;
    fc.assert(
      fc.property(
        fc.array(fc.array(odd, { minLength: 19, maxLength: 19 }), { minLength: 1, maxLength: 12 }),
        (rows) => {
          const report = runAudit({ sheets: [sheetFromRows("S", [header ?? [], ...rows])], standard });
          for (const { message } of report.findings) expect(message).not.toMatch(/\bNaN\b|\bundefined\b/);
          const counted = Object.values(report.rows).reduce((sum, count) => sum + count, 0);
          expect(counted).toBe(rows.length + 1);
        },
      ),
      { numRuns: 400, seed: 11 },
    );
  });
});
