import { type Cell, type CellError, isCellError } from "../schedule/sheet";
import { ExactSum } from "../totals/exact-sum";
import { FirstSpelling } from "../totals/first-spelling";
import { thinToThick } from "../totals/thin-to-thick";
import { kilogramsIn } from "../units/mass-unit";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { errorCell, isBlankCell, numberCell } from "./lift";
import { cellInRow, headerRows, lastRow, tableRefusal } from "./table-arguments";
import type { Block, WorksheetFunction } from "./worksheet-function";

const massUnread = defineRefusal(
  "mass-unread",
  "value",
  `row {row}: mass "{typed}" is no number of kg, 0 or more: the totals it belongs to are not known until it is mended`,
);

const DEFAULT_UNIT = "t";
const NO_POUR = "no pour";
const NO_SIZE = "no size";

/**
 * BAR.TONNAGE: header, one row a pour, one column a size, and totals; tonnes unless another unit is
 * asked for. Masses are kg; sums are exact decimals. Pours and sizes stand in the order they first
 * come, and differ by more than case. A mass that cannot be read, or an error cell, stands in the sums it belongs to and no other.
 */
export const TONNAGE: WorksheetFunction = {
  name: "TONNAGE",
  description: "Tonnes by pour and size: header, one row a pour, one column a size, totals",
  args: [
    { name: "pours", description: "Column of pours", optional: false, lifts: "table" },
    { name: "sizes", description: "Column of bar sizes, as many rows", optional: false, lifts: "table" },
    {
      name: "masses",
      description: "Column of row masses in kg, as many rows",
      optional: false,
      lifts: "table",
    },
    {
      name: "unit",
      description: "t, kg, lb or ton; t where it is left out",
      optional: true,
      lifts: "column",
    },
  ],
  massUnit: ([, , , unit]) => String(unit?.[0]?.[0] || DEFAULT_UNIT),
  call([pours, sizes, masses, unit]) {
    const columns = { pours: pours ?? [], sizes: sizes ?? [], masses: masses ?? [] };
    const refusal = tableRefusal(columns);
    if (refusal !== null) return [[errorCell(refusal)]];
    const unitCell = unit?.[0]?.[0] ?? null;
    if (unitCell !== null && isCellError(unitCell)) return [[unitCell]];
    const kilograms = kilogramsIn(isBlankCell(unitCell) ? DEFAULT_UNIT : String(unitCell));
    if (isRefusal(kilograms)) return [[errorCell(kilograms)]];
    return tonnageBlock(columns, kilograms);
  },
};

type Columns = Readonly<Record<"pours" | "sizes" | "masses", Block>>;

class SpoilableSum {
  private readonly sum = new ExactSum();
  private error: CellError | null = null;

  add(mass: number | CellError): void {
    if (typeof mass === "number") this.sum.add(mass);
    else this.error ??= mass;
  }

  in(kilograms: number): Cell {
    return this.error ?? numberCell(this.sum.over(kilograms));
  }
}

function tonnageBlock(columns: Columns, kilograms: number): Block {
  const pours = new Map<string, Map<string, SpoilableSum>>();
  const pourTotals = new Map<string, SpoilableSum>();
  const sizeTotals = new Map<string, SpoilableSum>();
  const total = new SpoilableSum();
  const pourNames = new FirstSpelling();
  const sizeNames = new FirstSpelling();
  const last = lastRow(Object.values(columns));
  for (let row = headerRows(columns.masses); row <= last; row += 1) {
    const cells = [columns.pours, columns.sizes, columns.masses].map((block) => cellInRow(block, row));
    if (isBlankCell(cells[2])) continue;
    const pour = pourNames.of(labelOf(cells[0]!, NO_POUR));
    const size = sizeNames.of(labelOf(cells[1]!, NO_SIZE));
    const mass = massOf(cells, row);
    const bySize = held(pours, pour, () => new Map<string, SpoilableSum>());
    for (const sum of [
      held(bySize, size, newSum),
      held(pourTotals, pour, newSum),
      held(sizeTotals, size, newSum),
      total,
    ]) {
      sum.add(mass);
    }
  }
  if (pours.size === 0) return [[null]];
  const sizes = [...sizeTotals.keys()].sort(thinToThick);
  return [
    ["pour", ...sizes, "total"],
    ...[...pours].map(([pour, bySize]): Cell[] => [
      pour,
      ...sizes.map((size) => bySize.get(size)?.in(kilograms) ?? 0),
      pourTotals.get(pour)!.in(kilograms),
    ]),
    ["total", ...sizes.map((size) => sizeTotals.get(size)!.in(kilograms)), total.in(kilograms)],
  ];
}

const newSum = (): SpoilableSum => new SpoilableSum();

function held<T>(map: Map<string, T>, key: string, make: () => T): T {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}

/** An error in the pour or size leaves the mass without a place, so it is told under none. */
function labelOf(cell: Cell, none: string): string {
  return isBlankCell(cell) || isCellError(cell) ? none : String(cell).trim();
}

function massOf(cells: readonly Cell[], row: number): number | CellError {
  const error = cells.find((cell) => isCellError(cell));
  if (error !== undefined) return error as CellError;
  const cell = cells[2]!;
  const mass = typeof cell === "string" ? Number(cell) : cell;
  if (typeof mass === "number" && Number.isFinite(mass) && mass >= 0) return mass;
  return errorCell(unread(row, cell));
}

const unread = (row: number, cell: Cell): Refusal => massUnread({ row: row + 1, typed: String(cell) });
