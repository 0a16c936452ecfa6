import type { LengthUnit } from "./length-unit";
import { printLength } from "./print-length";
import { shorten } from "./shorten";

/** What a refusal is shown as in a cell: a bad value, or a thing this standard does not hold. */
export type RefusalKind = "value" | "not-held";

/** The words of a refusal are a template; `{name}` stands for one of its values. */
export interface RefusalDefinition {
  readonly code: string;
  readonly kind: RefusalKind;
  readonly text: string;
}

export type RefusalValues = Readonly<Record<string, string | number>>;

/** The names of the `{places}` of a template: what the words of a code need is read from the words themselves. */
export type PlacesOf<Text extends string> = string extends Text
  ? string
  : Text extends `${string}{${infer Name}}${infer Rest}`
    ? (Name extends `${string}${NotInName}${string}` ? never : Name) | PlacesOf<Rest>
    : never;

/** `{12000,9000}` in a template is a worksheet's list and no place */
type NotInName = "," | '"' | " " | ";";

/**
 * The answer of a core function that cannot answer: a code and its values.
 * Words are made only where somebody reads them, by `refusalText`.
 */
export class Refusal {
  constructor(
    readonly definition: RefusalDefinition,
    readonly values: RefusalValues,
  ) {}

  get kind(): RefusalKind {
    return this.definition.kind;
  }

  get code(): string {
    return this.definition.code;
  }
}

/**
 * Declares one refusal and gives the function that makes it, which asks for a value of each of its places.
 *
 * @example
 * const sizeNotHeld = defineRefusal("size-not-held", "not-held", "{size} is no bar of {standard}: it holds {held}");
 * return sizeNotHeld({ size, standard, held });
 */
export function defineRefusal<const Text extends string>(
  code: string,
  kind: RefusalKind,
  text: Text,
): RefusalOf<PlacesOf<Text>> {
  const definition: RefusalDefinition = { code, kind, text };
  return Object.assign(
    (values: Readonly<Record<PlacesOf<Text>, string | number>>) => new Refusal(definition, values),
    {
      code,
    },
  );
}

/** A refusal whose values are known by name. */
export type RefusalWith<Name extends string> = Refusal & {
  readonly values: Readonly<Record<Name, string | number>>;
};

/** Makes the refusals of one code. */
export interface RefusalOf<Name extends string> {
  (values: Readonly<Record<Name, string | number>>): Refusal;
  readonly code: string;
}

/** True of a refusal of that code: its values are then known by name. */
export function isRefusalOf<Name extends string>(
  answer: unknown,
  of: RefusalOf<Name>,
): answer is RefusalWith<Name> {
  return isRefusal(answer) && answer.code === of.code;
}

export function isRefusal(answer: unknown): answer is Refusal {
  return answer instanceof Refusal;
}

/**
 * The sentence: names the value, the limit and the remedy. A value of many characters is cut short.
 * `{length} mm` in a template is a length: where the reader's unit is the inch it is told in inches.
 */
export function refusalText(refusal: Refusal, unit: LengthUnit = "mm"): string {
  const values = Object.entries(refusal.values).map(([name, value]) => [
    name,
    shortened(value, name === "typed" ? MOST_TYPED : MOST_CHARACTERS),
  ]);
  const { text } = refusal.definition;
  const known: RefusalValues = Object.fromEntries(values);
  return unit === "mm" ? fillTemplate(text, known) : fillTemplate(withLengthsIn(unit, text, known), known);
}

function withLengthsIn(unit: LengthUnit, text: string, values: RefusalValues): string {
  return text.replace(/\{(\w+)\} mm\b/g, (place, name: string) => {
    const lengths = String(values[name] ?? "").split(", ");
    const isList = lengths.every((length) => length !== "" && Number.isFinite(Number(length)));
    return isList ? lengths.map((length) => printLength(Number(length), unit)).join(", ") : place;
  });
}

/** Characters of a value that a sentence holds: longer than any list of what is held. */
const MOST_CHARACTERS = 400;
/** Characters of what somebody typed. */
const MOST_TYPED = 80;

function shortened(value: string | number, most: number): string | number {
  return typeof value === "string" ? shorten(value, most) : value;
}

/** Puts values into `{name}` places; a place without a value stays visible. */
export function fillTemplate(text: string, values: RefusalValues): string {
  return fillPlaces(text, (name) => (name in values ? String(values[name]) : null));
}

/** A template's text and the names of its places in turn: texts at even places, names at odd ones. */
const parted = new Map<string, readonly string[]>();

/** `fillTemplate` with each value asked for by its name; null leaves the place visible. */
export function fillPlaces(text: string, textOf: (name: string) => string | null): string {
  let parts = parted.get(text);
  if (parts === undefined) {
    parts = text.split(/\{(\w+)\}/);
    parted.set(text, parts);
  }
  let filled = parts[0] as string;
  for (let at = 1; at < parts.length; at += 2) {
    const name = parts[at] as string;
    filled += (textOf(name) ?? `{${name}}`) + (parts[at + 1] as string);
  }
  return filled;
}
