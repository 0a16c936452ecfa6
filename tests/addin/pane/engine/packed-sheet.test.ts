import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { packSheet, unpackSheet } from "../../../../addin/pane/engine/packed-sheet";
import { type Cell, type Sheet, sheetFromRows } from "../../../../core/schedule/sheet";

const cell: fc.Arbitrary<Cell> = fc.oneof(
  fc.constant(null),
  fc.double({ noNaN: true }),
  fc.string(),
  fc.boolean(),
  fc.record({ error: fc.constantFrom("#N/A", "#VALUE!"), message: fc.string() }),
);

describe("packSheet", () => {
  test("should come out of a worker's message as it went in", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 6 }),
        fc.nat(5),
        fc.nat(2),
        (rows, markedRow, markedColumn) => {
          const isMarked = (row: number, column: number) => row === markedRow && column === markedColumn;
          const sheet: Sheet = {
            ...sheetFromRows("Bars", rows),
            top: 4,
            left: 1,
            shown: (row, column) => (isMarked(row, column) ? "(250)" : undefined),
            isDate: isMarked,
            datesFrom1904: markedRow % 2 === 0,
            isStruckThrough: isMarked,
            isHiddenRow: (row) => row === markedRow,
            isHiddenColumn: (column) => column === markedColumn,
            merges: [{ top: 0, left: 0, bottom: 0, right: 2 }],
          };
          const again = unpackSheet(structuredClone(packSheet(sheet)));
          expect([
            again.name,
            again.top,
            again.left,
            again.rowCount,
            again.columnCount,
            again.merges,
            again.datesFrom1904,
          ]).toEqual(["Bars", 4, 1, rows.length, 3, sheet.merges, sheet.datesFrom1904]);
          for (let row = 0; row < rows.length; row += 1) {
            expect(again.isHiddenRow?.(row)).toBe(row === markedRow);
            for (let column = 0; column < 3; column += 1) {
              expect(again.cell(row, column)).toEqual(rows[row]?.[column]);
              expect(again.shown?.(row, column)).toBe(sheet.shown?.(row, column));
              expect(again.isDate?.(row, column)).toBe(isMarked(row, column));
              expect(again.isStruckThrough?.(row, column)).toBe(isMarked(row, column));
              expect(again.isHiddenColumn?.(column)).toBe(column === markedColumn);
            }
          }
        },
      ),
    );
  });
});
