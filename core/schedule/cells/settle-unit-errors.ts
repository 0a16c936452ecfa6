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
  /** a length that may be what it says: another unit is asked for only where the row's mass shows it */
  readonly onlyByMass?: boolean;
}

/** Length of a bar over the sum of its dimensions: 99 has one dimension, a link counts two of them twice. */
const LEAST_LENGTH_OF_DIMS = 0.3;
const MOST_LENGTH_OF_DIMS = 3.2;

/** A mass is written to two figures and more, and tables of unit mass differ by a hundredth. */
const MASS_SLACK = 0.02;
/** mm for m, cm for m, mm for cm, and back */
const UNIT_FACTORS = [10, 100, 1000, 0.1, 0.01, 0.001];

/** What the row says beside those numbers, mm; `byMass` is the length that its own mass, or that of all its bars, makes. */
interface RowAround {
  readonly dims: readonly (number | null)[];
  readonly length: number | null;
  readonly byMass: number | null;
}

/**
 * Metres among millimetres: taken where the row's dimensions and length fit only so, else asked. Gives what is to be
 * told, the fields that stay blank until the user has answered, and the length of the row.
 */
export function settleUnitErrors(
  errors: readonly UnitError[],
  { dims, length: typedLength, byMass }: RowAround,
  context: RowContext,
): {
  readonly problems: readonly CellProblem[];
  readonly open: readonly LengthField[];
  readonly length: number | null;
} {
  const fits = fitsDims(typedLength, dims);
  const problems: CellProblem[] = [];
  const open: LengthField[] = [];
  let length = typedLength;
  for (const { field, typed, number, value, onlyByMass = false } of errors) {
    const proved = field.kind === "length" ? provedBy(byMass, number * field.how.factor) : null;
    if (onlyByMass && proved === null) continue;
    const proposal = Math.round((proved ?? value) * 1e6) / 1e6;
    const asks = !fits || proposal !== Math.round(value * 1e6) / 1e6;
    const unit = unitOf(proposal / number);
    const reason = asks
      ? `${number} is unlike its column: in ${unit} it is ${proposal} mm`
      : `${number} was taken in ${unit}, unlike its column: ${proposal} mm`;
    const place = { field: field.kind, column: field.column, typed };
    const told = guessed(place, proposal, { guess: "unit-of-cell", asks, reason, proposal }, context);
    problems.push(told.problem);
    if (told.value === null) open.push(field);
    if (field.kind === "length") length = told.value;
  }
  return { problems, open, length };
}

function fitsDims(length: number | null, dims: readonly (number | null)[]): boolean {
  const sum = dims.reduce<number>((so, dim) => so + (dim ?? 0), 0);
  const ratio = length !== null && length > 0 && sum > 0 ? length / sum : 0;
  return ratio > LEAST_LENGTH_OF_DIMS && ratio < MOST_LENGTH_OF_DIMS;
}

/** The length as typed times the one factor of units that the mass shows. */
function provedBy(byMass: number | null, asTyped: number): number | null {
  if (byMass === null || !(byMass > 0)) return null;
  const right = UNIT_FACTORS.map((factor) => asTyped * factor);
  return right.find((one) => Math.abs(byMass / one - 1) <= MASS_SLACK) ?? null;
}

function unitOf(factor: number): string {
  const names = Object.entries(UNIT_NAMES);
  return names.find(([, mm]) => Math.abs(factor / mm - 1) < 1e-6)?.[0] ?? "another unit";
}

const UNIT_NAMES = { mm: 1, cm: 10, m: 1000 };
