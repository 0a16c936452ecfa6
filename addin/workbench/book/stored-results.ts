import { tokenize } from "@borgar/fx";
import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { barFunctionName } from "../../workbook/bar-formula-names";
import type { Workbook } from "../../xlsx/read/open-workbook";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { staleFormulas } from "../../xlsx/structure/stale-formulas";
import type { GridSheetNow } from "./book-changes";

/** A sheet as the grid calculated it when it was opened, beside what the file says. */
export interface CalculatedSheet {
  /** the grid's */
  readonly id: string;
  readonly name: string;
  readonly reading: SheetReading;
  readonly now: GridSheetNow;
  /** "row column" of formulas that came out otherwise than the file holds them */
  readonly doubted: ReadonlySet<string>;
}

export interface StoredResult {
  readonly row: number;
  readonly column: number;
  readonly value: Cell;
}

/**
 * Results that the file holds and the grid cannot come to, by the grid's sheet: of formulas that ask for a
 * function, name or table that it does not know, and of those that lean on them.
 */
export function storedResults(
  workbook: Workbook,
  sheets: readonly CalculatedSheet[],
): ReadonlyMap<string, readonly StoredResult[]> {
  const unknown = new Map(
    sheets.map(({ name, now, doubted }) => [
      name,
      places(doubted).filter(({ row, column }) => isUnknown(now, row, column)),
    ]),
  );
  if ([...unknown.values()].every((cells) => cells.length === 0)) return new Map();
  const leaning = staleFormulas(workbook, unknown);
  return new Map(
    sheets.map(({ id, name, reading, now, doubted }) => {
      const cells = [...(unknown.get(name) ?? []), ...(leaning.get(name) ?? [])];
      const kept = new Set(
        cells.map(({ row, column }) => `${row} ${column}`).filter((key) => doubted.has(key)),
      );
      const results = places(kept).map((place) => ({
        ...place,
        value: reading.valueAt(place.row, place.column),
      }));
      return [id, results.filter((result) => isResult(result.value) && fillsItself(now, result))];
    }),
  );
}

const places = (keys: ReadonlySet<string>) =>
  [...keys].map((key) => {
    const [row = 0, column = 0] = key.split(" ").map(Number);
    return { row, column };
  });

function isUnknown(now: GridSheetNow, row: number, column: number): boolean {
  const value = now.valueAt(row, column);
  if (value !== null && isCellError(value) && value.error === "#NAME?") return true;
  const functions = ALL_IMPLEMENTED_FUNCTIONS_SET as ReadonlySet<string>;
  return tokenize(now.formulaAt(row, column) ?? "", { withLocation: false }).some(
    ({ type, value: word }) =>
      type === "structured" ||
      (type === "func" && !functions.has(word.toUpperCase()) && barFunctionName(word) === null),
  );
}

/** A file holds no result of a formula that was never calculated. */
const isResult = (value: Cell): boolean => value !== null && !isCellError(value);

const fillsItself = (now: GridSheetNow, { row, column }: StoredResult): boolean =>
  now.spillAt(row, column) === null;
