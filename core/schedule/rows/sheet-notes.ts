import { readRemark } from "../cells/read-remark";
import { plainWords } from "../cells/row-words";
import type { Cell, Sheet } from "../sheet";
import { shownText } from "./row-cells";
import type { DraftRow } from "./row-draft";
import { addTitleFacts, dateText } from "./title-facts";

const NOT_OF_BAR = /^(?:notes?|all|nb|general|remarks?)\b/;
/** signs of footnotes, which are of all bars that have them */
const FOOTNOTE = /^\s*(?:[\u2020\u2021*\u00a7]|\*{1,3}\s|\([1-9]\)\s|[\u00b9\u00b2\u00b3])/u;

const SHORTEST_TITLE = 6;

interface NoteRow {
  readonly cells: readonly Cell[];
  readonly row: number;
  readonly filled: readonly number[];
  /** words alone, which may speak of the bar above */
  readonly isOfBar: boolean;
}

/** What the rows of words say: of the whole sheet, or of the bar right above. */
export class SheetNotes {
  readonly texts: { row: number; text: string }[] = [];
  readonly facts = new Map<string, string>();
  private readonly titles = new Set<string>();

  take(sheet: Sheet, { cells, row, filled, isOfBar }: NoteRow, last: DraftRow | undefined): void {
    const text = filled.map((column) => shownText(cells[column])).join(" ");
    this.texts.push({ row, text });
    addTitleFacts(this.facts, {
      cells,
      filled,
      isAbove: last === undefined,
      dateAt: (column) =>
        sheet.isDate?.(row, column) === true
          ? dateText(cells[column] ?? null, sheet.shown?.(row, column))
          : null,
    });
    if (!isOfBar || last === undefined || last.row !== row - 1 || NOT_OF_BAR.test(plainWords(text))) return;
    if (FOOTNOTE.test(text) || isOfNext(sheet, row, filled[0] ?? 0)) return;
    last.remark = last.remark === null ? text : `${last.remark}; ${text}`;
    last.remarks = readRemark(last.remark);
  }

  /** Keeps the first text of a row above every table: on the next page it stands again. */
  title(cells: readonly Cell[], [first = -1]: readonly number[]): void {
    const text = cells[first];
    if (typeof text === "string" && text.trim().length >= SHORTEST_TITLE) this.titles.add(text.trim());
  }

  /** True of a row that begins as one above every table does. */
  isTitleAgain(cells: readonly Cell[], [first = -1]: readonly number[]): boolean {
    const text = this.titles.size === 0 ? null : cells[first];
    return typeof text === "string" && (this.titles.has(text.trim()) || this.namesListAgain(text, cells));
  }

  /** "STAHLLISTE Wand W4 | Blatt 2 von 2": the first word of a title again, with words alone beside it. */
  private namesListAgain(text: string, cells: readonly Cell[]): boolean {
    const filled = cells.filter((cell) => cell !== null && cell !== undefined && cell !== "");
    if (filled.length < 2 || filled.length > MOST_OF_TITLE) return false;
    if (!filled.every((cell) => typeof cell === "string" && /\p{L}{3}/u.test(cell))) return false;
    const word = firstWord(text);
    return word.length >= LEAST_LETTERS && [...this.titles].some((title) => firstWord(title) === word);
  }

  /** The rows are read from the first again. */
  forgetTitles(): void {
    this.titles.clear();
  }

  forgetTexts(): void {
    this.texts.length = 0;
  }

  forget(): void {
    this.forgetTexts();
    this.facts.clear();
  }
}

/** "ring beam, laps are in" above "Ring beam main": its first word is that of the row below, and none of the row above. */
function isOfNext(sheet: Sheet, row: number, column: number): boolean {
  const wordAt = (at: number): string => {
    const cell = at < sheet.rowCount ? sheet.cell(at, column) : null;
    return typeof cell === "string" ? firstWord(cell) : "";
  };
  const word = wordAt(row);
  return word.length >= LEAST_OF_NAME && word === wordAt(row + 1) && word !== wordAt(row - 1);
}

const LEAST_OF_NAME = 3;
const MOST_OF_TITLE = 3;
const LEAST_LETTERS = 5;

const firstWord = (text: string): string => /^\p{L}+/u.exec(text.trim().toLowerCase())?.[0] ?? "";
