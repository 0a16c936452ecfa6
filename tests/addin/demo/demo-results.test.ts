import { describe, expect, test } from "vitest";
import { demoWorkbook } from "../../../addin/demo/demo-workbook";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";

// EN 10080:2005 and BS 4449:2005, table 7: nominal mass of a metre, kg, from memory
const KG_PER_METRE: Readonly<Record<string, number>> = {
  H10: 0.617,
  H12: 0.888,
  H16: 1.58,
  H20: 2.47,
  H25: 3.85,
  H32: 6.31,
};
// of the yard's table, as rounded there: half of the last place
const LAST_PLACE = 0.002;

describe("the results that the demonstration holds", () => {
  const book = openWorkbook(demoWorkbook());

  test("should stand beside every formula of it", () => {
    const bare = book.sheets.flatMap(({ name }) => {
      const sheet = book.read(name, { formulas: true });
      return [...sheet.rowNumbers].flatMap((row) =>
        [...sheet.cellsOfRow(row)].flatMap(({ column }) =>
          sheet.formulaAt(row, column) !== undefined && sheet.valueAt(row, column) === null
            ? [`${name} ${row} ${column}`]
            : [],
        ),
      );
    });
    expect(bare).toEqual([]);
  });

  test("should be number, length and mass of a metre of each straight bar", () => {
    const sheet = book.read("Schedule");
    const at = (row: number, column: number) => sheet.cell(row - sheet.top, column - sheet.left);
    const straight = Array.from({ length: 117 }, (_, index) => 4 + index).filter(
      (row) => at(row, 7) === "00",
    );
    const ratios = straight.flatMap((row) => {
      const [members, each, total, length] = [3, 4, 5, 6].map((column) => Number(at(row, column)));
      const mass = at(row, 14);
      // slips of the invented list: a typed total, a length in metres in A
      if (typeof mass !== "number" || at(row, 8) !== length) return [];
      expect(total).toBe((members as number) * (each as number));
      const metre = KG_PER_METRE[String(at(row, 2))];
      return metre === undefined ? [] : [mass / ((total as number) * ((length as number) / 1000) * metre)];
    });
    expect(ratios.length).toBeGreaterThan(20);
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(LAST_PLACE);
  });
});
