import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { hiddenWords, notToldLine, notToldSummary } from "../../../core/audit/not-told-words";
import type { ExampleRow } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { standardNamed } from "./rule-cases";

// 50 mm is below the 64 mm of BS 8666:2005 Table 2; 925 is no length of shape 11 with these legs
const TIGHT = { size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 50 };
const WRONG = { size: "H16", shape: "11", A: 500, B: 400, length: 925, former: 64 };
const rows: ExampleRow[] = [
  { ...TIGHT, mark: "01", total: 4 },
  { ...WRONG, mark: "02", total: 200 },
  { ...WRONG, mark: "03", total: 100 },
];
const WAIVER = { code: "BEND101", sheet: "Schedule", key: "B1 | 01" };
const OFF = { code: "LEN102", reason: "agreed", by: "B. Checker", date: "2031-03-04" };

function waiversOf(settings: object, of: readonly ExampleRow[] = rows) {
  const sheets = exampleSheets({ rows: of });
  return runAudit({
    sheets,
    standard: standardNamed("BS8666:2005"),
    settings: auditSettings.parse(settings),
  }).waivers;
}

describe("what is not told", () => {
  const reason = "the mandrel is measured";
  const waivers = [{ ...WAIVER, reason, by: "A. Detailer", date: "2031-03-02" }];

  it("should be counted in rows and in bars", () => {
    const all = waiversOf({ waivers, rulesOff: [OFF] });
    expect(all.map(hiddenWords)).toEqual(["1 row of 4 bars not told, unsafe", "2 rows of 300 bars not told"]);
    expect(notToldSummary(all)).toBe(
      "not told of 3 rows of 304 bars (unsafe: 1 row of 4 bars) by 1 waiver, 1 rule off",
    );
  });

  it("should not name a number of bars where a row's is not known", () => {
    const all = waiversOf({ rulesOff: [OFF] }, [...rows.slice(1, 2), { ...WRONG, mark: "03", total: null }]);
    expect(all.map(hiddenWords)).toEqual(["2 rows of bars not told"]);
  });

  it("should name who decided, when and why in one line, the unsafe first", () => {
    expect(notToldLine(waiversOf({ waivers, rulesOff: [OFF] }))).toBe(
      "not told of 3 rows of 304 bars (unsafe: 1 row of 4 bars) by 1 waiver, 1 rule off: " +
        "BEND101 by A. Detailer, 2031-03-02: the mandrel is measured; LEN102 by B. Checker, 2031-03-04: agreed",
    );
    expect(notToldLine([])).toBeNull();
  });

  it("should count those that the line has no room for, and shorten a long reason", () => {
    const rulesOff = ["LEN102", "LEN103", "LEN106", "UNIT102"].map((code) => ({
      ...OFF,
      code,
      reason: `${code} ${"as agreed ".repeat(20)}`,
    }));
    const line = notToldLine(waiversOf({ rulesOff })) ?? "";
    expect(line).toMatch(/; and 1 other decision$/);
    expect(line.length).toBeLessThan(400);
    expect(line.match(/by B\. Checker, 2031-03-04/g)).toHaveLength(3);
  });
});
