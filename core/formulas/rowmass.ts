import type { Cell } from "../schedule/sheet";
import { cutLength } from "../shapes/cut-length";
import { kilogramsIn } from "../units/mass-unit";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import {
  DIMS_ARGUMENT,
  FORMER_ARGUMENT,
  readBar,
  SHAPE_ARGUMENT,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
  USE_ARGUMENT,
} from "./bar-arguments";
import { rowFunction } from "./lift";
import { barOfTable } from "./size-of-table";
import type { WorksheetFunction } from "./worksheet-function";

const countUnread = defineRefusal(
  "count-unread",
  "value",
  `count "{typed}" is no whole number of bars: give 0 or more`,
);
const DEFAULT_UNIT = "kg";
const PLACES = { shape: 0, size: 1, dims: 2, standard: 4, former: 6, use: 7 };

/** BAR.ROWMASS: mass of a schedule row from its cut length, kg; t, lb or ton where asked. */
export const ROWMASS: WorksheetFunction = {
  ...rowFunction({
    name: "ROWMASS",
    description: "Mass of a schedule row from its cut length, kg, or t, lb or ton (2000 lb) where asked",
    args: [
      SHAPE_ARGUMENT,
      SIZE_ARGUMENT,
      { ...DIMS_ARGUMENT, optional: false },
      { name: "count", description: "Number of bars in the row", optional: false, lifts: "column" },
      STANDARD_ARGUMENT,
      {
        name: "unit",
        description: "kg, t, lb or ton; kg where it is left out",
        optional: true,
        lifts: "column",
      },
      FORMER_ARGUMENT,
      USE_ARGUMENT,
    ],
    row(row) {
      const bar = readBar(row, PLACES);
      if (isRefusal(bar)) return bar;
      const table = barOfTable(row.cell(1), bar.standard);
      if (isRefusal(table)) return table;
      const count = readCount(row.cell(3));
      if (isRefusal(count)) return count;
      const unit = kilogramsIn(String(row.cell(5) ?? DEFAULT_UNIT));
      if (isRefusal(unit)) return unit;
      const cut = cutLength(bar.shape);
      return isRefusal(cut) ? cut : ((cut.length / MM_PER_METRE) * table.massPerMetre * count) / unit;
    },
  }),
  massUnit: (args) => String(args[5]?.[0]?.[0] || DEFAULT_UNIT),
};

const MM_PER_METRE = 1000;

function readCount(cell: Cell): number | Refusal {
  const count = typeof cell === "string" ? Number(cell) : cell;
  if (typeof count === "number" && Number.isInteger(count) && count >= 0) return count;
  return countUnread({ typed: typeof cell === "object" ? "" : String(cell) });
}
