import { describe, expect, it } from "vitest";
import type { BarRow, ScheduleReading, TableReading } from "../../../core/schedule/bar-row";
import { compareRevisions } from "../../../core/totals/compare-revisions";

const table: TableReading = { headerTop: 0, headerBottom: 0, columns: new Map() } as TableReading;

function bar(over: Partial<BarRow>): BarRow {
  return {
    table,
    row: 1,
    member: "B1",
    mark: "01",
    sizeTyped: "H16",
    size: null,
    grade: null,
    shape: "11",
    dims: [500, 400],
    radius: null,
    freeDims: "",
    members: 2,
    each: 5,
    total: 10,
    length: 875,
    mass: null,
    former: null,
    coating: null,
    pour: "P1",
    revision: null,
    released: null,
    remark: null,
    hidden: false,
    struckThrough: false,
    problems: null,
    ...over,
  };
}

const reading = (...bars: BarRow[]): ScheduleReading =>
  ({ sheet: "Schedule", bars }) as unknown as ScheduleReading;
/** 1 kg a bar keeps the sums in the head */
const massOf = (row: BarRow): number | null => row.total;

const compare = (before: BarRow[], after: BarRow[], released: string[] = []) =>
  compareRevisions({
    before: [reading(...before)],
    after: [reading(...after)],
    massOf,
    released: new Set(released),
  });

describe("compareRevisions", () => {
  it("should tell a bar that is drawn on another drawing, and none where a list names no drawings", () => {
    const [changed] = compare([bar({ drawing: "S-201" })], [bar({ drawing: "S-204" })]).changes;
    expect(changed?.cells).toMatchObject([{ field: "drawing", before: "S-201", after: "S-204" }]);
    expect(compare([bar({})], [bar({ drawing: "S-204" })]).changes).toEqual([]);
  });

  it("should quote a cell that became unreadable, which is not blank", () => {
    const problem = {
      field: "former",
      column: 9,
      typed: "see note",
      outcome: "unread",
      reason: "no length",
    } as const;
    const onLeg = { field: "B", column: 7, typed: "tbc", outcome: "unread", reason: "no length" } as const;
    const now = bar({ former: null, dims: [500, null], problems: [problem, onLeg] });
    const { changes } = compare([bar({ former: 32 })], [now]);
    expect(changes[0]?.cells.map(({ field, before, after }) => [field, before, after])).toEqual([
      ["former", 32, '"see note" (not read)'],
      ["B", 400, '"tbc" (not read)'],
    ]);
    expect(compare([now], [now]).changes).toEqual([]);
  });

  it("should count apart the bars whose formulas nobody has worked out, and take members times each for a total", () => {
    const typed = { error: "#N/A", uncalculated: true } as const;
    const waiting = (field: "total" | "length") =>
      ({ field, column: 5, typed, outcome: "unread", reason: "no result" }) as const;
    const length = bar({ length: null, problems: [waiting("length")] });
    expect(compare([bar({})], [length])).toMatchObject({ changes: [], unchanged: 0, notCompared: 1 });
    const product = bar({ total: null, problems: [waiting("total")] });
    expect(compare([bar({})], [product])).toMatchObject({ changes: [], unchanged: 1, notCompared: 0 });
    const { changes } = compare([bar({})], [{ ...product, each: 6 }]);
    expect(changes[0]?.cells.map(({ field, before, after }) => [field, before, after])).toEqual([
      ["each", 5, 6],
      ["total", 10, 12],
    ]);
  });

  it("should tell a changed remark, which may say what else is done to the bar", () => {
    const { changes } = compare([bar({})], [bar({ remark: "cut back 50 each end" })]);
    expect(changes[0]?.cells.map(({ field, after }) => [field, after])).toEqual([
      ["remark", "cut back 50 each end"],
    ]);
  });

  it("should be silent where only spelling, revision letter or order changed", () => {
    const before = [bar({}), bar({ mark: "02" })];
    const after = [bar({ mark: "2", revision: "B" }), bar({ mark: "1", member: " b1" })];
    expect(compare(before, after)).toMatchObject({ changes: [], unchanged: 2 });
  });

  it("should name each cell that changed, with the old and the new value", () => {
    const { changes } = compare([bar({})], [bar({ dims: [500, 450], total: 12, each: 6, length: 925 })]);
    expect(changes).toHaveLength(1);
    expect(changes[0]?.cells.map(({ field, before, after }) => [field, before, after])).toEqual([
      ["each", 5, 6],
      ["total", 10, 12],
      ["length", 875, 925],
      ["B", 400, 450],
    ]);
    expect(changes[0]).toMatchObject({
      countBefore: 10,
      countAfter: 12,
      massBefore: 10,
      massAfter: 12,
      severity: "note",
    });
  });

  it("should tell added and removed bars, and a moved mark as both", () => {
    const { changes } = compare([bar({ mark: "01" })], [bar({ mark: "01", member: "B2" })]);
    expect(changes.map((c) => [c.kind, c.member])).toEqual([
      ["added", "B2"],
      ["removed", "B1"],
    ]);
  });

  it("should put released bars first and call them unsafe, by column or by list", () => {
    const before = [bar({ mark: "01" }), bar({ mark: "02", released: "yes" }), bar({ mark: "03" })];
    const after = [
      bar({ mark: "01", total: 11 }),
      bar({ mark: "02", total: 11 }),
      bar({ mark: "03", total: 11 }),
    ];
    const { changes } = compare(before, after, ["3"]);
    expect(changes.map((c) => [c.mark, c.severity])).toEqual([
      ["02", "unsafe"],
      ["03", "unsafe"],
      ["01", "note"],
    ]);
  });

  it("should not call a bar released that says it is not, and never an added one", () => {
    const { changes } = compare(
      [bar({ released: "not yet" })],
      [bar({ total: 11 }), bar({ mark: "9", released: "yes" })],
    );
    expect(changes.every((c) => !c.released)).toBe(true);
  });

  it("should leave out struck-through and superseded rows", () => {
    const { changes, unchanged } = compare(
      [bar({}), bar({ mark: "07", struckThrough: true })],
      [bar({}), bar({ total: 3, superseded: true })],
    );
    expect({ changes, unchanged }).toEqual({ changes: [], unchanged: 1 });
  });

  it("should match a mark that stands twice in order", () => {
    const before = [bar({ total: 4 }), bar({ total: 6 })];
    const { changes, unchanged } = compare(before, [bar({ total: 4 }), bar({ total: 7 }), bar({ total: 1 })]);
    expect(unchanged).toBe(1);
    expect(changes.map((c) => [c.kind, c.countBefore, c.countAfter])).toEqual([
      ["changed", 6, 7],
      ["added", 0, 1],
    ]);
  });

  it("should sum bars and mass per pour, before and after", () => {
    const { pours } = compare(
      [bar({}), bar({ mark: "2", pour: "P2" })],
      [bar({}), bar({ mark: "2", pour: "P1" })],
    );
    expect(pours).toEqual([
      { pour: "P1", barsBefore: 10, barsAfter: 20, massBefore: 10, massAfter: 20 },
      { pour: "P2", barsBefore: 10, barsAfter: 0, massBefore: 10, massAfter: 0 },
    ]);
  });
});
