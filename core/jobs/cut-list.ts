import type { CutRow, RefusedRow } from "../cutting/cut-row";
import { pieceRefusal, type Stock } from "../cutting/cutting-question";
import { type CuttingSupply, cuttingSupply } from "../cutting/cutting-supply";
import { planBySize, type SizePlan } from "../cutting/plan-by-size";
import { readPieceList } from "../cutting/read-piece-list";
import { bothReasons } from "../cutting/refused-text";
import { rowsToCut } from "../cutting/rows-to-cut";
import { type StockToBuy, stockToBuy } from "../cutting/stock-to-buy";
import type { ScheduleReading } from "../schedule/bar-row";
import { scheduleHead } from "../schedule/schedule-head";
import type { Workshop } from "../shop/workshop";
import type { Standard } from "../standards/port";
import type { ReadSheet } from "../totals/reckon-tonnage";
import { thinToThick } from "../totals/thin-to-thick";
import { isRefusal, type Refusal } from "../units/refusal";
import { newestOf, type OpenedBook, readingOf, withSchedules } from "./read-book";

/** What is to be cut: schedules, and rows that stand on plain lists. */
export interface CutListQuestion {
  readonly schedules: readonly ReadSheet[];
  readonly standard: Standard;
  readonly workshop: Workshop;
  /** stock lengths that go before those of the Shop sheet */
  readonly stock?: readonly Stock[] | null;
  readonly listed?: { readonly rows: readonly CutRow[]; readonly refused: readonly RefusedRow[] };
}

export interface CutListJob {
  readonly groups: readonly SizePlan[];
  /** rows in no plan, each with its reason */
  readonly refused: readonly RefusedRow[];
  readonly supply: CuttingSupply;
  readonly toBuy: readonly StockToBuy[];
  readonly notes: readonly string[];
}

/** Rows that ask to be cut, and those that ask for nothing that could be. */
export interface PiecesOfBook {
  readonly rows: readonly CutRow[];
  readonly refused: readonly RefusedRow[];
  readonly notes: readonly string[];
}

/** The cutting plan of schedules, size by size, with what is to be bought. */
export function cutListOf(asked: CutListQuestion): CutListJob {
  const { standard, workshop, stock = null } = asked;
  return planPieces(piecesOf(asked), cuttingSupply(workshop.shop, standard, stock), standard);
}

/** What schedules and plain lists ask to be cut, row by row. */
export function piecesOf({ schedules, standard, listed }: CutListQuestion): PiecesOfBook {
  const isSeveral = schedules.length > 1;
  const read = schedules.map(({ sheet, reading }) => {
    const head = scheduleHead(reading);
    const { rows, ...others } = rowsToCut(sheet, reading, standard);
    const schedule = head.schedule ?? head.drawing;
    return { name: sheet.name, ...others, rows: rows.map((row) => ({ ...row, schedule })) };
  });
  return {
    rows: [...(listed?.rows ?? []), ...read.flatMap(({ rows }) => rows)],
    refused: [...(listed?.refused ?? []), ...read.flatMap(({ refused }) => refused)],
    notes: read.flatMap(({ name, notes }) => notes.map((note) => (isSeveral ? `${name}: ${note}` : note))),
  };
}

/** The plan of rows, whichever books they come from. */
export function planPieces(
  { rows, refused, notes }: PiecesOfBook,
  supply: CuttingSupply,
  standard: Standard,
): CutListJob {
  const planned = planBySize(rows, supply);
  const groups = [...planned.groups].sort((a, b) => thinToThick(a.size, b.size));
  return {
    groups,
    refused: [...planned.refused, ...refused.map((row) => withLength(row, supply))],
    supply,
    toBuy: stockToBuy(groups, standard),
    notes: [...notes, ...planned.notes],
  };
}

/** A row that is refused for another reason, with that of its length where no stock gives it either. */
function withLength(row: RefusedRow, { linesOf, endCrop, unit }: CuttingSupply): RefusedRow {
  const stock = row.length === null ? null : linesOf(row.size);
  if (row.length === null || stock === null) return row;
  const ofLength = pieceRefusal({ length: row.length, count: 1 }, { stock, endCrop }, unit);
  return ofLength === null ? row : { ...row, reason: bothReasons(row.reason, ofLength, unit) };
}

/** What the sheets of a book ask to be cut, whether they are schedules or plain lists of lengths. */
export function readForCutting(
  opened: OpenedBook,
): (CutListQuestion & { notes: readonly string[] }) | Refusal {
  const { standard, workshop } = opened;
  const read = newestOf(opened, (sheet) => {
    const reading = readingOf(opened, sheet);
    // whoever corrected a column had it read as a schedule
    const list = isCorrected(reading) ? null : readPieceList(sheet, standard.unit);
    return { sheet, reading, list };
  });
  const listed = {
    rows: read.flatMap(({ list }) => list?.rows ?? []),
    refused: read.flatMap(({ list }) => list?.refused ?? []),
  };
  const schedules = read.filter(({ list }) => list === null);
  const asked = { standard, workshop, listed };
  if (listed.rows.length + listed.refused.length > 0) return { ...asked, schedules, notes: opened.notes };
  const known = withSchedules(opened, schedules);
  return isRefusal(known) ? known : { ...asked, schedules: known.schedules, notes: known.notes };
}

function isCorrected({ tables }: ScheduleReading): boolean {
  return tables.some(({ columns }) => [...columns.values()].some(({ corrected }) => corrected === true));
}
