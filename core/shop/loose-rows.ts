import type { Cell, Sheet } from "../schedule/sheet";
import {
  filledCells,
  headCount,
  isTitle,
  type SectionKind,
  type ShopSection,
  wordsAndUnit,
} from "./find-sections";
import { limitNamed } from "./limit-named";
import { nearWord } from "./near-word";
import { SHOP_COLUMNS, SHOP_LIMITS } from "./shop-words.data";

/** A row of the Shop sheet that stands under no header and is no remark. */
export interface LooseRow {
  readonly row: number;
  /** columns that hold something */
  readonly cells: readonly number[];
  /** rows of the same kind directly below, which it speaks for */
  readonly more: number;
}

export const SECOND_TABLE =
  "nothing goes by it: a table of this kind stands above, and this one is not read: put its rows there";
export const NO_TABLE =
  "this row looks like heads, but of no table that is known, so the rows below it are not read";

/**
 * Rows that no table holds: of a run of them the first, and each that names a limit. A title, and words alone in
 * their row, ask for nothing.
 */
export function looseRows(sheet: Sheet, sections: readonly ShopSection[]): LooseRow[] {
  const held = new Set(sections.flatMap(({ headerRow, rows }) => [headerRow, ...rows]));
  const loose: LooseRow[] = [];
  let isRun = false;
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const cells = held.has(row) || isTitle(sheet, row) ? [] : filledCells(sheet, row);
    const isRemark = cells.length === 1 && typeof sheet.cell(row, cells[0]!) === "string";
    if (cells.length === 0 || isRemark) {
      isRun = false;
    } else if (isNamed(sheet.cell(row, cells[0]!))) {
      loose.push({ row, cells, more: 0 });
      isRun = false;
    } else if (!isRun) {
      loose.push({ row, cells, more: 0 });
      isRun = true;
    } else {
      const last = loose.pop()!;
      loose.push({ ...last, more: last.more + 1 });
    }
  }
  return loose;
}

/** True for words that a table or the limits have: each such row asks for an answer of its own. */
function isNamed(cell: Cell): boolean {
  const { words } = wordsAndUnit(cell);
  return limitNamed(cell) !== null || (HEAD_WORDS as readonly string[]).includes(words);
}

/** Why a loose row is not read. */
export function looseWords(cell: Cell, more: number): string {
  const { words } = wordsAndUnit(cell);
  const alike = more === 0 ? "" : ` (and ${more === 1 ? "the row" : `${more} rows`} below it)`;
  const head = Object.values(SHOP_COLUMNS).find((known) => (known as readonly string[]).includes(words));
  if (head !== undefined)
    return `nothing goes by it: it is the head of a table, so write it in one row with the table's other heads and the figure below it`;
  const near = nearWord(words, LIMIT_WORDS);
  return near === null
    ? `nothing goes by it: its row${alike} stands under no row of heads that is known, as after a blank row or a head that is spelt otherwise`
    : `nothing goes by it: did you mean "${near}"?`;
}

const LIMIT_WORDS = Object.values(SHOP_LIMITS).flatMap((words) =>
  words.map((word) => wordsAndUnit(word).words),
);
const HEAD_WORDS = Object.values(SHOP_COLUMNS).flat();

/** Heads that are no column's name but nearly one that the table lacks; a trial log has names of its own. */
export function misspeltHeads(
  sheet: Sheet,
  { headerRow, columns }: ShopSection,
  kind: SectionKind | null,
): { readonly column: number; readonly wanted: string }[] {
  if (kind === "trials" || kind === null || headCount(sheet, headerRow) === 0) return [];
  const known = new Set(columns.values());
  return filledCells(sheet, headerRow).flatMap((column) => {
    const { words } = wordsAndUnit(sheet.cell(headerRow, column));
    const near = known.has(column) ? null : nearWord(words, HEAD_WORDS);
    const isOther = near !== null && near !== words;
    return isOther ? [{ column, wanted: `nothing goes by this column: did you mean "${near}"?` }] : [];
  });
}
