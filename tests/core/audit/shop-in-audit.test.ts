import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { exampleShop } from "../../../core/audit/example-shop";
import type { ExampleRow } from "../../../core/audit/rule";
import { RULES } from "../../../core/audit/rules/index";
import { openAudit, recheck, runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { seededSchedule } from "../../bench/seeded-schedule";
import { standardNamed } from "./rule-cases";

const standard = standardNamed("BS8666:2005");
const OF_MACHINES = new Set(RULES.map(({ code }) => code).filter((code) => /^(MACHINE|SHOP)/.test(code)));

function schedule(rows: readonly ExampleRow[]): Sheet {
  return exampleSheets({ rows })[0] as Sheet;
}

function shopNamed(name: string, rows: readonly (readonly Cell[])[]): Sheet {
  return sheetFromRows(name, rows);
}

const BAR: ExampleRow = { size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 80 };

describe("the Shop sheet in an audit", () => {
  it("should be no schedule, whatever case its name is in", () => {
    for (const name of ["Shop", "SHOP", " shop "]) {
      const sheets = [shopNamed(name, exampleShop()), schedule([BAR])];
      const report = runAudit({ sheets, standard });
      expect(report.sheets.map(({ sheet }) => sheet)).toEqual(["Schedule"]);
      expect(report.shopSheet).toBe(name);
      expect(report.findings.filter(({ sheet }) => sheet === name).map(({ code }) => code)).toEqual([
        "SHOP102",
      ]);
      expect(report.findings.map(({ code }) => code)).toContain("MACHINE101");
    }
  });

  it("should leave an audit without it free of machines", () => {
    const { matrix } = seededSchedule(200);
    const report = runAudit({ sheets: [sheetFromRows("S", matrix), schedule([BAR])], standard });
    expect(report.shopSheet).toBeNull();
    expect(report.findings.filter(({ code }) => OF_MACHINES.has(code))).toEqual([]);
  });

  it("should tell what it does not hold once, not once a row", () => {
    const { matrix } = seededSchedule(300);
    const blank: readonly Cell[][] = [
      ["Machine", "Largest angle", "Guard radius"],
      ["Bench 2", null, null],
    ];
    const report = runAudit({ sheets: [sheetFromRows("S", matrix), shopNamed("Shop", blank)], standard });
    const found = report.findings.filter(({ code }) => OF_MACHINES.has(code));
    expect(found.map(({ code, severity, outcome, row }) => [code, severity, outcome, row])).toEqual([
      ["SHOP102", "note", "unsure", null],
    ]);
  });

  it("should be taken for limits after the workbook's own and before the standard's", () => {
    const rows: ExampleRow[] = [
      { size: "H32", shape: "00", A: 9500, length: 9500 },
      { size: "H20", shape: "00", A: 9500, length: 9500 },
    ];
    const cells: readonly Cell[][] = [
      ["Size", "Stock length", "Kind"],
      ["H32", 9000, "stock"],
      ["H32", 12000, "remnant"],
      [],
      ["Limit", "Value"],
      ["Hoist or crane kg", 50],
      ["Lift by hand kg", 30],
    ];
    const sheets = [schedule(rows), shopNamed("Shop", cells)];
    const CHANGED = "limit changed in this workbook (no name given, no date given: no reason given)";
    const of = (limits: object) =>
      runAudit({ sheets, standard, settings: auditSettings.parse({ limits }) })
        .findings.filter(({ code }) => code === "SUPPLY101" || code === "LIFT101")
        .map(({ row, code, severity, cite }) => [row, code, severity, cite?.document]);
    // 6.313 kg/m makes 59.97 kg of 32 mm; 2.466 makes 23.4 kg of 20 mm, below 30
    expect(of({})).toEqual([
      [2, "LIFT101", "unsafe", "Shop sheet of this workbook"],
      [2, "SUPPLY101", "doubtful", "Shop sheet of this workbook"],
    ]);
    expect(of({ hoist: 100, stockLength: 8000 })).toEqual([
      [2, "SUPPLY101", "doubtful", CHANGED],
      [2, "LIFT101", "note", "Shop sheet of this workbook"],
      [3, "SUPPLY101", "doubtful", CHANGED],
    ]);
  });

  it("should lift with a hoist that takes less than a hand", () => {
    const cells: readonly Cell[][] = [
      ["Limit", "Value"],
      ["Hoist", 10],
    ];
    const sheets = [
      schedule([{ size: "H20", shape: "00", A: 6000, length: 6000 }]),
      shopNamed("Shop", cells),
    ];
    const found = runAudit({ sheets, standard }).findings.filter(({ code }) => code === "LIFT101");
    expect(found.map(({ severity }) => severity)).toEqual(["unsafe"]);
  });

  it("should judge every row anew when it changes itself", () => {
    const before = openAudit({ sheets: [schedule([BAR]), shopNamed("Shop", exampleShop())], standard });
    const richer = shopNamed("Shop", exampleShop({ bender: { formers: "64, 80" } }));
    const after = recheck(before, richer, 1, 1);
    const codes = ({ report }: typeof before) => report.findings.map(({ code }) => code);
    expect(codes(before)).toContain("MACHINE101");
    expect(codes(after)).not.toContain("MACHINE101");
    expect(after.report.findings).toEqual(runAudit({ sheets: [schedule([BAR]), richer], standard }).findings);
  });

  it("should find after an edit of a schedule what a whole audit finds", () => {
    const shop = shopNamed("Shop", exampleShop({ limits: { temperature: -7, hoist: 400 } }));
    const rows: ExampleRow[] = [
      BAR,
      { size: "H12", shape: "21", A: 900, B: 100, C: 900, length: 1875 },
      { size: "H16", shape: "11", A: 800, B: 140, length: 900 },
    ];
    let audit = openAudit({ sheets: [schedule(rows), shop], standard });
    const edits: ExampleRow[] = [{ former: 64 }, { B: 700 }, { B: 130 }];
    edits.forEach((edit, index) => {
      rows[index] = { ...rows[index], ...edit };
      audit = recheck(audit, schedule(rows), index + 1, index + 1);
      expect(audit.report.findings).toEqual(runAudit({ sheets: [schedule(rows), shop], standard }).findings);
    });
    expect(audit.report.findings.map(({ code }) => code)).toContain("MACHINE103");
  });

  it("should waive a finding of its own by its row", () => {
    const rows = exampleShop({ bender: { guardRadius: "wide" } });
    const waiver = { code: "SHOP101", sheet: "Shop", key: "row 2", reason: "to be measured" };
    const settings = auditSettings.parse({ waivers: [waiver] });
    const report = runAudit({ sheets: [schedule([BAR]), shopNamed("Shop", rows)], standard, settings });
    expect(report.waivers.flatMap(({ findings }) => findings.map(({ cell }) => cell))).toEqual(["C2"]);
    expect(report.outdatedWaivers).toEqual([]);
  });
});
