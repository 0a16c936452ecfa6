import type { BarRow } from "../bar-row";
import { DIM_LETTERS, isFilled, type LengthField } from "../columns/table-columns";
import type { RowInHand } from "../rows/row-in-hand";
import { type Cell, cellErrorReason, isCellError, type Sheet } from "../sheet";
import { cleanText } from "./clean-text";
import { mayBeDate } from "./date-typed";
import { shortened } from "./longest-text";
import { type LengthReading, MM_PER_UNIT, MOST_MM, readLengthText } from "./read-length-text";
import { readOddNumber } from "./read-odd-number";

const MOST_REMEMBERED = 50_000;
const ERROR_TEXT = /^#[A-Z/0!?]+$|^err:\d+$/i;
/** Length of a bar over the sum of its dimensions: 99 has one dimension, a link counts two of them twice. */
const LEAST_LENGTH_OF_DIMS = 0.3;
const MOST_LENGTH_OF_DIMS = 3.2;

/** Reads the cells of a row that hold lengths, mm. `place` is the place among the dims, or -1. */
export function lengthCellReader(hand: RowInHand, sheet: Sheet, inInches: boolean) {
  return { read, settleSlips };

  function read(
    field: LengthField,
    cells: readonly Cell[],
    place: number,
    above: number | null,
  ): number | null {
    const length = readOwn(field, cells, place, above);
    return field.inches < 0 ? length : withInches(field, cells, length);
  }

  /** Feet and inches in two columns: either may be blank. */
  function withInches(field: LengthField, cells: readonly Cell[], feet: number | null): number | null {
    const cell = cells[field.inches];
    if (cell === null || cell === undefined || cell === "") return feet;
    if (feet === null && isFilled(cells, field.column)) return null;
    const how = { factor: MM_PER_UNIT.in, comma: field.how.comma, feetInches: false };
    const reading =
      typeof cell === "object" || typeof cell === "boolean"
        ? null
        : readLengthText(cleanText(String(cell)), how);
    if (reading?.is === "blank") return feet;
    if (reading?.is !== "value" || reading.asks) {
      hand.unread(
        field.kind,
        field.inches,
        cell,
        `"${isCellError(cell) ? cell.error : shortened(String(cell))}" is no number of inches`,
      );
      return null;
    }
    return Math.round(((feet ?? 0) + reading.value) * 1e6) / 1e6;
  }

  function readOwn(
    field: LengthField,
    cells: readonly Cell[],
    place: number,
    above: number | null,
  ): number | null {
    const { kind, column } = field;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number") {
      return cell >= field.least && cell <= field.most
        ? cell * field.how.factor
        : odd(field, cell, place, cell);
    }
    if (typeof cell !== "string") {
      const reason = isCellError(cell) ? cellErrorReason(cell) : `${String(cell)} is no length`;
      hand.unread(kind, column, cell, reason);
      return null;
    }
    const reading = field.texts.get(cell) ?? remember(field, cell);
    switch (reading.is) {
      case "blank":
        return null;
      case "ditto":
        return above;
      case "unread":
        hand.unread(
          kind,
          column,
          cell,
          ERROR_TEXT.test(cell) ? `the cell holds the error ${cell}` : reading.reason,
        );
        return null;
      case "same-as":
        return hand.sameAs<number>(kind, column, cell, reading.mark, (bar) => fieldOf(bar, field, place));
      case "varying":
        varies(field, cell, reading);
        return null;
      default:
        return ofText(field, cell, reading, place);
    }
  }

  function remember(field: LengthField, cell: string): LengthReading {
    const reading = readLengthText(cleanText(cell), field.how);
    if (field.texts.size > MOST_REMEMBERED) field.texts.clear();
    field.texts.set(cell, reading);
    return reading;
  }

  function ofText(
    field: LengthField,
    cell: string,
    reading: Extract<LengthReading, { is: "value" }>,
    place: number,
  ): number | null {
    const { value, guess, asks, reason } = reading;
    if (reading.free && place >= 0) hand.free += DIM_LETTERS[place];
    if (reading.lap !== null) hand.lap = reading.lap;
    if (reading.plain) {
      const number = value / field.how.factor;
      if (number < field.least || number > field.most) return odd(field, number, place, cell);
    }
    if (
      guess !== null &&
      !hand.mayUse(field.kind, field.column, cell, { guess, asks, reason, proposal: value })
    ) {
      return null;
    }
    if (reading.radius && place >= 0) {
      hand.radius = value;
      return null;
    }
    return value;
  }

  /** A varying length is a set, not one dimension. */
  function varies(
    field: LengthField,
    cell: string,
    { from, to, step }: Extract<LengthReading, { is: "varying" }>,
  ): void {
    const isSet = from !== null && to !== null && step !== null && step > 0;
    const lengths = isSet ? Math.floor(Math.abs(to - from) / step + 1e-9) + 1 : null;
    hand.varying = { field: field.kind, from, to, step, lengths };
    const name = field.kind === "length" ? "the length" : field.kind;
    const steps = step === null ? "" : ` in steps of ${step}`;
    const range = from === null ? "varies" : `varies from ${from} to ${to} mm${steps}`;
    const count = hand.each ?? hand.total;
    const bars = lengths === null || count === null || count === lengths ? "" : ` for ${count} bars`;
    const many = lengths === null ? "" : `, ${lengths} lengths${bars}`;
    hand.unread(field.kind, field.column, cell, `${name} ${range}${many}: one row a length says it all`);
  }

  function odd(field: LengthField, number: number, place: number, typed: Cell): number | null {
    const { kind, column, how } = field;
    if (field.asks !== null && number !== 0 && Math.abs(number) <= MOST_MM) {
      const proposal = inMillimetres(number, how.factor);
      hand.mayUse(kind, column, typed, { guess: "unit-of-column", asks: true, reason: field.asks, proposal });
      return null;
    }
    const reading = readOddNumber(number, {
      column: how,
      isDate: typeof typed === "number" && mayBeDate(number) && sheet.isDate?.(hand.row, column) === true,
      datesFrom1904: sheet.datesFrom1904 === true,
      shown: number < 0 ? sheet.shown?.(hand.row, column) : undefined,
      isDim: place >= 0,
      inInches,
    });
    if (reading.is === "unread") {
      hand.unread(kind, column, typed, reading.reason);
      return null;
    }
    if (reading.is === "slip") {
      hand.slips ??= [];
      hand.slips.push({ field, typed, number, value: reading.value, place });
      return reading.value;
    }
    if (reading.free && place >= 0) hand.free += DIM_LETTERS[place];
    const { guess, asks, reason, value } = reading;
    if (guess === null) return value;
    return hand.mayUse(kind, column, typed, { guess, asks, reason, proposal: value }) ? value : null;
  }

  /**
   * Metres among millimetres: taken where the row's dimensions and length fit only so, else asked.
   * Gives the length; a dimension that is asked is blanked in `dims`.
   */
  function settleSlips(dims: (number | null)[], length: number | null): number | null {
    let settled = length;
    const sum = dims.reduce<number>((so, dim) => so + (dim ?? 0), 0);
    const ratio = length !== null && length > 0 && sum > 0 ? length / sum : 0;
    const fits = ratio > LEAST_LENGTH_OF_DIMS && ratio < MOST_LENGTH_OF_DIMS;
    for (const { field, typed, number, value, place } of hand.slips ?? []) {
      const { kind, column, how } = field;
      const proposal = Math.round(value * 1e6) / 1e6;
      const unit = how.factor === 1 ? "m" : "mm";
      const reason = `${number} was taken in ${unit}, unlike its column: ${proposal} mm`;
      if (hand.mayUse(kind, column, typed, { guess: "unit-of-cell", asks: !fits, reason, proposal }))
        continue;
      if (place >= 0) dims[place] = null;
      else if (kind === "length") settled = null;
      else if (kind === "R") hand.radius = null;
    }
    return settled;
  }
}

/** A number of the column's unit in mm; metres and inches leave the last bits of a product off. */
export function inMillimetres(number: number, factor: number): number {
  return factor === 1 ? number : Math.round(number * factor * 1e6) / 1e6;
}

function fieldOf(bar: BarRow, field: LengthField, place: number): number | null {
  if (place >= 0) return bar.dims[place] ?? null;
  return field.kind === "length" ? bar.length : field.kind === "R" ? bar.radius : null;
}
