import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { ExampleRow } from "../../../core/audit/rule";
import { openAudit } from "../../../core/audit/run-audit";
import { whatItWouldHide } from "../../../core/audit/what-it-would-hide";
import { standardNamed } from "./rule-cases";

const standard = standardNamed("BS8666:2005");
const GOOD: ExampleRow = { size: "H16", shape: "11", A: 500, B: 400, length: 875 };
// 925 is no length of shape 11 with these legs; 50 mm is below the 64 mm of BS 8666:2005 Table 2
const WRONG: ExampleRow = { ...GOOD, length: 925 };
const TIGHT: ExampleRow = { ...GOOD, former: 50 };

const open = (rows: readonly ExampleRow[], settings = {}) =>
  openAudit({ sheets: exampleSheets({ rows }), standard, settings: auditSettings.parse(settings) });
const audit = (...asked: Parameters<typeof open>) => open(...asked).report;
const of = (report: ReturnType<typeof audit>, code: string) =>
  report.findings.filter((finding) => finding.code === code);

describe("findings of one cause", () => {
  const opened = open([...Array<ExampleRow>(6).fill(WRONG), ...Array<ExampleRow>(6).fill(GOOD)]);
  const many = opened.report;

  it("should be one finding where they stand in more than three rows in ten, its rows behind it", () => {
    const [one, more] = of(many, "LEN102");
    expect(more).toBeUndefined();
    expect(one).toMatchObject({ row: null, cell: null, fix: null, rows: [2, 3, 4, 5, 6, 7] });
    expect(one?.message).toMatch(/^length 925 mm is 50 mm over .* \(6 rows: 2-7\)$/);
    expect(many.byRow.filter(({ code }) => code === "LEN102").map(({ row }) => row)).toEqual([
      2, 3, 4, 5, 6, 7,
    ]);
  });

  it("should tell each cell behind it where they are not all the same", () => {
    // shape 11: 500 + 400 - r/2 - d = 868, up to 875: 50 over, 100 short, 200 over
    const lengths = [925, 925, 775, 925, 1075, 925];
    const rows = [...lengths.map((length) => ({ ...GOOD, length })), ...Array<ExampleRow>(6).fill(GOOD)];
    const [one, more] = of(audit(rows), "LEN102");
    expect(more).toBeUndefined();
    expect(one?.message).toMatch(
      /; in 6 rows: 2-7: G2 length 925 mm is 50 mm over; G3 .* over; G4 length 775 mm is 100 mm short; G5 .* over; G6 length 1075 mm is 200 mm over; G7 length 925 mm is 50 mm over$/,
    );
    expect(one?.behind?.map(({ row, cell }) => [row, cell])).toEqual(
      [2, 3, 4, 5, 6, 7].map((row) => [row, `G${row}`]),
    );
    expect(one?.behind?.[2]?.message).toContain("length 775 mm is 100 mm short of the 875 mm");
  });

  it("should stay one a row where they are few, and always where something is unsafe", () => {
    const few = audit([WRONG, WRONG, WRONG, ...Array<ExampleRow>(9).fill(GOOD)]);
    expect(of(few, "LEN102").map(({ row }) => row)).toEqual([2, 3, 4]);
    const unsafe = audit(Array<ExampleRow>(8).fill(TIGHT));
    expect(of(unsafe, "BEND101").map(({ row }) => row)).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it("should be one note where five rows or more have it, however long the list", () => {
    // 6.313 kg/m (BS 8666:2005, Table 1) x 6 m = 37.9 kg, above 25
    const heavy: ExampleRow = { size: "H32", shape: "00", A: 6000, length: 6000 };
    const list = (heavies: number) =>
      audit([...Array<ExampleRow>(heavies).fill(heavy), ...Array<ExampleRow>(30).fill(GOOD)]);
    expect(of(list(5), "LIFT101").map(({ rows }) => rows)).toEqual([[2, 3, 4, 5, 6]]);
    expect(of(list(4), "LIFT101").map(({ row }) => row)).toEqual([2, 3, 4, 5]);
  });

  it("should be asked once where one answer settles them", () => {
    const unknown: ExampleRow = { ...GOOD, size: "Q16" };
    const report = audit([unknown, ...Array<ExampleRow>(20).fill(GOOD), unknown]);
    expect(of(report, "GRADE101")).toMatchObject([{ row: null, rows: [2, 23] }]);
    expect(of(report, "GRADE101")[0]?.message).toContain("(2 rows: 2, 23)");
  });

  it("should tell of each cell that holds an error, however many do", () => {
    const broken: ExampleRow = { ...GOOD, A: { error: "#REF!" } };
    const report = audit([broken, GOOD, broken, ...Array<ExampleRow>(4).fill(broken)]);
    expect(of(report, "READ101").map(({ cell }) => cell)).toEqual(["I2", "I4", "I5", "I6", "I7", "I8"]);
  });

  it("should be waived for the sheet, and say how many bars that hides", () => {
    const [finding] = of(many, "LEN102");
    expect(whatItWouldHide(opened, { kind: "waiver", finding: finding! })).toMatchObject({
      findings: 1,
      bars: 6,
    });
    const waivers = [{ code: "LEN102", sheet: "Schedule", key: null, reason: "lengths are agreed" }];
    const after = audit([...Array<ExampleRow>(6).fill(WRONG), ...Array<ExampleRow>(6).fill(GOOD)], {
      waivers,
    });
    expect(of(after, "LEN102")).toEqual([]);
    expect(after.waivers).toMatchObject([{ rule: "LEN102", bars: 6 }]);
    expect(after.outdatedWaivers).toEqual([]);
  });
});
