import { MM_PER_UNIT } from "../../units/unit-table";
import type { BarRow, CellProblem, VaryingSet } from "../bar-row";
import { type Cell, cellErrorReason, isCellError, type Sheet } from "../sheet";
import { type CellPlace, guessed, type RowContext, sameAsMark, type Told, unread } from "./cell-answer";
import { cleanText } from "./clean-text";
import { mayBeDate } from "./date-typed";
import { isFilled } from "./is-filled";
import type { LengthField } from "./length-field";
import { shortened } from "./longest-text";
import { type LengthReading, MOST_MM, readLengthText } from "./read-length-text";
import { readOddNumber } from "./read-odd-number";
import type { UnitError } from "./settle-unit-errors";

/** What a cell of lengths says beyond a plain number. mm. */
export interface LengthSaid {
  readonly value: number | null;
  readonly problem: CellProblem | null;
  /** in brackets: the dimension that takes up tolerance */
  readonly free?: boolean;
  /** a radius under a dimension's letter */
  readonly radius?: boolean;
  readonly lap?: number | null;
  readonly varying?: VaryingSet;
  /** looks written in another unit than its column: the row has to settle it */
  readonly unitError?: UnitError;
}

/** mm; null for a blank; more where more is to be said. */
export type LengthAnswer = number | null | LengthSaid;

const ERROR_TEXT = /^#[A-Z/0!?]+$|^err:\d+$/i;

/** What the cells of a row say under a column of lengths. `above` is the same length of the bar above. */
export function readLengthCell(
  field: LengthField,
  cells: readonly Cell[],
  above: number | null,
  context: RowContext,
  sheet: Sheet,
): LengthAnswer {
  const length = ofOwnCell(field, cells[field.column], above, context, sheet);
  return field.inches < 0 ? length : withInches(field, cells, length);
}

/** True for a number that is taken as it stands, so that nothing is to be told of it. */
export function isPlainLength(cell: Cell | undefined, field: LengthField): cell is number {
  return typeof cell === "number" && cell >= field.least && cell <= field.most && field.inches < 0;
}

/** Feet and inches in two columns: either may be blank. */
function withInches(field: LengthField, cells: readonly Cell[], feet: LengthAnswer): LengthAnswer {
  const cell = cells[field.inches];
  if (cell === null || cell === undefined || cell === "") return feet;
  const said = typeof feet === "object" ? feet : null;
  const before = said === null ? (feet as number | null) : said.value;
  if (before === null && isFilled(cells, field.column)) return said;
  const how = { factor: MM_PER_UNIT.in, comma: field.how.comma, feetInches: false };
  const isOther = typeof cell === "object" || typeof cell === "boolean";
  const reading = isOther ? null : readLengthText(cleanText(String(cell)), how);
  if (reading?.is === "blank") return feet;
  if (reading?.is !== "value" || reading.asks) {
    const typed = isCellError(cell) ? cell.error : shortened(String(cell));
    const place = { field: field.kind, column: field.inches, typed: cell };
    return unread(place, `"${typed}" is no number of inches`);
  }
  const value = Math.round(((before ?? 0) + reading.value) * 1e6) / 1e6;
  return said === null ? value : { ...said, value };
}

function ofOwnCell(
  field: LengthField,
  cell: Cell | undefined,
  above: number | null,
  context: RowContext,
  sheet: Sheet,
): LengthAnswer {
  if (cell === null || cell === undefined) return null;
  if (typeof cell === "number") {
    const isPlain = cell >= field.least && cell <= field.most;
    return isPlain ? inMillimetres(cell, field.how.factor) : ofOddNumber(field, cell, cell, context, sheet);
  }
  const place = { field: field.kind, column: field.column, typed: cell };
  if (typeof cell !== "string") {
    return unread(place, isCellError(cell) ? cellErrorReason(cell) : `${String(cell)} is no length`);
  }
  const reading = field.readText(cell);
  switch (reading.is) {
    case "blank":
      return null;
    case "ditto":
      return above;
    case "unread":
      return unread(place, ERROR_TEXT.test(cell) ? `the cell holds the error ${cell}` : reading.reason);
    case "same-as":
      return sameAsMark<number>(place, reading.mark, (bar) => lengthOf(bar, field), context);
    case "varying":
      return varies(place, reading, context.count);
    default:
      return ofText(field, cell, reading, context, sheet);
  }
}

function ofText(
  field: LengthField,
  typed: string,
  reading: Extract<LengthReading, { is: "value" }>,
  context: RowContext,
  sheet: Sheet,
): LengthAnswer {
  const { value, free, lap, radius, guess, asks, reason } = reading;
  const extra = { ...(free ? { free } : {}), ...(lap === null ? {} : { lap }) };
  if (reading.plain) {
    const number = value / field.how.factor;
    if (number < field.least || number > field.most) {
      const odd = ofOddNumber(field, number, typed, context, sheet);
      return typeof odd === "object" && odd !== null
        ? { ...extra, ...odd }
        : { ...extra, value: odd, problem: null };
    }
  }
  if (guess === null && !free && !radius && lap === null) return value;
  if (guess === null) return { ...extra, value, problem: null, radius };
  const place = { field: field.kind, column: field.column, typed };
  const told = guessed(place, value, { guess, asks, reason, proposal: value }, context);
  return { ...extra, ...told, radius: radius && told.value !== null };
}

/** A varying length is a set, not one dimension. */
function varies(
  place: CellPlace,
  { from, to, step }: Extract<LengthReading, { is: "varying" }>,
  count: number | null,
): LengthSaid {
  const isSet = from !== null && to !== null && step !== null && step > 0;
  const lengths = isSet ? Math.floor(Math.abs(to - from) / step + 1e-9) + 1 : null;
  const name = place.field === "length" ? "the length" : place.field;
  const steps = step === null ? "" : ` in steps of ${step}`;
  const range = from === null ? "varies" : `varies from ${from} to ${to} mm${steps}`;
  const bars = lengths === null || count === null || count === lengths ? "" : ` for ${count} bars`;
  const many = lengths === null ? "" : `, ${lengths} lengths${bars}`;
  const told = unread(place, `${name} ${range}${many}: one row a length says it all`);
  return { ...told, varying: { field: place.field, from, to, step, lengths } };
}

function ofOddNumber(
  field: LengthField,
  number: number,
  typed: Cell,
  context: RowContext,
  sheet: Sheet,
): LengthAnswer {
  const { kind, column, how } = field;
  const place = { field: kind, column, typed };
  if (field.asks !== null && number !== 0 && Math.abs(number) <= MOST_MM) {
    const proposal = inMillimetres(number, how.factor);
    const said = { guess: "unit-of-column", asks: true, reason: field.asks, proposal } as const;
    return { ...guessed(place, proposal, said, context), value: null };
  }
  const reading = readOddNumber(number, {
    column: how,
    isDate: typeof typed === "number" && mayBeDate(number) && sheet.isDate?.(context.row, column) === true,
    datesFrom1904: sheet.datesFrom1904 === true,
    shown: number < 0 ? sheet.shown?.(context.row, column) : undefined,
    isDim: field.place >= 0,
    isLength: kind === "length",
    inInches: field.inInches,
  });
  if (reading.is === "unread") return unread(place, reading.reason);
  if (reading.is === "unit-error") {
    const { onlyByMass = false } = reading;
    const unitError = { field, typed, number, value: reading.value, onlyByMass };
    return { value: reading.value, problem: null, unitError };
  }
  const { guess, asks, reason, value, free } = reading;
  if (guess === null) return free ? { value, problem: null, free } : value;
  const told: Told<number> = guessed(place, value, { guess, asks, reason, proposal: value }, context);
  return free ? { ...told, free } : told;
}

/** A number of the column's unit in mm; metres and inches leave the last bits of a product off. */
export function inMillimetres(number: number, factor: number): number {
  return factor === 1 ? number : Math.round(number * factor * 1e6) / 1e6;
}

function lengthOf(bar: BarRow, { kind, place }: LengthField): number | null {
  if (place >= 0) return bar.dims[place] ?? null;
  return kind === "length" ? bar.length : kind === "R" ? bar.radius : null;
}
