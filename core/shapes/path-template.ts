import { DEGREE } from "../geometry/degree";
import type { ShapeDefinition } from "../standards/port";
import { type Formula, formula } from "./formula";
import type { BarPath, Leg, Turn } from "./path";
import { placeOf, type ShapeValues } from "./shape-values";

export interface TemplateLeg {
  readonly place: number;
  readonly letter: string;
  /** the dim that stands in where the first is blank */
  readonly otherPlace: number;
  readonly otherLetter: string;
  readonly free: boolean;
  /** the end of a hook or a bend that is given by what it adds to the length */
  readonly end: TemplateEnd | null;
}

export interface TemplateEnd {
  /** place of h or n, or of the dim that says what the hook adds */
  readonly added: number;
  /** radians */
  readonly turn: number;
}

export interface TemplateTurn {
  readonly sign: 1 | -1;
  /** degrees, or a formula over the named angles */
  readonly angle: number | Formula;
  readonly radius: Formula | null;
}

export type PathTemplate =
  | {
      readonly kind: "planar";
      readonly legs: readonly TemplateLeg[];
      readonly turns: readonly TemplateTurn[];
      readonly inOnePlane: boolean;
    }
  | { readonly kind: "arc"; readonly length: number; readonly radius: number }
  | { readonly kind: "circle"; readonly outsideDiameter: number; readonly lap: number }
  | {
      readonly kind: "helix";
      readonly outsideDiameter: number;
      readonly pitch: number;
      readonly turns: number;
    };

const LEG = /^(\()?(?:([A-HJKhn])(?:\|([A-HJK]))?|h([A-HJK]))(\))?$/;
const TURN = /^([+-])(\d+|[tu]|\([^)]*\))(?:r(.+))?$/;

/**
 * A shape's path as data, ready to take dims. Legs are letters, the free one in brackets, "D|C" where
 * C stands in for a blank D; turns are signed degrees or a named angle, with an inside radius after r:
 * "A +90 B +180r(C/2-d) (D)", "A +t B +(90 - t) (C)". An end leg h or n is as long as the hook or the bend
 * that the formula allows for, and hA is the end of a hook that adds A to the length: "hA +135 B +90 G".
 * Curves say what they are: "arc A radius R",
 * "circle A lap B", "helix A pitch B turns C". Throws for a text that is none of this: it is data of ours.
 */
export function pathTemplate(text: string, kind: ShapeDefinition["kind"]): PathTemplate {
  const curve = curveTemplate(text);
  if (curve !== null) return curve;
  const parts = text.match(/(?:[^\s(]|\([^)]*\))+/g) ?? [];
  if (parts.join(" ") !== text) throw new Error(`the path "${text}" has a bracket that does not close`);
  const legs: TemplateLeg[] = [];
  const turns: TemplateTurn[] = [];
  parts.forEach((part, index) => {
    if (index % 2 === 0) legs.push(templateLeg(part, text));
    else turns.push(templateTurn(part, text));
  });
  if (legs.length !== turns.length + 1) throw new Error(`the path "${text}" does not end with a leg`);
  const ended = legs.map((leg, index) => (isHookDim(leg) ? withEnd(leg, turns[index] ?? turns.at(-1)) : leg));
  return { kind: "planar", legs: ended, turns, inOnePlane: kind !== "isometric" };
}

/** The path of a template with a shape's values; angles are solved already. */
export function pathOf(template: PathTemplate, values: ShapeValues): BarPath {
  switch (template.kind) {
    case "planar": {
      const legs = template.legs.map((leg) => legOf(leg, values));
      const turns = template.turns.map((turn) => turnOf(turn, values));
      return { kind: "planar", legs, turns, inOnePlane: template.inOnePlane };
    }
    case "arc":
      return { kind: "arc", length: values[template.length]!, radius: values[template.radius]! };
    case "circle":
      return {
        kind: "circle",
        outsideDiameter: values[template.outsideDiameter]!,
        lap: values[template.lap]!,
      };
    case "helix":
      return {
        kind: "helix",
        outsideDiameter: values[template.outsideDiameter]!,
        pitch: values[template.pitch]!,
        turns: values[template.turns]!,
      };
  }
}

function legOf(leg: TemplateLeg, values: ShapeValues): Leg {
  const length = templateLegLength(leg, values);
  if (leg.end !== null) return { length, free: false, letter: null };
  const isFirst = !Number.isNaN(values[leg.place]!);
  return { length, free: leg.free, letter: isFirst ? leg.letter : leg.otherLetter };
}

function turnOf(turn: TemplateTurn, values: ShapeValues): Turn {
  return { angle: turn.sign * templateAngle(turn, values), radius: templateRadius(turn, values) };
}

/** mm, outside. */
export function templateLegLength(leg: TemplateLeg, values: ShapeValues): number {
  if (leg.end !== null) return endLength(leg.end, values);
  const length = values[leg.place]!;
  return Number.isNaN(length) ? values[leg.otherPlace]! : length;
}

const r = placeOf("r")!;
const d = placeOf("d")!;
const ALLOWANCES: ReadonlyMap<string, TemplateEnd> = new Map([
  ["h", { added: placeOf("h")!, turn: Math.PI }],
  ["n", { added: placeOf("n")!, turn: Math.PI / 2 }],
]);

/** What it adds leaves of straight beyond the bend, overall to the bend's outside. */
function endLength({ added, turn }: TemplateEnd, values: ShapeValues): number {
  const radius = values[r]!;
  const diameter = values[d]!;
  const arc = turn * (radius + diameter / 2);
  return values[added]! + 2 * (radius + diameter) - arc;
}

function isHookDim({ end }: TemplateLeg): boolean {
  return end !== null && Number.isNaN(end.turn);
}

/** The hook's turn is that of the bend beside it. */
function withEnd(leg: TemplateLeg, turn: TemplateTurn | undefined): TemplateLeg {
  if (typeof turn?.angle !== "number")
    throw new Error(`h${leg.letter} needs a bend of so many degrees beside it`);
  return { ...leg, end: { added: leg.place, turn: turn.angle * DEGREE } };
}

/** Degrees, unsigned. */
export function templateAngle({ angle }: TemplateTurn, values: ShapeValues): number {
  return typeof angle === "number" ? angle : angle.evaluate(values);
}

/** mm, inside; null takes half the former in force. */
export function templateRadius({ radius }: TemplateTurn, values: ShapeValues): number | null {
  return radius === null ? null : radius.evaluate(values);
}

function templateLeg(part: string, text: string): TemplateLeg {
  const [, open, plain, other, hook, close] = LEG.exec(part) ?? [];
  const letter = plain ?? hook;
  if (letter === undefined || (open === undefined) !== (close === undefined)) {
    throw new Error(`"${part}" is no leg of the path "${text}"`);
  }
  const otherLetter = other ?? letter;
  const place = placeOf(letter)!;
  const end = hook === undefined ? (ALLOWANCES.get(letter) ?? null) : { added: place, turn: NaN };
  return { place, letter, otherPlace: placeOf(otherLetter)!, otherLetter, free: open !== undefined, end };
}

function templateTurn(part: string, text: string): TemplateTurn {
  const [, sign, angle, radius] = TURN.exec(part) ?? [];
  if (angle === undefined) throw new Error(`"${part}" is no turn of the path "${text}"`);
  return {
    sign: sign === "-" ? -1 : 1,
    angle: /^\d+$/.test(angle) ? Number(angle) : formula(angle),
    radius: radius === undefined ? null : formula(radius),
  };
}

function curveTemplate(text: string): PathTemplate | null {
  const [word, ...rest] = text.split(" ");
  const places = rest.filter((_, index) => index % 2 === 0).map((letter) => placeOf(letter) ?? -1);
  const shape = [word, ...rest.filter((_, index) => index % 2 === 1)].join(" ");
  const [first = -1, second = -1, third = -1] = places;
  if (shape === "arc radius") return { kind: "arc", length: first, radius: second };
  if (shape === "circle lap") return { kind: "circle", outsideDiameter: first, lap: second };
  if (shape === "helix pitch turns") {
    return { kind: "helix", outsideDiameter: first, pitch: second, turns: third };
  }
  return null;
}
