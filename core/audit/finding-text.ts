import type { LengthUnit } from "../units/length-unit";
import { printLength } from "../units/print-length";
import { printMass } from "../units/print-mass";
import { fillPlaces } from "../units/refusal";
import { shorten } from "../units/shorten";
import type { MessageValue, MessageValues } from "./rule";

/** A message's sentence: its template with every value in the unit of the standard's users. */
export function findingText(template: string, values: MessageValues | undefined, unit: LengthUnit): string {
  if (values === undefined) return template;
  return fillPlaces(template, (name) => {
    const value = values[name];
    return value === undefined ? null : valueText(value, unit);
  });
}

/** Characters of a value that a sentence holds: a cell may hold 32,767. */
const MOST_CHARACTERS = 400;

/** parts of a millimetre: nobody types smaller ones, and float noise is smaller */
const TYPED_PARTS = 1_000_000;

function valueText(value: MessageValue, unit: LengthUnit): string {
  if (typeof value === "string") return shorten(value, MOST_CHARACTERS);
  if (typeof value === "number") return String(rounded(value, 1000));
  if ("kg" in value) return printMass(value.kg, unit);
  if (unit !== "mm") return printLength(value.mm, unit);
  if (value.typed) return `${rounded(value.mm, TYPED_PARTS)} mm`;
  return printLength(rounded(value.mm, 10), unit);
}

/** To one part in `parts` of a unit; a number too large to be multiplied has none. */
function rounded(value: number, parts: number): number {
  const near = Math.round(value * parts) / parts;
  return Number.isFinite(near) ? near : value;
}
