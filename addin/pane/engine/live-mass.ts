import { MASS } from "../../../core/formulas/mass";
import { ROWMASS } from "../../../core/formulas/rowmass";
import type { Block, FunctionEnvironment } from "../../../core/formulas/worksheet-function";
import { type BarRow, type Cell, isCellError, type Sheet } from "../../../core/schedule";
import { addressAt } from "../../../core/schedule/cell-address";
import type { Standard } from "../../../core/standards";
import { DIMENSION_LETTERS } from "../../../core/standards/dimension-letters";
import type { RowMass } from "../../../core/totals";
import { addressOf, cellOf, type RowCell } from "./row-cells";

/** parts of a mass that are noise of the float */
const NOISE = 1e-9;

/** A formula over cells of the schedule, and what it gives as they stand. */
interface LiveMass {
  readonly formula: string;
  readonly gives: Cell;
}

/** A row to be weighed; `known` is what the totals count of it, null where it is in none. */
export interface Weighed {
  readonly sheet: Sheet;
  readonly bar: BarRow;
  readonly known: RowMass | null;
  readonly standard: Standard;
}

/** True where a cell holds the mass that the totals count. */
export function isSameMass(cell: Cell, { mass }: RowMass): boolean {
  return typeof cell === "number" && Math.abs(cell - mass) <= NOISE * mass;
}

/**
 * A formula that gives the row's mass from the schedule's own cells, as the totals count it: the mass column,
 * else the shape's cut length, else the typed length. Null where none of them gives just that, as where a
 * cell was not read as it is written. Of a row that is in no total: a formula that gives none either.
 */
export function liveMass(row: Weighed): string | null {
  const { known } = row;
  const ways = known === null ? [byShape] : [byOwnMass, byShape, byLength];
  for (const way of ways) {
    const live = way(row);
    if (live === null) continue;
    const isSame = known === null ? isNoMass(live.gives) : isSameMass(live.gives, known);
    if (isSame) return `IFERROR(${live.formula},"")`;
  }
  return null;
}

const isNoMass = (cell: Cell): boolean => cell === null || isCellError(cell);

function environmentOf({ id, own }: Standard): FunctionEnvironment {
  return { defaultStandard: id, own };
}

function byOwnMass({ sheet, bar }: Weighed): LiveMass | null {
  const mass = cellOf(sheet, bar, "mass");
  return mass === null ? null : { formula: mass.address, gives: mass.content };
}

/** True where a worksheet function takes the dimensions for what the reader takes them for. */
function isInUnitOf({ unit: own }: Standard, { table }: BarRow): boolean {
  return DIMENSION_LETTERS.every((letter) => (table.columns.get(letter)?.unit ?? own) === own);
}

function byShape({ sheet, bar, known, standard }: Weighed): LiveMass | null {
  const [shape, size] = [cellOf(sheet, bar, "shape"), cellOf(sheet, bar, "size")];
  const count = countOf(sheet, bar, known);
  if (shape === null || size === null || count === null || !isInUnitOf(standard, bar)) return null;
  // a path says its own legs
  const dims = dimensions(sheet, bar) ?? { range: "", contents: [null] };
  const former = bar.former === null ? null : cellOf(sheet, bar, "former");
  const block = (cell: RowCell): Block => [[cell.content]];
  const first = [block(shape), block(size), [dims.contents], block(count)];
  const cells = former === null ? first : [...first, undefined, undefined, block(former)];
  const more = former === null ? "" : `,,,${former.address}`;
  return {
    formula: `BAR.ROWMASS(${shape.address},${size.address},${dims.range},${count.address}${more})`,
    gives: ROWMASS.call(cells, environmentOf(standard))[0]?.[0] ?? null,
  };
}

/** metres of one of a column's unit, as a formula divides */
const PER_METRE: Readonly<Record<string, number>> = { mm: 1000, cm: 100, m: 1 };

function byLength({ sheet, bar, known, standard }: Weighed): LiveMass | null {
  const [length, size] = [cellOf(sheet, bar, "length"), cellOf(sheet, bar, "size")];
  const count = countOf(sheet, bar, known);
  const parts = PER_METRE[bar.table.columns.get("length")?.unit ?? "mm"];
  if (length === null || size === null || count === null || parts === undefined) return null;
  const perMetre = MASS.call([[[size.content]]], environmentOf(standard))[0]?.[0];
  const isNumber = typeof length.content === "number" && typeof count.content === "number";
  if (typeof perMetre !== "number" || !isNumber) return null;
  return {
    formula: `BAR.MASS(${size.address})*${length.address}/${parts}*${count.address}`,
    gives: ((perMetre * (length.content as number)) / parts) * (count.content as number),
  };
}

/** Number of bars; a formula that was not calculated yet will give what its parts come to. */
function countOf(sheet: Sheet, bar: BarRow, known: RowMass | null): RowCell | null {
  const total = cellOf(sheet, bar, "total");
  if (total !== null && total.content !== null) {
    const { content, address } = total;
    return isCellError(content) && content.uncalculated ? { content: known?.count ?? null, address } : total;
  }
  const [members, each] = [cellOf(sheet, bar, "members"), cellOf(sheet, bar, "each")];
  if (members === null || members.content === null || each === null) return each;
  const { content: many } = members;
  const { content: one } = each;
  const content = typeof many === "number" && typeof one === "number" ? many * one : null;
  return { content, address: `${members.address}*${each.address}` };
}

/** The row's cells from A to the last letter, where the columns follow one another; null where they do not. */
function dimensions(sheet: Sheet, { table, row, dims }: BarRow): { range: string; contents: Cell[] } | null {
  const columns: number[] = [];
  for (const letter of DIMENSION_LETTERS) {
    const column = table.columns.get(letter)?.column;
    if (column === undefined) break;
    columns.push(column);
  }
  const [first] = columns;
  if (first === undefined || columns.some((column, index) => column !== first + index)) return null;
  if (dims.length > columns.length) return null;
  const last = addressAt(sheet.top + row, sheet.left + first + columns.length - 1);
  return {
    range: `${addressOf(sheet, row, first)}:${last}`,
    contents: columns.map((column) => sheet.cell(row, column)),
  };
}
