import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { isInTotal, weighRows } from "../../../core/totals/row-mass";

const standard = resolveStandard("BS8666:2005") as Standard;

function kgOf(rows: Cell[][]): (number | null)[] {
  const sheet = sheetFromRows("List", rows);
  return weighRows(sheet, readSchedule(sheet, standard), standard).map((row) =>
    isInTotal(row) ? Math.round(row.mass * 100) / 100 : null,
  );
}

function list(type: string, perMetre: readonly number[]): Cell[][] {
  const sizes = [10, 13, 16, 19].map((size) => `${type}${size}`);
  const bar = (mark: string, at: number, total: number, length: number): Cell[] => {
    const metres = sizes.map((_, place) => (place === at ? (total * length) / 1000 : null));
    return [mark, sizes[at] as string, total, length, ...metres];
  };
  return [
    ["Bar mark", "Size", "Total no.", "Length mm", "Total length m", null, null, null],
    [null, null, null, null, ...sizes],
    bar("01", 0, 100, 2000),
    bar("02", 1, 20, 5000),
    bar("03", 2, 10, 4000),
    bar("04", 3, 40, 2500),
    ["Total length m", null, null, null, 200, 100, 40, 100],
    ["Mass kg/m", null, null, null, ...perMetre],
  ];
}

// kg/m: KS D 3504, table of deformed bars, as JIS G 3112 prints them: 0.560, 0.995, 1.56, 2.25
it("should weigh bars of a type that no standard here has by the kg/m that the list states", () => {
  expect(kgOf(list("HD", [0.56, 0.995, 1.56, 2.25]))).toEqual([112, 99.5, 62.4, 225]);
});

it("should take a stated mass that is another size's for a slip, and go by the table", () => {
  // KS D 3504 for three; 16 mm by the UK three-decimal table: 1.579
  const [, , third] = kgOf(list("HD", [0.56, 0.995, 0.995, 2.25]));
  expect(third).toBeCloseTo(40 * 1.579, 3);
});

// the table of masses that UK schedules print: 0.616 and 1.579
it("should weigh bars of the standard in force by its own table", () => {
  const kg = kgOf(list("H", [0.56, 0.995, 1.56, 2.25]));
  expect(kg[0]).toBeCloseTo(200 * 0.616, 3);
  expect(kg[2]).toBeCloseTo(40 * 1.579, 3);
});

// ASTM A615: #5 is 5/8 in and 1.043 lb/ft, 1.552 kg/m; #3 is 0.376 lb/ft, 0.560 kg/m
it("should read an inch size behind its sign", () => {
  const kg = kgOf([
    ["Bar mark", "Size", "Total no.", "Length mm"],
    ["01", 'Ø 5/8"', 10, 2000],
    ["02", 'Ø 3/8"', 10, 2000],
    ["03", 'Ø 5/8"', 10, 4000],
  ]);
  expect(kg).toEqual([31.04, 11.2, 62.08]);
});

// 6.3 mm of round steel at 7850 kg/m3 by hand: 0.2447 kg/m; 10 mm by the UK table: 0.616
it("should take lengths in the unit that the title says, and a size that the table beside it has often", () => {
  const head = ["Bar mark", "Size", "Total no.", "Length", "Total length"];
  const kg = kgOf([
    ["Lista de ferros     comprimentos em cm"],
    [...head, null, ...head],
    ["N1", 10, 10, 200, 2000, null, "N4", 6.3, 10, 200, 2000],
    ["N2", 6.3, 10, 400, 4000, null, "N5", 6.3, 10, 300, 3000],
    ["N3", 10, 10, 300, 3000, null, "N6", 6.3, 10, 250, 2500],
  ]);
  expect(kg).toHaveLength(6);
  expect(kg.reduce<number>((sum, one) => sum + (one ?? Number.NaN), 0)).toBeCloseTo(
    (20 + 30) * 0.616 + (40 + 20 + 30 + 25) * 0.2447,
    2,
  );
});
