import { exampleShop } from "../../core/audit/example-shop";
import { runAudit } from "../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";
import { resolveStandard } from "../../core/standards/index";
import { isRefusal } from "../../core/units/refusal";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 100_000;
const SHAPES = 300;
const DISTINCT = 5_000;

const bench: Bench = {
  name: "audit with a Shop sheet of one bender and four trials",
  async run() {
    const standard = resolveStandard("BS8666:2005");
    if (isRefusal(standard)) throw new Error("no standard");
    const { matrix } = seededSchedule(DISTINCT);
    const few = [...matrix.slice(0, 1), ...repeated(matrix.slice(1, 1 + SHAPES), ROWS)];
    const time = (rows: Cell[][], more: readonly Sheet[]): number => {
      const sheets = [sheetFromRows("Schedule", rows), ...more];
      const start = performance.now();
      runAudit({ sheets, standard });
      return Math.round(performance.now() - start);
    };
    time(matrix, []);
    return {
      figures: {
        [`${ROWS} rows of ${SHAPES} bars, no Shop sheet, ms`]: time(few, []),
        [`${ROWS} rows of ${SHAPES} bars, ms`]: time(few, [shop()]),
        [`${DISTINCT} distinct rows, no Shop sheet, ms`]: time(matrix, []),
        [`${DISTINCT} distinct rows, ms`]: time(matrix, [shop()]),
      },
    };
  },
};

export default bench;

function shop(): Sheet {
  const trial = (size: string, former: number, bentTo: number, released: number): Cell[] => [
    "2031-03-02",
    "Bench 2",
    size,
    former,
    "B500B",
    "bar",
    "K4",
    bentTo,
    released,
  ];
  const rows = exampleShop({
    bender: { formers: "32, 40, 48, 64, 140, 175", orbitRadius: 200, guardRadius: 9000 },
    plates: [["Bench 2", "bend", "H25", 500, 2]],
    limits: { hoist: 500, temperature: 10 },
    trials: [
      trial("H12", 48, 90, 85),
      trial("H12", 48, 135, 128),
      trial("H16", 64, 90, 86),
      trial("H20", 140, 90, 84),
    ],
  });
  return sheetFromRows("Shop", rows);
}

function repeated(rows: readonly Cell[][], count: number): Cell[][] {
  return Array.from({ length: count }, (_, index) => rows[index % rows.length] as Cell[]);
}
