import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { tonnageNotes } from "../../../core/totals/tonnage-notes";

const standard = resolveStandard("BS8666:2005") as Standard;
const weighed = (rows: Cell[][]) => {
  const sheet = sheetFromRows("List", rows);
  return reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
};

// by hand: 40 x 5.0 m = 200 m of 10, 30 x 4.0 m = 120 m of 12, 20 x 3.0 m = 60 m of 12, 240 m of 10 in running metres;
// (200 + 240) x 0.616 + (120 + 60) x 0.888 = 271.04 + 159.84 = 430.88 kg, with the masses of BS 4449 to three decimals
const BY_HAND = 0.43088;

it("weighs metres that stand in the column of total lengths beside a word for running metres", () => {
  const { tonnage, byTyped, notInTotal } = weighed([
    ["Pos", "Stück", "Ø", "Einzellänge [m]", "Gesamtlänge [m]"],
    ["1", 40, 10, 5, 200],
    ["2", 30, 12, 4, 120],
    ["3", 20, 12, 3, 60],
    ["4", null, 10, "lfm", 240],
  ]);
  expect(tonnage.total).toBeCloseTo(BY_HAND, 5);
  expect(byTyped["metres alone"]).toBe(1);
  expect(notInTotal).toEqual([]);
});

// by hand: 108 x 5.0 m x 0.616 = 332.64 kg, 12 x 4.0 m x 0.888 = 42.62 kg
it("takes M1 for a mark and for a wall, where a Dutch m1 is a metre", () => {
  const { tonnage, byTyped } = weighed([
    ["Member", "Mark", "Size", "Total no.", "Length"],
    ["Wall M1", "M1", 10, "4x27", 5000],
    ["Wall M2", "M2", 12, "2x6", 4000],
  ]);
  expect(tonnage.total).toBeCloseTo(0.33264 + 0.042624, 4);
  expect(byTyped["metres alone"]).toBe(0);
});

it("takes an amount beside the word for metres where no column has them, joined or apart", () => {
  const apart = weighed([
    ["Mark", "Size", "No. of bars", "Length (m)", "Remarks"],
    ["1", 10, 40, 5, null],
    ["2", 12, 30, 4, null],
    ["3", 12, 20, 3, null],
    ["4", 10, 240, "rm", "cut on site"],
  ]);
  expect(apart.tonnage.total).toBeCloseTo(BY_HAND, 5);
  // the unit mass of 0.617 in the column of one bar's mass is that of a metre
  const joined = weighed([
    ["Поз.", "Наименование", "Кол.", "Масса ед., кг"],
    ["1", "Ø10 А500С, L=5000", 40, 3.09],
    ["2", "Ø12 А500С, L=4000", 30, 3.55],
    ["3", "Ø12 А500С, L=3000", 20, 2.66],
    ["4", "Ø10 А500С, L=п.м.", 240, 0.617],
    ["5", "Ø12 А500С, L=1000", 0, 0.89],
    ["6", "Ø12 А500С, L=2000", 0, 1.78],
  ]);
  expect(joined.tonnage.total).toBeCloseTo(BY_HAND, 5);
});

it("says that such rows are in no cutting list", () => {
  const notes = tonnageNotes(
    weighed([
      ["Mark", "Size", "No. of bars", "Length (m)", "Total length (m)"],
      ["1", 10, 40, 5, 200],
      ["2", 12, 30, 4, 120],
      ["3", 12, "lm", null, 90],
    ]),
  );
  expect(notes).toContain(
    "1 row in metres alone, without a number of bars: weighed by the metre, and in no cutting list",
  );
});

it("leaves a bar with a count and a length what it is, whatever its remark says", () => {
  const { tonnage, byTyped } = weighed([
    ["Mark", "Size", "No. of bars", "Length (m)", "Remarks"],
    ["1", 10, 40, 5, "from stock, 12 lm"],
    ["2", 12, 30, 4, null],
  ]);
  // by hand: 200 x 0.616 + 120 x 0.888 = 229.76 kg
  expect(tonnage.total).toBeCloseTo(0.22976, 5);
  expect(byTyped["metres alone"]).toBe(0);
});

// by hand: 40 x 5.0 m = 200 m of 10 and 240 m of 10 by the metre; 30 x 4.0 m + 20 x 3.0 m = 180 m of 12
it.each(["п.м", "м.п."])("weighs a joined size that a cell beside it counts in %s", (word) => {
  const { tonnage, byTyped, notInTotal } = weighed([
    ["Поз.", "Наименование", "Ед. изм.", "Кол.", "Масса ед., кг", "Масса общ., кг"],
    ["1", "Ø10 А500С, l=5000 мм", "шт.", 40, 3.08, 123.2],
    ["2", "Ø12 А500С, l=4000 мм", "шт.", 30, 3.55, 106.56],
    ["3", "Ø12 А500С, l=3000 мм", "шт.", 20, 2.66, 53.28],
    ["4", "Ø10 А500С ГОСТ 34028-2016", word, 240, 0.616, 147.84],
    ["5", "Ø12 А500С, l=1000 мм", "шт.", 0, 0.89, 0],
    ["6", "Ø12 А500С, l=2000 мм", "шт.", 0, 1.78, 0],
  ]);
  expect(tonnage.total).toBeCloseTo(BY_HAND, 5);
  expect(byTyped["metres alone"]).toBe(1);
  // nothing but the two of count 0
  expect(notInTotal.map(({ cell }) => cell)).toEqual(["D6", "D7"]);
});

// by hand: 24 x 20 ft x 1.502 lb/ft = 721 lb, 8 x 25 ft x 2.044 lb/ft = 409 lb of ASTM A615; 0.45359237 kg a pound
it("counts a bar that has a length in feet and inches beside a remark that ends as running metres do", () => {
  const { tonnage, byTyped } = weighed([
    ["MARK", "QTY", "SIZE", "LENGTH", "WT LBS", "REMARKS"],
    ["601", 24, "#6", "20-00", 721, "GRADE BM"],
    ["702", 8, "#7", "25-00", 409, "BM"],
  ]);
  expect(tonnage.total).toBeCloseTo(((720.96 + 408.8) * 0.45359237) / 1000, 3);
  expect(byTyped["metres alone"]).toBe(0);
});
