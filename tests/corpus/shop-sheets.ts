import { exampleShop } from "../../core/audit/example-shop";
import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";

const RACK = "20, 24, 32, 40, 48, 64, 80, 100, 112, 140, 175, 200, 224";
const WHOLE = {
  formers: RACK,
  orbitRadius: 260,
  guardRadius: 14000,
  largestAngle: 200,
  backRestDistance: 90,
};
const PLATES: readonly (readonly Cell[])[] = [
  ["Bench 2", "bend", 12, 600, 6],
  ["Bench 2", "bend", 40, 600, 1],
];
const second = (bender: Parameters<typeof exampleShop>[0]) => ({
  machine: "Bench 5",
  ...WHOLE,
  ...bender?.bender,
});
const plated = (machine: string, ...sizes: number[]): (readonly Cell[])[] =>
  sizes.map((size) => [machine, "bend", size, 600, 1]);
const trial = (machine: string, size: number, former: number, bentTo: number, released: number): Cell[] => [
  "2031-03-02",
  machine,
  size,
  former,
  null,
  "bar",
  "K4",
  bentTo,
  released,
];

/** Ten invented yards: whole, blank here and there, too small, with two benders of which one is half known. */
export const SHOP_SHEETS: Readonly<Record<string, Sheet>> = Object.fromEntries(
  Object.entries({
    whole: exampleShop({ bender: WHOLE, plates: PLATES }),
    "no guard radius": exampleShop({ bender: { ...WHOLE, guardRadius: null }, plates: PLATES }),
    "no largest angle": exampleShop({ bender: { ...WHOLE, largestAngle: null }, plates: PLATES }),
    "no rack": exampleShop({ bender: { ...WHOLE, formers: null }, plates: PLATES }),
    "no plate": exampleShop({ bender: WHOLE, plates: [] }),
    "small rack": exampleShop({ bender: { ...WHOLE, formers: "50, 120, 240" }, plates: PLATES }),
    "narrow guard": exampleShop({ bender: { ...WHOLE, guardRadius: 1200 }, plates: PLATES }),
    "two benders, one of them half known": exampleShop({
      bender: { ...WHOLE, guardRadius: null },
      secondBender: second({ bender: { formers: "32, 64, 112" } }),
      plates: [...PLATES, ...plated("Bench 5", 25)],
    }),
    "two benders with trials": exampleShop({
      bender: { ...WHOLE, largestAngle: 135 },
      secondBender: second({}),
      plates: [...PLATES, ...plated("Bench 5", 20)],
      trials: [
        trial("Bench 5", 12, 48, 97, 90),
        trial("Bench 5", 16, 64, 96, 90),
        trial("Bench 2", 20, 140, 98, 90),
      ],
    }),
    "first bender too weak": exampleShop({
      bender: WHOLE,
      secondBender: second({ bender: { backRestDistance: 60, pins: 30 } }),
      plates: [...plated("Bench 2", 12), ...plated("Bench 5", 40)],
    }),
  }).map(([name, rows]) => [
    name,
    sheetFromRows(
      "Shop",
      rows.map((row) => [...row]),
    ),
  ]),
);
