import type { CellProblem } from "../bar-row";
import type { Cell } from "../sheet";
import { guessed, type RowContext } from "./cell-answer";
import type { LengthField } from "./length-field";

/** A number that looks written in another unit than its column; the whole row settles it. */
export interface UnitError {
  readonly field: LengthField;
  readonly typed: Cell;
  /** as typed */
  readonly number: number;
  /** mm, as it would be taken */
  readonly value: number;
}

/** Length of a bar over the sum of its dimensions: 99 has one dimension, a link counts two of them twice. */
const LEAST_LENGTH_OF_DIMS = 0.3;
const MOST_LENGTH_OF_DIMS = 3.2;

/**
 * Metres among millimetres: taken where the row's dimensions and length fit only so, else asked. Gives what is
 * to be told, and the fields that stay blank until the user has answered.
 */
export function settleUnitErrors(
  errors: readonly UnitError[],
  dims: readonly (number | null)[],
  length: number | null,
  context: RowContext,
): { readonly problems: readonly CellProblem[]; readonly open: readonly LengthField[] } {
  const sum = dims.reduce<number>((so, dim) => so + (dim ?? 0), 0);
  const ratio = length !== null && length > 0 && sum > 0 ? length / sum : 0;
  const fits = ratio > LEAST_LENGTH_OF_DIMS && ratio < MOST_LENGTH_OF_DIMS;
  const problems: CellProblem[] = [];
  const open: LengthField[] = [];
  for (const { field, typed, number, value } of errors) {
    const proposal = Math.round(value * 1e6) / 1e6;
    const unit = field.how.factor === 1 ? "m" : "mm";
    const reason = `${number} was taken in ${unit}, unlike its column: ${proposal} mm`;
    const place = { field: field.kind, column: field.column, typed };
    const said = { guess: "unit-of-cell", asks: !fits, reason, proposal } as const;
    const told = guessed(place, value, said, context);
    problems.push(told.problem);
    if (told.value === null) open.push(field);
  }
  return { problems, open };
}
