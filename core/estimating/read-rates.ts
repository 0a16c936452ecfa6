import type { Cell } from "../schedule/sheet";
import { isCellError } from "../schedule/sheet";
import { SHOP_COLUMNS } from "../shop/shop-words.data";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";
import type { Rate, RateProblem, Rates } from "./rates";

type RateColumn = "size" | (typeof MONEY_OR_HOURS)[number];
type Block = readonly (readonly Cell[])[];

const MONEY_OR_HOURS = ["supply", "cutting", "bending", "fixing", "hours", "bendHours", "waste"] as const;
const RATE_COLUMNS = ["size", ...MONEY_OR_HOURS] as const;

/** Whether these heads begin a table of rates: sizes, and what a tonne or a bend of them costs or takes. */
function isRatesHeader(heads: readonly Cell[]): boolean {
  const columns = columnsOf(heads);
  const told = MONEY_OR_HOURS.filter((column) => columns.has(column));
  return columns.has("size") && told.some((column) => column !== "waste");
}

/**
 * A table of rates with its header row. A blank cell is not written down; a cell that cannot be read is a
 * problem, and so is a row without sizes that can be told. Null where the header is none.
 */
export function readRates(block: Block, standard: Standard): Rates | null {
  const heads = block[0] ?? [];
  if (!isRatesHeader(heads)) return null;
  const columns = columnsOf(heads);
  const rates: Rate[] = [];
  const problems: RateProblem[] = [];
  block.forEach((cells, row) => {
    if (row === 0 || cells.every(isBlank)) return;
    const sizeColumn = columns.get("size")!;
    const band = readBand(cells[sizeColumn] ?? null, standard);
    if (band === null) {
      problems.push(
        problem(cells, row, sizeColumn, `sizes of ${standard.id}: 16, 10 to 16, up to 12, over 25, or blank`),
      );
      return;
    }
    const numbers = Object.fromEntries(
      MONEY_OR_HOURS.map((name) => {
        const column = columns.get(name);
        const cell = column === undefined ? null : (cells[column] ?? null);
        if (column === undefined || isBlank(cell)) return [name, null];
        const value = numberOf(cell);
        if (value === null) problems.push(problem(cells, row, column, "a number, 0 or more"));
        return [name, value];
      }),
    ) as Record<(typeof MONEY_OR_HOURS)[number], number | null>;
    rates.push({ ...band, ...numbers });
  });
  return { rates, problems };
}

function columnsOf(heads: readonly Cell[]): Map<RateColumn, number> {
  const columns = new Map<RateColumn, number>();
  heads.forEach((head, column) => {
    const words =
      typeof head === "string"
        ? head
            .toLowerCase()
            .replace(/[().,]/g, " ")
            .replace(/\s+/g, " ")
            .trim()
        : "";
    const name = RATE_COLUMNS.find((key) => (SHOP_COLUMNS[key] as readonly string[]).includes(words));
    if (name !== undefined && !columns.has(name)) columns.set(name, column);
  });
  return columns;
}

const ALL = { from: 0, upTo: Number.POSITIVE_INFINITY };
/** mm past a named size at which "over" it begins */
const BEYOND = 1e-6;

/** "16", "10 to 16", "up to 12", "over 25"; blank or "all" is every size. */
function readBand(cell: Cell, standard: Standard): { from: number; upTo: number } | null {
  if (isBlank(cell)) return ALL;
  const text = typeof cell === "number" || typeof cell === "string" ? String(cell).trim().toLowerCase() : "";
  if (text === "all") return ALL;
  const upTo = /^up to (.+)$/.exec(text)?.[1];
  const over = /^over (.+)$/.exec(text)?.[1];
  const ends = text.split(/ to | ?- ?(?=\S)/);
  if (upTo !== undefined) return bandOf(null, diameterOf(upTo, standard));
  if (over !== undefined) {
    const least = diameterOf(over, standard);
    return least === null ? null : { from: least + BEYOND, upTo: Number.POSITIVE_INFINITY };
  }
  const [first, last = first] = ends;
  if (ends.length > 2 || first === undefined || last === undefined) return null;
  const from = diameterOf(first, standard);
  return from === null ? null : bandOf(from, diameterOf(last, standard));
}

function bandOf(from: number | null, upTo: number | null): { from: number; upTo: number } | null {
  return upTo === null || upTo < (from ?? 0) ? null : { from: from ?? 0, upTo };
}

function diameterOf(text: string, standard: Standard): number | null {
  const reading = standard.readSize(text.trim().toUpperCase());
  return isRefusal(reading) ? null : reading.diameter;
}

function numberOf(cell: Cell): number | null {
  const value = typeof cell === "string" ? Number(cell.trim().replace(/ ?%$/, "")) : cell;
  return typeof value === "number" && Number.isFinite(value) && value >= 0 ? value : null;
}

function isBlank(cell: Cell): boolean {
  return cell === null || (typeof cell === "string" && cell.trim() === "");
}

function problem(cells: readonly Cell[], row: number, column: number, wanted: string): RateProblem {
  const cell = cells[column] ?? null;
  return { row, column, typed: cell !== null && isCellError(cell) ? cell.error : String(cell ?? ""), wanted };
}
