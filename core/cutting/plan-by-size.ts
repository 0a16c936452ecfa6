import type { LengthUnit } from "../units/length-unit";
import { defineRefusal, isRefusal } from "../units/refusal";
import { type CutListRow, cutList } from "./cut-list";
import type { CutRow, RefusedRow } from "./cut-row";
import type { CuttingPlan } from "./cutting-plan";
import {
  type CuttingQuestion,
  longestStock,
  pieceRefusal,
  type Stock,
  stockRefusal,
} from "./cutting-question";
import type { CuttingSupply } from "./cutting-supply";
import { drawBars, type HeatPieces, heatsOfRows } from "./heats";
import { pieceNames } from "./piece-names";
import { planCutting, stockRunsOut } from "./plan-cutting";
import { SharedTime } from "./shared-time";
import { rowsOfStock } from "./short-of-stock";

/** ms for all sizes together */
const TIME = 2_000;

const noStockNamed = defineRefusal(
  "no-stock-of-size",
  "not-held",
  "no stock length is named for this size: write one on the Shop sheet or give one",
);
/** One size, and grade where the schedule tells several apart, planned. */
export interface SizePlan {
  readonly size: string;
  /** null where the size has one grade only */
  readonly grade: string | null;
  readonly rows: readonly CutRow[];
  readonly stock: readonly Stock[];
  readonly plan: CuttingPlan;
  readonly list: readonly CutListRow[];
  /** pieces of each row by heat; empty where no stock of the size says one */
  readonly heats: readonly HeatPieces<CutRow>[];
}

export interface SizePlans {
  readonly groups: readonly SizePlan[];
  /** bars in no plan, each with its reason */
  readonly refused: readonly RefusedRow[];
  readonly notes: readonly string[];
}

/**
 * A cutting plan for each size and grade. A row that cannot be cut, such as a bar longer than the stock,
 * is named and left out and the others are planned; nothing is split. Bars of which the yard holds a
 * limited number are shared by the sizes in their order and never promised twice.
 */
export function planBySize(rows: readonly CutRow[], supply: CuttingSupply): SizePlans {
  const groups: SizePlan[] = [];
  const refused: RefusedRow[] = [];
  const notes = [...supply.notes];
  const held = new Map<Stock, number>();
  const steels = bySteel(rows);
  const nameOf = pieceNames(rows);
  const time = new SharedTime(TIME, steels.length);
  for (const { size, grade, rows: ofSteel } of steels) {
    const lines = supply.linesOf(size);
    const named = { size, grade };
    if (lines === null) {
      refused.push({ ...wholeSize(named, ofSteel), reason: noStockNamed({}) });
      continue;
    }
    const usable = grade === null ? lines : lines.filter(({ remnant }) => !remnant);
    if (usable.length < lines.length)
      notes.push(
        `${size} ${grade}: remnants on hand say no grade, so they are not used for a size with several`,
      );
    const stock = usable.map((line) => ({ ...line, count: held.get(line) ?? line.count }));
    const { endCrop, kerf } = supply;
    const timeLimit = time.next();
    const planned = planSteel(named, ofSteel, { stock, endCrop, kerf, timeLimit }, supply.unit);
    for (const row of planned.refused) refused.push(row);
    time.spend(planned.plan?.effort ?? 0);
    if (planned.plan === null || planned.plan.pieces === 0) continue;
    const drawn = drawBars(usable, planned.plan, held);
    const saysHeats = drawn.some((bars) => bars.some(({ heat }) => heat !== null));
    const pieces = planned.rows.map((row) => ({
      mark: nameOf(row),
      length: row.length,
      count: row.count,
    }));
    const list = cutList(planned.plan, pieces, supply.leastRemnant, saysHeats ? drawn : []);
    const heats = saysHeats ? heatsOfRows(planned.plan, planned.rows, drawn) : [];
    groups.push({ ...named, rows: planned.rows, stock, plan: planned.plan, list, heats });
  }
  return { groups, refused, notes };
}

interface Steel {
  readonly size: string;
  readonly grade: string | null;
}

/** Rows by size, and by grade where a size has several; in the order of the schedule. */
function bySteel(rows: readonly CutRow[]): (Steel & { rows: CutRow[] })[] {
  const key = (text: string | null): string => (text ?? "").trim().toLowerCase();
  const sizes = new Map<string, Map<string, CutRow[]>>();
  for (const row of rows) {
    const grades = sizes.get(key(row.size)) ?? new Map<string, CutRow[]>();
    sizes.set(key(row.size), grades);
    const ofGrade = grades.get(key(row.grade)) ?? [];
    grades.set(key(row.grade), ofGrade);
    ofGrade.push(row);
  }
  return [...sizes.values()].flatMap((grades) =>
    [...grades.values()].map((ofGrade) => ({
      size: ofGrade[0]!.size,
      grade: grades.size === 1 ? null : (ofGrade[0]!.grade ?? "no grade said"),
      rows: ofGrade,
    })),
  );
}

interface PlannedSteel {
  readonly plan: CuttingPlan | null;
  readonly rows: readonly CutRow[];
  readonly refused: readonly RefusedRow[];
}

function planSteel(
  steel: Steel,
  rows: readonly CutRow[],
  question: Omit<CuttingQuestion, "pieces">,
  unit: LengthUnit,
): PlannedSteel {
  const ofStock = stockRefusal(question);
  if (ofStock !== null)
    return { plan: null, rows: [], refused: [{ ...wholeSize(steel, rows), reason: ofStock }] };
  const refused: RefusedRow[] = [];
  const sound = rows.filter((row) => {
    const reason = pieceRefusal(row, question, unit);
    if (reason === null) return true;
    const isTooLong = reason.values["usable"] !== undefined;
    refused.push({ ...row, longestStock: isTooLong ? longestStock(question.stock) : null, reason });
    return false;
  });
  const isGone = question.stock.every(({ count }) => count === 0);
  const plan = isGone ? stockRunsOut(sound) : planCutting({ ...question, pieces: sound });
  if (!isRefusal(plan)) return { plan, rows: sound, refused };
  const shared = rowsOfStock(sound, question, unit);
  const rest = shared === null ? plan : planCutting({ ...question, pieces: shared.rows });
  if (shared === null || isRefusal(rest))
    return { plan: null, rows: [], refused: [...refused, { ...wholeSize(steel, sound), reason: plan }] };
  return { plan: rest, rows: shared.rows, refused: [...refused, ...shared.refused] };
}

function wholeSize({ size, grade }: Steel, rows: readonly CutRow[]): Omit<RefusedRow, "reason"> {
  const count = rows.reduce((sum, row) => sum + row.count, 0);
  return { size, grade, mark: null, sheet: null, cell: null, length: null, count, longestStock: null };
}
