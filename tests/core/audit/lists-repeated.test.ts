import { describe, expect, it } from "vitest";
import rule from "../../../core/audit/rules/same-bar-in-two-lists";
import { runAudit } from "../../../core/audit/run-audit";
import { wholeSheetWords } from "../../../core/jobs/severe-bars";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

/** Mark, size, number, length mm. */
type Bar = readonly [string, string, number, number];

const BARS: readonly Bar[] = [
  ["01", "H16", 10, 2000],
  ["02", "H12", 20, 1500],
  ["03", "H20", 8, 3000],
  ["04", "H16", 6, 4000],
  ["05", "H12", 12, 2500],
];
/** kg of all five by BS 4449:2005 table 7 (12: 0.888, 16: 1.579, 20: 2.466), by hand: 60 m, 44 m, 24 m. */
const KG = "181.94 kg";
const HEAD = ["Bar mark", "Size", "Total no.", "Length mm"];
const bySize = [...BARS].sort(([, one], [, other]) => one.localeCompare(other));

function list(name: string, bars: readonly Bar[], member?: string): Sheet {
  const head = member === undefined ? HEAD : ["Member", ...HEAD];
  return sheetFromRows(name, [
    head,
    ...bars.map((bar) => [...(member === undefined ? [] : [member]), ...bar]),
  ]);
}

function told(...sheets: readonly Sheet[]): string[] {
  const { findings } = runAudit({ sheets, standard: heldStandard("BS8666:2005"), rules: [rule] });
  return findings.map(({ sheet, row, severity, outcome, message }) => {
    expect(row).toBeNull();
    return `${sheet} ${severity} ${outcome}: ${message}`;
  });
}

const says = (rows: string, where: string): string =>
  `${rows} repeat bars of ${where}, by mark, size, length and number: ${KG} of steel may be counted twice; hide or take out the list that only repeats`;

// a list to order or cut by, kept beside the schedule: common practice
describe("a list of the bars of another", () => {
  it("should be told once, with the steel that is counted twice, in any order of its rows", () => {
    const order = says("5 of 5 rows", "sheet Schedule");
    expect(told(list("Schedule", BARS), list("Order", bySize))).toEqual([`Order doubtful unsure: ${order}`]);
    expect(told(list("Schedule", BARS, "Wall"), list("Order", bySize))).toEqual([
      `Order doubtful unsure: ${order}`,
    ]);
    expect(told(list("Schedule", BARS, "Wall"), list("Order", bySize, "Wall"))).toEqual([
      `Order doubtful broken: ${order}`,
    ]);
  });

  it("should be told of a list that holds another beside bars of its own", () => {
    const more: Bar[] = [6, 7, 8, 9].map((mark) => [`0${mark}`, "H10", 4, 1000 + 100 * mark]);
    expect(told(list("Order", BARS), list("Schedule", [...BARS, ...more]))).toEqual([
      `Schedule doubtful unsure: ${says("5 of 9 rows", "sheet Order")}`,
    ]);
  });

  it("should be told of two lists of one sheet, below or beside each other", () => {
    const cells = (bars: readonly Bar[]): Cell[][] => [[...HEAD], ...bars.map((bar) => [...bar])];
    const below = [...cells(BARS), [], ["CUTTING LIST"], ...cells(bySize)];
    const [own, other] = [cells(BARS), cells(bySize)];
    const beside = own.map((row, at) => [...row, null, null, ...(other[at] ?? [])]);
    expect(told(sheetFromRows("List", below))).toEqual([
      `List doubtful unsure: ${says("5 of 5 rows of the list at A9", "the list at A1")}`,
    ]);
    expect(told(sheetFromRows("List", beside))).toEqual([
      `List doubtful unsure: ${says("5 of 5 rows of the list at G1", "the list at A1")}`,
    ]);
  });

  it("should be silent where members, numbers or lengths are others", () => {
    expect(told(list("Ground", BARS, "Wall 1"), list("First", BARS, "Wall 2"))).toEqual([]);
    const longer = BARS.map(([mark, size, number, length]): Bar => [mark, size, number, length + 25]);
    const fewer = BARS.map(([mark, size, number, length]): Bar => [mark, size, number - 1, length]);
    expect(told(list("Schedule", BARS), list("Order", longer))).toEqual([]);
    expect(told(list("Schedule", BARS), list("Order", fewer))).toEqual([]);
    // sheets named by members that are made alike
    expect(told(list("Pad P1", BARS), list("Pad P2", BARS))).toEqual([]);
    expect(told(list("Schedule", BARS.slice(0, 3)), list("Order", BARS.slice(0, 3)))).toEqual([]);
  });

  it("should stand beside every sum and on every paper", () => {
    const sheets = [list("Schedule", BARS), list("Order", bySize)];
    const { findings } = runAudit({ sheets, standard: heldStandard("BS8666:2005"), rules: [rule] });
    expect(wholeSheetWords(findings)).toEqual([
      `perhaps doubtful, Order: ${says("5 of 5 rows", "sheet Schedule")}`,
    ]);
  });
});
