import type { CuttingPlan } from "../cutting/cutting-plan";
import { type CuttingQuestion, pieceRefusal, type Stock } from "../cutting/cutting-question";
import { proofWords } from "../cutting/proof-words";
import { rememberedPlan } from "../cutting/remembered-plan";
import { SharedTime } from "../cutting/shared-time";
import { rowsOfStock } from "../cutting/short-of-stock";
import { type Cell, type CellError, isCellError } from "../schedule/sheet";
import type { LengthUnit, Standard } from "../standards/port";
import { fromMillimetres } from "../units/convert-length";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal, refusalText } from "../units/refusal";
import { errorCell, isBlankCell } from "./lift";
import { cellInRow, headerRows, lastRow, standardOfTable, tableRefusal } from "./table-arguments";
import type { Block, WorksheetFunction } from "./worksheet-function";

const lengthUnread = defineRefusal(
  "plan-length-unread",
  "value",
  `row {row}: length "{typed}" is no length: give {unit}, over 0`,
);
const countUnread = defineRefusal(
  "plan-count-unread",
  "value",
  `row {row}: count "{typed}" is no whole number of bars, 0 or more`,
);
const rowNotCut = defineRefusal("plan-row-not-cut", "value", "row {row}: {reason}");
const noStockHeld = defineRefusal(
  "no-stock-held",
  "not-held",
  "{standard} names no stock length: give the stock lengths, such as {12000,9000}",
);
const stockUnread = defineRefusal(
  "stock-unread",
  "value",
  `stock "{typed}" is no length: give {unit}, over 0`,
);

const HEADER: readonly Cell[] = ["size", "stock length", "bars", "cuts", "rest of each", "bound"];
/** ms for all sizes together, so that the answer comes within two seconds */
const TIME = 1600;

/**
 * BAR.CUTPLAN: header, one row a cutting pattern, and for each size a closing row with the bars, the
 * waste and the bound. A row that cannot be cut stands as an error under its size, the others are planned
 * and the closing row says that some are not in it. Lengths in the standard's unit; stock is a row or
 * column of lengths, or rows of length, count and the word remnant. Where the bars held do not suffice, what they give is
 * planned and each row that wants more stands as an error. Nothing is split, and no demand exceeded.
 */
export const CUTPLAN: WorksheetFunction = {
  name: "CUTPLAN",
  description: "Cutting plan from stock lengths: one row a pattern, and the bound that no plan can beat",
  args: [
    { name: "lengths", description: "Column of cut lengths", optional: false, lifts: "table" },
    { name: "counts", description: "Column of counts, as many rows", optional: false, lifts: "table" },
    {
      name: "standard",
      description: "Standard and edition; the workbook's own where it is left out",
      optional: true,
      lifts: "column",
    },
    { name: "sizes", description: "Column of sizes, each planned by itself", optional: true, lifts: "table" },
    {
      name: "stock",
      description: "Stock lengths; or rows of length, count and remnant",
      optional: true,
      lifts: "table",
    },
  ],
  call([lengths, counts, standardCell, sizes, stockBlock], environment) {
    const columns = {
      lengths: lengths ?? [],
      counts: counts ?? [],
      ...(sizes === undefined ? {} : { sizes }),
    };
    const refusal = tableRefusal(columns);
    if (refusal !== null) return [[errorCell(refusal)]];
    const asked = standardOfTable("CUTPLAN", standardCell, environment);
    if ("error" in asked) return asked.error;
    const { standard } = asked;
    const error = stockBlock?.flat().find((cell) => cell !== null && isCellError(cell));
    if (error !== undefined) return [[error]];
    const stock = readStock(stockBlock, standard);
    if (isRefusal(stock)) return [[errorCell(stock)]];
    return planBlock(columns.lengths, columns.counts, sizes, standard, stock);
  },
};

interface Piece {
  readonly length: number;
  readonly count: number;
  /** of the range, from 1 */
  readonly row: number;
}

interface Demand {
  readonly pieces: Piece[];
  /** one for each row that is in no plan */
  readonly errors: CellError[];
}

function planBlock(
  lengths: Block,
  counts: Block,
  sizes: Block | undefined,
  standard: Standard,
  stock: readonly Stock[],
): Block {
  const groups = new Map<string, Demand>();
  const last = lastRow([lengths, counts]);
  for (let row = headerRows(lengths); row <= last; row += 1) {
    const cells = [lengths, counts, sizes].map((block) => cellInRow(block, row)) as [Cell, Cell, Cell];
    const isCountOfRow = counts.length > 1 || last === 0;
    if (isBlankCell(cells[0]) && (isBlankCell(cells[1]) || !isCountOfRow)) continue;
    const size = isBlankCell(cells[2]) || isCellError(cells[2]) ? "" : String(cells[2]).trim();
    let demand = groups.get(size);
    if (demand === undefined) {
      demand = { pieces: [], errors: [] };
      groups.set(size, demand);
    }
    const piece = readPiece(cells, row, stock, standard.unit);
    if ("error" in piece) demand.errors.push(piece);
    else demand.pieces.push(piece);
  }
  if (groups.size === 0) return [[null]];
  const time = new SharedTime(TIME, groups.size);
  return [
    HEADER,
    ...[...groups].flatMap(([size, demand]) => groupRows(size, demand, stock, time, standard.unit)),
  ];
}

function readPiece(
  cells: readonly [Cell, Cell, Cell],
  row: number,
  stock: readonly Stock[],
  unit: LengthUnit,
): Piece | CellError {
  const error = cells.find((cell) => isCellError(cell));
  if (error !== undefined) return error as CellError;
  const [lengthCell, countCell] = cells;
  const length =
    typeof lengthCell === "number" || typeof lengthCell === "string" ? parseLength(lengthCell, unit) : null;
  if (length === null || isRefusal(length) || length <= 0) {
    return errorCell(lengthUnread({ row: row + 1, typed: String(lengthCell ?? ""), unit: unitWords(unit) }));
  }
  const count = typeof countCell === "string" ? Number(countCell) : countCell;
  if (typeof count !== "number" || !Number.isSafeInteger(count) || count < 0)
    return errorCell(countUnread({ row: row + 1, typed: String(countCell ?? "") }));
  const refusal = pieceRefusal({ length, count }, { stock, endCrop: 0 }, unit);
  if (refusal === null) return { length, count, row: row + 1 };
  return errorCell(rowNotCut({ row: row + 1, reason: refusalText(refusal, unit) }));
}

function groupRows(
  size: string,
  demand: Demand,
  stock: readonly Stock[],
  time: SharedTime,
  unit: LengthUnit,
): Cell[][] {
  const errorRow = (error: CellError): Cell[] => [size, error, null, null, null, null];
  if (demand.pieces.length === 0) return demand.errors.map(errorRow);
  const { plan, short } = planOf(demand.pieces, { stock, endCrop: 0, kerf: 0, timeLimit: time.next() }, unit);
  const errors = [...demand.errors, ...short].map(errorRow);
  if (isRefusal(plan)) return [...errors, errorRow(errorCell(plan, unit))];
  time.spend(plan.effort);
  const out = (mm: number): number => Number(fromMillimetres(mm, unit).toPrecision(DIGITS));
  const patterns = plan.patterns.map((pattern): Cell[] => [
    size,
    out(pattern.stock),
    pattern.times,
    pattern.cuts.map((cut) => `${cut.count} x ${out(cut.length)}`).join(" + "),
    out(pattern.offcut),
    null,
  ]);
  const waste = `${plan.pieces} ${plan.pieces === 1 ? "piece" : "pieces"}, ${(plan.wasteRatio * PERCENT).toFixed(1)} % left over`;
  const bound = boundText(plan, out) + leftOut(demand.errors.length) + wanting(short.length);
  return [...errors, ...patterns, [size, out(plan.usedLength), plan.bars, waste, null, bound]];
}

/** The plan of all pieces; of those that the bars held give, where they do not suffice, and what of each row wants more. */
function planOf(
  pieces: readonly Piece[],
  question: Omit<CuttingQuestion, "pieces">,
  unit: LengthUnit,
): { readonly plan: CuttingPlan | Refusal; readonly short: readonly CellError[] } {
  const plan = rememberedPlan({ ...question, pieces });
  const shared = isRefusal(plan) ? rowsOfStock(pieces, question, unit, "give more stock") : null;
  const rest =
    shared === null || shared.rows.length === 0 ? plan : rememberedPlan({ ...question, pieces: shared.rows });
  if (shared === null || isRefusal(rest)) return { plan, short: [] };
  const short = shared.refused.map(({ row, reason }) =>
    errorCell(rowNotCut({ row, reason: refusalText(reason, unit) })),
  );
  return { plan: rest, short };
}

function leftOut(rows: number): string {
  return rows === 0 ? "" : `; ${rows === 1 ? "1 row is" : `${rows} rows are`} not in it`;
}

function wanting(rows: number): string {
  return rows === 0 ? "" : `; ${rows === 1 ? "1 row wants" : `${rows} rows want`} more stock`;
}

function boundText(plan: CuttingPlan, out: (mm: number) => number): string {
  const got = plan.boundIn === "bars" ? bars(plan.barsBought) : `${out(plan.stockLength)} bought`;
  const bound = plan.boundIn === "bars" ? bars(plan.lowerBound) : String(out(plan.lowerBound));
  return `${got}${plan.provenLeast ? "," : ";"} ${proofWords(plan, bound)}`;
}

function readStock(block: Block | undefined, standard: Standard): Stock[] | Refusal {
  const cells = block?.flat().filter((cell) => !isBlankCell(cell)) ?? [];
  if (block === undefined || cells.length === 0) {
    const held = standard.supply.stockLength;
    return held === null
      ? noStockHeld({ standard: standard.id })
      : [{ length: held.value, count: null, remnant: false }];
  }
  const isTable = block.length > 1 && (block[0]?.length ?? 0) > 1;
  const rows: readonly (readonly Cell[])[] = isTable
    ? block.filter((row) => !isBlankCell(row[0]))
    : cells.map((cell) => [cell]);
  const stock: Stock[] = [];
  for (const [index, [lengthCell, count, kind]] of rows.entries()) {
    if (index === 0 && isTable && typeof lengthCell === "string" && !/\d/.test(lengthCell)) continue;
    const length =
      typeof lengthCell === "number" || typeof lengthCell === "string"
        ? parseLength(lengthCell, standard.unit)
        : null;
    if (length === null || isRefusal(length) || length <= 0)
      return stockUnread({ typed: String(lengthCell), unit: unitWords(standard.unit) });
    const remnant = /^(remnant|yes|y|true)$/i.test(String(kind ?? "").trim());
    stock.push({ length, count: isBlankCell(count) ? (remnant ? 1 : null) : Number(count), remnant });
  }
  return stock;
}

const unitWords = (unit: LengthUnit): string =>
  unit === "in" ? "inches, or a text with its unit" : "millimetres, or a text with its unit";
const bars = (count: number): string => `${count} ${count === 1 ? "bar" : "bars"}`;
const PERCENT = 100;
const DIGITS = 12;
