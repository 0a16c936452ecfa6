import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { exampleShop } from "../../../core/audit/example-shop";
import type { ExampleRow } from "../../../core/audit/rule";
import { openAudit, recheck, runAudit } from "../../../core/audit/run-audit";
import { whatItWouldHide } from "../../../core/audit/what-it-would-hide";
import type { Sheet } from "../../../core/schedule/sheet";
import { standardNamed } from "./rule-cases";

const standard = standardNamed("BS8666:2005");
// two with a former of 50 mm below the 64 mm of BS 8666:2005 Table 2, two with a length that is not of the code
const TIGHT: ExampleRow = { size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 50 };
const WRONG: ExampleRow = { size: "H16", shape: "11", A: 500, B: 400, length: 925, former: 64 };
const HEAVY: ExampleRow = { size: "H40", shape: "00", A: 10000, length: 10000, former: 280 };
const sheet = (rows: readonly ExampleRow[]): Sheet => exampleSheets({ rows })[0] as Sheet;
const rows = [TIGHT, TIGHT, WRONG, WRONG];

describe("whatItWouldHide", () => {
  const audit = openAudit({ sheets: [sheet(rows)], standard });

  it("should count what turning a rule off would hide", () => {
    expect(whatItWouldHide(audit, { kind: "rule off", code: "LEN102" })).toEqual({
      refusal: null,
      findings: 2,
      bars: 2,
      unsafe: 0,
      hidden: [4, 5].map((row) => ({ sheet: "Schedule", row, bars: 2, isUnsafe: false })),
    });
  });

  it("should refuse to turn off a rule that finds what is unsafe", () => {
    expect(whatItWouldHide(audit, { kind: "rule off", code: "BEND101" })).toEqual({
      refusal: "BEND101 former too small finds what is unsafe and cannot be turned off: waive it row by row",
      findings: 0,
      bars: 0,
      unsafe: 0,
      hidden: [],
    });
  });

  it("should say that a waiver would hide an unsafe bar, and what it then does hide", () => {
    const finding = audit.report.findings.find(({ code }) => code === "BEND101")!;
    expect(whatItWouldHide(audit, { kind: "waiver", finding })).toMatchObject({ bars: 1, unsafe: 1 });
    const waivers = [{ code: "BEND101", sheet: "Schedule", key: "B1 | 01", reason: "seen" }];
    const after = runAudit({ sheets: [sheet(rows)], standard, settings: auditSettings.parse({ waivers }) });
    expect(after.waivers).toMatchObject([{ bars: 1, unsafe: 1, row: 2 }]);
    expect(after.findings.filter(({ code }) => code === "BEND101").map(({ row }) => row)).toEqual([3]);
  });

  it("should count what a limit that is raised would hide, and nothing for one that is lowered", () => {
    // 10 m of 40 mm at 9.864 kg/m is 98.6 kg, above the 60 kg of the Shop sheet's hoist
    const shop = { name: "Shop", ...sheetOf(exampleShop({ limits: { hoist: 60 } })) };
    const heavy = openAudit({ sheets: [sheet([HEAVY, HEAVY]), shop], standard });
    const hides = (value: number) => whatItWouldHide(heavy, { kind: "limit", limit: "hoist", value });
    expect(hides(500)).toMatchObject({ refusal: null, bars: 2, unsafe: 2 });
    expect(hides(30)).toMatchObject({ bars: 0, unsafe: 0 });
  });
});

describe("the waivers of a report", () => {
  const limits = { hoist: { value: 500, reason: "new crane", by: "A. Detailer", date: "2031-03-02" } };
  const shop = { name: "Shop", ...sheetOf(exampleShop({ limits: { hoist: 60 } })) };
  const settings = auditSettings.parse({ limits, rulesOff: ["LEN102"] });

  it("should hold what a changed limit and a rule turned off keep back", () => {
    const { waivers, findings } = runAudit({ sheets: [sheet([HEAVY, WRONG]), shop], standard, settings });
    expect(waivers).toMatchObject(
      [
        { because: { kind: "rule off" }, rule: "LEN102", by: "", bars: 1, unsafe: 0 },
        {
          because: { kind: "limit", limit: "hoist", value: 500 },
          rule: "LIFT101",
          ...limits.hoist,
          value: undefined,
          bars: 1,
          unsafe: 1,
        },
      ].map(({ value: _, ...rest }: Record<string, unknown>) => rest),
    );
    expect(findings.filter(({ code, severity }) => code === "LEN102" || severity === "unsafe")).toEqual([]);
  });

  it("should be those of a whole audit after an edit", () => {
    const before = [HEAVY, WRONG, TIGHT];
    const after = [HEAVY, WRONG, { ...HEAVY }];
    const audit = openAudit({ sheets: [sheet(before), shop], standard, settings });
    const again = recheck(audit, sheet(after), 3, 3).report;
    const whole = runAudit({ sheets: [sheet(after), shop], standard, settings });
    expect(again.waivers).toEqual(whole.waivers);
    expect(again.waivers.map(({ bars }) => bars)).toEqual([1, 2]);
  });
});

function sheetOf(cells: readonly (readonly unknown[])[]): Omit<Sheet, "name"> {
  const [only] = exampleSheets({ rows: [], shop: cells as never }).filter(({ name }) => name === "Shop");
  return only as Sheet;
}
