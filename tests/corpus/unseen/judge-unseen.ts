import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { rowsBehind } from "../../../core/audit/finding";
import { type Book, checkBooks } from "../../../core/jobs";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";

/** A schedule written by somebody who had not seen the program, with what its writer meant. */
interface UnseenBook {
  readonly name: string;
  readonly country: string;
  /** null where the writer names none */
  readonly standard: string | null;
  readonly bars: number;
  readonly tonnes: number;
  /** with the planted mistakes taken literally */
  readonly tonnesAsWritten: number;
  readonly mistakes: readonly {
    readonly sheet: string;
    readonly row: number;
    readonly cell: string;
    readonly what: string;
    /** tonnes as written less the truth, if this mistake alone is taken literally; known of batches O, 2, 3, S, J, 8, 1, 9, 0 and all of two letters, and of slips of unit or point elsewhere */
    readonly delta?: number;
  }[];
  readonly sheets: readonly {
    readonly name: string;
    readonly rows: readonly (readonly Cell[])[];
    readonly merges?: readonly string[];
    /** rows of the sheet, from 1, whose cells are struck through */
    readonly struck?: readonly number[];
  }[];
}

/** What came out of one batch. */
export interface BatchFigures {
  readonly books: number;
  /** tonnage within one per cent of the truth, or of what is written, mistake by mistake where each one's share is known */
  readonly right: number;
  /** no tonnage, totals held back, two tonnes stated, or rows named that are in no total */
  readonly told: number;
  /** another tonnage without a word */
  readonly silent: number;
  readonly mistakes: number;
  /** a finding above a note stands at the row or the cell */
  readonly found: number;
  readonly contradictions: number;
}

/** The figures of a batch of books that nobody looked at before the first run. */
export function judgeBatch(batch: string): BatchFigures {
  const file = fileURLToPath(new URL(`${batch}.json`, import.meta.url));
  const books = JSON.parse(readFileSync(file, "utf8")) as UnseenBook[];
  const judged = books.map(judge);
  const sum = (of: (one: (typeof judged)[number]) => number): number =>
    judged.reduce((so, one) => so + of(one), 0);
  return {
    books: books.length,
    right: sum(({ outcome }) => Number(outcome === "right")),
    told: sum(({ outcome }) => Number(outcome === "told")),
    silent: sum(({ outcome }) => Number(outcome === "silent")),
    mistakes: books.reduce((so, { mistakes }) => so + mistakes.length, 0),
    found: sum(({ found }) => found),
    contradictions: sum(({ contradictions }) => contradictions),
  };
}

const WITHIN = 0.01;
const KG_PER_TONNE = 1000;

function judge(unseen: UnseenBook) {
  const [checked] = checkBooks([bookOf(unseen)], { sheet: null, standard: unseen.standard });
  if (checked === undefined || isRefusal(checked))
    return { outcome: "told", found: 0, contradictions: 0 } as const;
  const { tonnage, report, schedules } = checked;
  const { total } = tonnage.tonnage;
  const isNear = isNearTo(unseen, total);
  const isDoubted = tonnage.notInTotal.length > 0 || tonnage.doubted.length > 0;
  // weighed as the dimensions make them: the total by the lengths as typed is named beside
  const typed = tonnage.asTyped.reduce((so, row) => so + row.asTyped - row.mass, 0) / KG_PER_TONNE;
  const isNamed = typed !== 0 && isNearTo(unseen, total + typed);
  const isTold =
    isNamed || tonnage.beyond !== null || tonnage.held !== null || isDoubted || report.rows.unread > 0;
  const loud = report.findings.filter(({ severity }) => severity !== "note");
  const found = unseen.mistakes.filter(({ sheet, row, cell }) =>
    loud.some(
      (finding) => finding.sheet === sheet && (finding.cell === cell || rowsBehind(finding).includes(row)),
    ),
  ).length;
  const contradictions = schedules
    .flatMap(({ reading }) => reading.guesses ?? [])
    .filter(({ guess }) => guess === "words-contradicted").length;
  const outcome = tonnage.held === null && isNear ? "right" : isTold ? "told" : "silent";
  return { outcome, found, contradictions } as const;
}

function isNearTo(book: UnseenBook, total: number): boolean {
  return tonnagesOf(book).some((wanted) => Math.abs(total - wanted) <= WITHIN * wanted);
}

/** The truth with none, some or all of the mistakes taken literally, or what is written with some put right: a slip of unit is read as meant, a count as typed. */
function tonnagesOf({ tonnes, tonnesAsWritten, mistakes }: UnseenBook): number[] {
  const [wanted, written] = [[tonnes], [tonnesAsWritten]];
  for (const { delta = 0 } of mistakes) {
    if (delta === 0) continue;
    wanted.push(...wanted.map((one) => one + delta));
    written.push(...written.map((one) => one - delta));
  }
  return [...wanted, ...written];
}

function bookOf({ name, sheets }: UnseenBook): Book {
  const read = new Map(sheets.map((sheet) => [sheet.name, sheetOf(sheet)]));
  return {
    name,
    sheets: sheets.map((sheet) => ({ name: sheet.name, visibility: "visible" })),
    read: (sheet) => read.get(sheet) as Sheet,
    setting: () => null,
  };
}

function sheetOf({ name, rows, merges = [], struck = [] }: UnseenBook["sheets"][number]): Sheet {
  const isStruckThrough = (row: number): boolean => struck.includes(row + 1);
  return { ...sheetFromRows(name, rows), merges: merges.map(areaOf), isStruckThrough };
}

function areaOf(range: string) {
  const [from = "", to = from] = range.split(":");
  const [top, left] = placeOf(from);
  const [bottom, right] = placeOf(to);
  return { top, left, bottom, right };
}

function placeOf(address: string): [number, number] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((so, letter) => so * 26 + letter.charCodeAt(0) - 64, 0);
  return [Number(digits) - 1, column - 1];
}
