import type { LengthUnit } from "../units/length-unit";
import { printLength } from "../units/print-length";
import { defineRefusal, type Refusal } from "../units/refusal";
import type { Formula } from "./formula";
import type { ResolvedShape } from "./resolve-shape";
import { placeOf, type ShapeValues } from "./shape-values";

const dimensionsContradict = defineRefusal(
  "dimensions-contradict",
  "value",
  "the dimensions contradict each other: {formula} comes out as {length}, since {takes} takes away more than {gives} give; correct one of them",
);
const lengthBeyondReason = defineRefusal(
  "length-beyond-reason",
  "value",
  "{dims} give no length that a bar can have: correct the dimensions",
);

/** mm: below float noise, and beyond any coil */
const LEAST_LENGTH = 1e-6;
const MOST_LENGTH = 1e9;

/** True for a length that a bar can have: above nought, and no slip of the keyboard. */
export function isLengthOfBar(length: number): boolean {
  return length > LEAST_LENGTH && length < MOST_LENGTH;
}

/** Why a printed formula gives no length above nought: which dimensions take away, and which give. */
export function contradictingDims(
  shape: ResolvedShape,
  printed: Formula,
  values: ShapeValues,
  length: number,
): Refusal {
  const { standard, definition } = shape;
  const letters = definition?.dims ?? [];
  const gives: string[] = [];
  const takes: string[] = [];
  const all: string[] = [];
  for (const letter of letters) {
    const place = placeOf(letter);
    const value = place === undefined ? undefined : values[place];
    if (place === undefined || value === undefined || Number.isNaN(value)) continue;
    const more = values.slice();
    more[place] = value + 1;
    const named = `${letter} ${printLength(value, standard.unit)}`;
    all.push(named);
    if (printed.evaluate(more) < printed.evaluate(values)) takes.push(named);
    else if (printed.evaluate(more) > printed.evaluate(values)) gives.push(named);
  }
  if (!(length < MOST_LENGTH)) return lengthBeyondReason({ dims: all.join(", ") });
  return dimensionsContradict({
    formula: printed.text,
    length: printLength(length, standard.unit),
    takes: takes.length === 0 ? "its bends" : takes.join(" and "),
    gives: gives.join(" and "),
  });
}

/** A length by geometry that is nought or no number. */
export function noLengthOfBar(length: number, unit: LengthUnit): Refusal {
  return lengthBeyondReason({ dims: `legs and bends (${printLength(length, unit)})` });
}
