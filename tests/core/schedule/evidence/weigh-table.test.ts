import { describe, expect, it } from "vitest";
import {
  type EvidenceRole,
  type EvidenceUnit,
  findTables,
  type WordReading,
  weighTable,
} from "../../../../core/schedule/evidence/index";
import type { Cell } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";

const STANDARD = resolveStandard("BS8666:2005") as Standard;
/** kg/m as BS 4449 prints them */
const MASSES = new Map([
  [10, 0.617],
  [12, 0.888],
  [16, 1.58],
  [20, 2.47],
]);

/** mark, size, members, each, total, length in cm, mass in kg: 12 rows, worked out by hand from the table above */
function rowsInCentimetres(): Cell[][] {
  const sizes = [10, 12, 16, 20, 12, 16, 10, 20, 16, 12, 20, 10];
  return sizes.map((size, index) => {
    const [members, each, length] = [2 + (index % 3), 4 + index, 120 + 35 * index];
    const mass = (members * each * length * (MASSES.get(size) ?? 0)) / 100;
    return [`B${index + 1}`, `H${size}`, members, each, members * each, length, Math.round(mass * 100) / 100];
  });
}

function words(list: readonly (readonly [number, EvidenceRole, EvidenceUnit | null, WordReading["by"]])[]) {
  return new Map(list.map(([column, role, unit, by]) => [column, { column, role, unit, by }] as const));
}

function weighed(rows: Cell[][], said: ReturnType<typeof words>) {
  const cells = (row: number): readonly Cell[] => rows[row] ?? [];
  const table = weighTable({ cells, from: 0, to: rows.length, left: 0, right: 6 }, STANDARD, said);
  if (table === null) throw new Error("nothing was read");
  return table;
}

const RIGHT = [
  [0, "mark", null, "written"],
  [1, "size", null, "written"],
  [2, "members", null, "written"],
  [3, "each", null, "written"],
  [4, "total", null, "written"],
  [5, "length", "cm", "written"],
  [6, "mass", "kg", "written"],
] as const;

describe("words and arithmetic", () => {
  it("should say nothing where they agree, and name the rows that do", () => {
    const table = weighed(rowsInCentimetres(), words(RIGHT));
    expect(table.decisions).toEqual([]);
    expect(table.held).toBeNull();
    expect(table.isConfirmed).toBe(true);
    const mass = table.agreement.find(({ identity }) => identity === "mass");
    expect([mass?.kept, mass?.tested]).toEqual([12, 12]);
  });

  it("should take cm where the header says mm and every mass disagrees", () => {
    const said = words(RIGHT.map((one) => (one[1] === "length" ? [5, "length", "mm", "written"] : one)));
    const table = weighed(rowsInCentimetres(), said);
    expect(table.columns.get(5)).toMatchObject({ role: "length", unit: "cm", by: "arithmetic" });
    expect(table.decisions).toEqual([
      expect.objectContaining({
        column: 5,
        about: "unit",
        how: "contradicts",
        verdict: "arithmetic",
        words: { identity: "mass", kept: 0, tested: 12 },
        arithmetic: { identity: "mass", kept: 12, tested: 12 },
      }),
    ]);
  });

  it("should fill a column that no word names where the masses prove it", () => {
    const table = weighed(rowsInCentimetres(), words(RIGHT.filter(([, role]) => role !== "size")));
    expect(table.columns.get(1)).toMatchObject({ role: "size", by: "arithmetic" });
    expect(table.decisions[0]).toMatchObject({ column: 1, how: "fills", byWords: null });
  });

  it("should take the legs in the unit of the length that the masses prove, and say so once", () => {
    // straight bars: the one leg is the length
    const rows = rowsInCentimetres().map((row) => [...row, row[5] ?? null, null]);
    const said = words([
      ...RIGHT.map((one) => (one[1] === "length" ? ([5, "length", "mm", "written"] as const) : one)),
      [7, "leg", "mm", "written"],
    ]);
    const cells = (row: number): readonly Cell[] => rows[row] ?? [];
    const table = weighTable({ cells, from: 0, to: rows.length, left: 0, right: 7 }, STANDARD, said);
    expect(table?.columns.get(7)).toMatchObject({ role: "leg", unit: "cm", by: "arithmetic" });
    const told = table?.decisions.find(({ column }) => column === 7);
    expect(told?.arithmetic).toEqual({ identity: "legs", kept: 12, tested: 12 });
  });

  it("should leave what the user said, and hold totals back where nothing agrees", () => {
    const said = words(RIGHT.map((one) => (one[1] === "length" ? [5, "length", "mm", "user"] : one)));
    const table = weighed(rowsInCentimetres(), said);
    expect(table.columns.get(5)).toMatchObject({ unit: "mm", by: "user" });
    expect(table.held?.why).toBe("nothing-agrees");
  });

  it("should find the table without any header word, transposed too", () => {
    const rows = rowsInCentimetres();
    const [table] = findTables(rows, STANDARD).tables;
    const roles = [1, 4, 5, 6].map((column) => table?.evidence.roles.get(column)?.role);
    expect(roles).toEqual(["size", "total", "length", "mass"]);
    expect(table?.evidence.roles.get(5)).toMatchObject({ unit: "cm", grade: "proof" });
    const turned = rows[0]?.map((_, column) => rows.map((row) => row[column] ?? null)) ?? [];
    expect(findTables(turned, STANDARD)).toMatchObject({ isTransposed: true });
  });
});
