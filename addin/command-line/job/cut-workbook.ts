import {
  proofWords,
  type RefusedRow,
  refusedText,
  type SizePlan,
  type StockToBuy,
} from "../../../core/cutting";
import type { LengthUnit } from "../../../core/units/length-unit";
import { printLength } from "../../../core/units/print-length";
import { type NewCell, type NewSheet, writeNewWorkbook } from "../../xlsx/write/new-workbook";
import type { JobPieces } from "./pieces-of-job";

/** A cutting plan over the schedules of a job. */
export interface CutOnPaper {
  readonly groups: readonly SizePlan[];
  readonly refused: readonly RefusedRow[];
  readonly toBuy: readonly StockToBuy[];
  readonly places: JobPieces["places"];
  /** schedules that do not count, or not wholly, and why */
  readonly leftOut: readonly string[];
  readonly unit: LengthUnit;
}

type Row = readonly (string | number | null | NewCell)[];

const BOLD = { bold: true };
const head = (words: string): NewCell => ({ value: words, look: BOLD });
const MM_PER_METRE = 1000;

/**
 * The workbook of a job's cutting plan: what is bought, how each bar is cut, which row of which book each
 * piece is for, and what is in no plan. Lengths in mm; figures are values, sums are formulas over them.
 */
export function cutWorkbook(paper: CutOnPaper): Uint8Array {
  const sheet = (name: string, heads: readonly string[], rows: readonly Row[]): NewSheet => ({
    name,
    rows: [heads.map(head), ...rows],
    widths: heads.map((words) => Math.max(14, words.length + 2)),
    frozenRows: 1,
  });
  return writeNewWorkbook({
    sheets: [
      sheet("To buy", ["Size", "Grade", "Stock mm", "Bars", "Metres", "kg", "How sure"], buyRows(paper)),
      sheet("Cuts", ["Size", "Grade", "Stock mm", "Kind", "Bars", "Cuts", "Rest mm"], cutRows(paper)),
      sheet(
        "Pieces",
        ["Size", "Grade", "Mark", "Length mm", "Pieces", "Book", "Sheet", "Cell"],
        [...pieceRows(paper)],
      ),
      sheet(
        "In no plan",
        ["Size", "Mark", "Pieces", "Why"],
        [
          ...paper.refused.map((row): Row => [row.size, row.mark, row.count, refusedText(row)]),
          ...paper.leftOut.map((why): Row => [null, null, null, why]),
        ],
      ),
    ],
  });
}

function buyRows({ toBuy, groups, unit }: CutOnPaper): Row[] {
  const rows = toBuy.map(({ size, grade, length, bars, kilograms }, at): Row => {
    const metres = (length * bars) / MM_PER_METRE;
    const sure = groups.find((group) => group.size === size && group.grade === grade);
    return [
      size,
      grade,
      length,
      bars,
      { value: metres, formula: `C${at + 2}*D${at + 2}/${MM_PER_METRE}` },
      kilograms,
      sure === undefined ? null : proofWords(sure.plan, boundWords(sure, unit)),
    ];
  });
  if (rows.length === 0) return rows;
  const last = rows.length + 1;
  const sum = (column: string, value: number): NewCell => ({
    value,
    formula: `SUM(${column}2:${column}${last})`,
    look: BOLD,
  });
  const bars = toBuy.reduce((total, one) => total + one.bars, 0);
  const metres = toBuy.reduce((total, one) => total + (one.length * one.bars) / MM_PER_METRE, 0);
  const mass = toBuy.reduce((total, one) => total + (one.kilograms ?? 0), 0);
  return [...rows, [head("All"), null, null, sum("D", bars), sum("E", metres), sum("F", mass)]];
}

function boundWords({ plan }: SizePlan, unit: LengthUnit): string {
  return plan.boundIn === "bars" ? `${plan.lowerBound} bars` : printLength(plan.lowerBound, unit);
}

function cutRows({ groups }: CutOnPaper): Row[] {
  return groups.flatMap(({ size, grade, plan }) =>
    plan.patterns.map(({ stock, remnant, times, cuts, offcut }): Row => {
      const words = cuts.map(({ length, count }) => `${count} x ${length}`).join(" + ");
      return [size, grade, stock, remnant ? "remnant" : "stock", times, words, offcut];
    }),
  );
}

function* pieceRows({ groups, places }: CutOnPaper): Generator<Row> {
  for (const { size, grade, rows } of groups)
    for (const { mark, length, count, sheet, cell } of rows) {
      const place = places.get(sheet);
      yield [size, grade, mark, length, count, place?.book ?? null, place?.sheet ?? sheet, cell];
    }
}
