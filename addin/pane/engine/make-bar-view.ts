import { barCount } from "../../../core/bar/bar-count";
import { BarFacts } from "../../../core/bar/bar-facts";
import { barLength } from "../../../core/bar/bar-length";
import { barMass, rowMass } from "../../../core/bar/bar-mass";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { lineWords } from "../../../core/schedule/line-words";
import type { Sheet } from "../../../core/schedule/sheet";
import { barDrawing } from "../../../core/shapes/bar-drawing";
import { barSvg } from "../../../core/shapes/bar-svg";
import { courseNote } from "../../../core/shapes/course";
import type { Standard } from "../../../core/standards";
import { printLength } from "../../../core/units/print-length";
import { isRefusal, type Refusal, refusalText } from "../../../core/units/refusal";
import type { BarView } from "./audit-view";

/** The drawing's room, px: what the pane gives it at first, so that its texts are as large as other texts. */
const FRAME = { width: 170, height: 96 };

/** The bar of a row of the used range, from 0; null where the row is no bar. */
export function barView(
  sheet: Sheet,
  reading: ScheduleReading,
  standard: Standard,
  row: number,
): BarView | null {
  const bar = reading.bars.find((each) => each.row === row);
  if (bar === undefined) return null;
  const facts = new BarFacts(bar, new SheetFacts(sheet, reading), standard);
  // a member's name may be longer than the line
  const title = [bar.mark === null ? null : `mark ${bar.mark}`, bar.sizeTyped, bar.member]
    .filter(Boolean)
    .join(", ");
  const drawn = drawing(facts, title);
  return {
    row: sheet.top + row + 1,
    place: lineWords(sheet, row),
    title: title === "" ? lineWords(sheet, row) : title,
    shape: shapeText(facts),
    notes: drawn?.said ?? [],
    svg: drawn?.svg ?? null,
    trouble: trouble(facts),
    facts: factLines(facts, standard),
  };
}

function shapeText(facts: BarFacts): string | null {
  const { shape } = facts.row;
  if (shape === null) return null;
  const words = facts.definition?.words;
  if (facts.isPath) return `path ${shape}`;
  return words === undefined ? `shape ${shape}` : `shape ${shape}: ${words}`;
}

function drawing(facts: BarFacts, title: string): { svg: string; said: readonly string[] } | null {
  const { path, diameter, former } = facts;
  if (path === null || diameter === null || former === null) return null;
  const note = courseNote(facts.definition);
  const notes = note === null ? [] : [note];
  const drawn = barDrawing({ path, diameter, radius: former / 2, frame: FRAME, notes, hasNotesApart: true });
  const scale = drawn.schematic === null ? "drawn to scale" : "not drawn to scale";
  return { svg: barSvg(drawn, { ...FRAME, title: `Bar ${title}, ${scale}` }), said: drawn.apart };
}

function trouble(facts: BarFacts): string | null {
  const { resolved, row } = facts;
  if (isRefusal(resolved)) return refusalText(resolved);
  if (row.shape === null) return "the row says no shape";
  if (facts.diameter === null) return "the row says no size that this standard holds";
  return isRefusal(facts.developed) ? refusalText(facts.developed) : null;
}

function factLines(facts: BarFacts, standard: Standard): BarView["facts"] {
  const { row, cut, exactLength, leastFormer, path } = facts;
  const kilograms = (mass: number | Refusal, digits: number): string | null =>
    isRefusal(mass) ? null : `${mass.toFixed(digits)} kg`;
  const count = barCount(facts);
  const length = (mm: number): string => printLength(mm, standard.unit);
  const lines: { name: string; value: string }[] = [];
  const add = (name: string, value: string | null): void => {
    if (value !== null) lines.push({ name, value });
  };
  add("Length by dimensions", cut === null ? null : length(cut.length));
  add("As typed", row.length === null || row.length === cut?.length ? null : length(row.length));
  add("On the centre line", exactLength === null ? null : length(Math.round(exactLength * 10) / 10));
  const isStraight = path?.kind === "planar" && path.turns.length === 0;
  if (!isStraight) add("Former", formerText(row.former, leastFormer?.value ?? null, length));
  const weighed = barLength(facts, "to weigh");
  const isAsMade = !isRefusal(weighed) && weighed.from === "computed";
  const by = isAsMade ? "by dimensions" : "as typed";
  add(`Mass of one, ${by}`, kilograms(barMass(facts, "to weigh"), 2));
  add("Number", isRefusal(count) ? null : String(count));
  add(`Mass of the row, ${by}`, kilograms(rowMass(facts, "to weigh"), 1));
  return lines;
}

function formerText(
  typed: number | null,
  least: number | null,
  length: (mm: number) => string,
): string | null {
  if (typed === null) return least === null ? null : `${length(least)}, the least`;
  if (least === null) return `${length(typed)}, as typed`;
  return typed < least
    ? `${length(typed)} typed, below the least ${length(least)}`
    : `${length(typed)}, as typed`;
}
