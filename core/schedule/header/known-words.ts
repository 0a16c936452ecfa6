import type { ScheduleReading } from "../bar-row";
import type { Cell } from "../sheet";
import { recogniseHeader } from "./recognise-header";

/** All known words, for the message where no header was found. */
const KNOWN_HEADER_WORDS: readonly string[] = [
  "mark",
  "size",
  "no. of members",
  "no. in each",
  "total",
  "length",
  "shape code",
  "A",
  "B",
  "C",
];

export const WIDEST = 16_384;

/** The most known words in one row, to name the nearest row where no header is found. */
export function knownWords(cells: readonly Cell[]): number {
  const kinds = new Set<string>();
  for (let column = 0; column < Math.min(cells.length, WIDEST); column += 1) {
    const cell = cells[column];
    if (typeof cell !== "string") continue;
    const meaning = recogniseHeader(cell);
    if (meaning !== null) kinds.add(meaning.kind);
  }
  return kinds.size;
}

const MOST_NEAREST_ROWS = 2000;

/** What was looked for where no header was found, and the row that comes nearest to one. */
export function headerSought(
  rowCount: number,
  cellsOf: (row: number) => readonly Cell[],
  isTransposed: boolean,
): ScheduleReading["noHeader"] {
  return { lookedFor: KNOWN_HEADER_WORDS, nearestRow: rowOfMostWords(rowCount, cellsOf), isTransposed };
}

/** The row with the most known words; null where no row has one. */
function rowOfMostWords(rowCount: number, cellsOf: (row: number) => readonly Cell[]): number | null {
  let nearest: number | null = null;
  let most = 0;
  for (let row = 0; row < Math.min(rowCount, MOST_NEAREST_ROWS); row += 1) {
    const words = knownWords(cellsOf(row));
    if (words > most) {
      most = words;
      nearest = row;
    }
  }
  return nearest;
}

/** True where every filled cell is another known word. */
export function holdsOnlyWords(cells: readonly Cell[]): boolean {
  const filled = cells.filter((cell) => cell != null && (typeof cell !== "string" || cell.trim() !== ""));
  return (
    filled.length >= 2 &&
    filled.every((cell) => typeof cell === "string") &&
    knownWords(cells) === filled.length
  );
}
