import { addressAt } from "../../core/schedule/cell-address";
import { namedGroups, type ReckonedTonnage, type Tonnage, tonnageNotes } from "../../core/totals";
import { shorten } from "../../core/units/shorten";
import type { AddedCell } from "./added-sheet";
import { MOST_BARS, namedParts, ROW_PX, type StackedBars, stackedBarsHeight } from "./stacked-bars";

type Value = string | number | null;
type BlockCell = AddedCell<Value>;

/** Tonnes with what the words under them need. */
interface BlockQuestion extends ReckonedTonnage {
  /** sheets that the bars stand on */
  readonly names: readonly string[];
  /** rows in the tonnes although a later revision of them stands in the workbook */
  readonly olderCounted: number;
}

/** Tonnes as a table, in words and as a chart, to be put into a sheet. */
export interface TonnageBlock {
  readonly rows: readonly (readonly BlockCell[])[];
  /** characters, by column */
  readonly widths: readonly number[];
  /** the sheet's last row that the block takes up, its chart with it, from 0 */
  readonly bottom: number;
  /** null where there is nothing to draw */
  readonly chart: StackedBars | null;
  /** the chart is printed on a page of its own, as one page does not hold it with the table */
  readonly breaksBeforeChart: boolean;
  /** one line that says what stands here */
  readonly summary: string;
}

const NAME_WIDTH = 24;
/** characters of a pour's name: a longer one is not to be read here, and may be more than a cell holds */
const LONGEST_NAME = 250;
const NUMBER_WIDTH = 9;
const FORMAT = "0.000";
const PX_PER_CHARACTER = 7;
const PADDING = 5;
const NAME_PX = NAME_WIDTH * PX_PER_CHARACTER + PADDING;
const NUMBER_PX = NUMBER_WIDTH * PX_PER_CHARACTER + PADDING;
const LEAST_WIDTH = 700;
const MOST_WIDTH = 1040;
/** rows of table and chart together that a printed page holds, with something in hand */
const ROWS_OF_PAGE = 36;

/** The block whose first cell stands at a row and column of the sheet, from 0. */
export function tonnageBlock(reckoned: BlockQuestion, top: number, left: number): TonnageBlock {
  const { groupedBy } = reckoned;
  const whole = namedGroups(reckoned);
  const pours = whole.pours.map((pour) => ({ ...pour, pour: shorten(pour.pour, LONGEST_NAME) }));
  const tonnage = { ...whole, pours };
  const name = `Tonnes by ${groupedBy} and size`;
  const heading: BlockCell[] = [{ value: name, bold: true }];
  if (tonnage.total === 0 || reckoned.held !== null) return withoutTonnes(reckoned, heading, top);
  const sizes = [...tonnage.bySize.keys()];
  const names = tonnage.pours.map(({ pour }) => pour);
  const drawn = Math.min(tonnage.pours.length, MOST_BARS);
  const sentences = [
    ...basis(reckoned),
    ...(drawn < tonnage.pours.length
      ? [`The chart has room for the first ${drawn} of ${tonnage.pours.length}; the table has them all.`]
      : []),
  ];
  const rows: BlockCell[][] = [
    heading,
    ...table(tonnage, groupedBy),
    ...sentences.map((value): BlockCell[] => [{ value }]),
  ];
  const width = Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, NAME_PX + NUMBER_PX * (sizes.length + 1)));
  const height = stackedBarsHeight(drawn, sizes, width);
  const row = top + rows.length + 1;
  const total = `${tonnage.total.toFixed(3)} t`;
  const tableAt = `${addressAt(top + 1, left)}:${addressAt(top + tonnage.pours.length + 2, left + sizes.length + 1)}`;
  const values = tonnage.pours
    .slice(0, drawn)
    .map(({ bySize }) => sizes.map((size) => bySize.get(size) ?? 0));
  return {
    rows,
    widths: widths(Math.max(sizes.length + 1, Math.ceil((width - NAME_PX) / NUMBER_PX))),
    bottom: row + Math.ceil(height / ROW_PX),
    breaksBeforeChart: row + height / ROW_PX - top > ROWS_OF_PAGE,
    chart: {
      title: `${name}: ${total}`,
      description: `Bar chart, a bar each ${groupedBy}, stacked by size, ${total} in all. Its numbers stand in the table ${tableAt} of this sheet.`,
      unit: "t",
      table: { top: top + 1, left, rows: drawn, columns: sizes.length },
      row,
      column: left,
      width,
      height,
      named: namedParts(values, sizes, names.slice(0, drawn), width),
    },
    summary: `${name}: ${total}, table and chart at ${addressAt(top, left)}`,
  };
}

function table({ pours, bySize, total }: Tonnage, groupedBy: string): BlockCell[][] {
  const sizes = [...bySize.keys()];
  const number = (value: number | undefined, isTotal: boolean): BlockCell => ({
    value: value ?? null,
    format: FORMAT,
    ruled: true,
    ...(isTotal && { bold: true }),
  });
  const head = { bold: true, shade: true } as const;
  const first = groupedBy.charAt(0).toUpperCase() + groupedBy.slice(1);
  return [
    [
      { value: first, ...head },
      ...sizes.map((value): BlockCell => ({ value, ...head, right: true })),
      { value: "Total, t", ...head, right: true },
    ],
    ...pours.map((pour): BlockCell[] => [
      { value: pour.pour, wrap: true, ruled: true },
      ...sizes.map((size) => number(pour.bySize.get(size), false)),
      number(pour.total, true),
    ]),
    [
      { value: "Total", bold: true, ruled: true },
      ...sizes.map((size) => number(bySize.get(size), true)),
      number(total, true),
    ],
  ];
}

function withoutTonnes(reckoned: BlockQuestion, heading: BlockCell[], top: number): TonnageBlock {
  const summary =
    reckoned.held === null
      ? "No tonnes: no bar row has a mass that could be worked out, so there is no chart"
      : "No tonnes: totals are held back, since they may be wrong, so there is no chart";
  const sentences = [`${summary}.`, ...tonnageNotes(reckoned).map(sentence)];
  const rows = [heading, ...sentences.map((value): BlockCell[] => [{ value }])];
  return {
    rows,
    widths: widths(6),
    bottom: top + rows.length,
    chart: null,
    breaksBeforeChart: false,
    summary,
  };
}

/** What the tonnes are, a sentence each. */
function basis(reckoned: BlockQuestion): string[] {
  const { tonnage, names, olderCounted, notInTotal } = reckoned;
  const all = tonnage.rows + notInTotal.length;
  const counted = tonnage.rows === all ? (all === 1 ? "the one" : `all ${all}`) : `${tonnage.rows} of ${all}`;
  const where = names.length === 1 ? `sheet ${names[0]}` : `the sheets ${names.join(", ")}`;
  return [
    `Tonnes (t) of ${counted} bar ${all === 1 ? "row" : "rows"} on ${where}.`,
    "By the lengths that the dimensions make and the standard's mass per metre; waste is not in it.",
    "Bars found unsafe or unbendable are in it, as they are scheduled.",
    ...(olderCounted === 0
      ? []
      : [
          `${olderCounted} ${olderCounted === 1 ? "row of which a later revision stands" : "rows of which later revisions stand"} in the workbook: in it too, so that steel may be counted twice.`,
        ]),
    ...tonnageNotes(reckoned).map(sentence),
  ];
}

function widths(numbers: number): number[] {
  return [NAME_WIDTH, ...Array.from({ length: numbers }, () => NUMBER_WIDTH)];
}

const sentence = (note: string): string => `${note.charAt(0).toUpperCase()}${note.slice(1)}.`;
