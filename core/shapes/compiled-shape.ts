import type { ShapeDefinition } from "../standards/port";
import { type BendAngle, bendAngle } from "./bend-angle";
import { type Formula, formula } from "./formula";
import { type PathTemplate, pathTemplate } from "./path-template";
import { type CompiledLimit, compileLimits } from "./shape-limit-text";
import { placeOf } from "./shape-values";

/** A coded shape whose texts are taken apart, once for each definition. */
export interface CompiledShape {
  readonly definition: ShapeDefinition;
  /** places of the dims by column, R not among them */
  readonly columns: readonly number[];
  /** by column: must be given */
  readonly needed: readonly boolean[];
  readonly takesRadius: boolean;
  readonly needsRadius: boolean;
  readonly angles: readonly BendAngle[];
  /** null where the shape is held as no path */
  readonly template: PathTemplate | null;
  readonly formula: Formula | null;
  readonly formulaWhen: { readonly limit: CompiledLimit; readonly formula: Formula } | null;
  readonly limits: readonly CompiledLimit[];
  /** limits that two dims are equal: the printed formula counts one of them twice */
  readonly equalities: readonly CompiledLimit[];
  /** some limit speaks of the least end leg, of main bars or of links */
  /** its formula or its course has an end that an allowance stands for */
  readonly needsAllowance: boolean;
  readonly limitsNeed: { readonly endLeg: boolean; readonly linkEnd: boolean };
}

const compiledShapes = new WeakMap<ShapeDefinition, CompiledShape>();

export function compiledShape(definition: ShapeDefinition): CompiledShape {
  const known = compiledShapes.get(definition);
  if (known !== undefined) return known;
  const made = compile(definition);
  compiledShapes.set(definition, made);
  return made;
}

function compile(definition: ShapeDefinition): CompiledShape {
  const letters = definition.dims.filter((letter) => letter !== "R");
  const optional = new Set(definition.optionalDims ?? []);
  const when = definition.formulaWhen;
  const limits = definition.limits.flatMap((limit) => compileLimits(limit.text, limit.cite));
  const template = definition.path === null ? null : pathTemplate(definition.path, definition.kind);
  const printed = definition.formula === null ? null : formula(definition.formula);
  const speaksOf = (symbol: string): boolean =>
    limits.some(({ bound }) => bound.places.includes(placeOf(symbol)!));
  return {
    definition,
    columns: letters.map((letter) => placeOf(letter)!),
    needed: letters.map((letter) => !optional.has(letter)),
    takesRadius: definition.dims.includes("R"),
    needsRadius: definition.dims.includes("R") && !optional.has("R"),
    angles: Object.entries(definition.angles ?? {}).map(([name, angle]) => bendAngle(name, angle)),
    template,
    formula: printed,
    formulaWhen:
      when === undefined ? null : { limit: compileLimits(when.limit)[0]!, formula: formula(when.formula) },
    limits,
    equalities: limits.filter(({ relation }) => relation === "="),
    needsAllowance:
      hasAllowance(printed) ||
      (template?.kind === "planar" &&
        template.legs.some(({ end }) => end !== null && ALLOWANCES.has(end.added))),
    limitsNeed: { endLeg: speaksOf("P"), linkEnd: speaksOf("P(links)") },
  };
}

const ALLOWANCES: ReadonlySet<number> = new Set([placeOf("h")!, placeOf("n")!]);

function hasAllowance(printed: Formula | null): boolean {
  return printed?.places.some((place) => ALLOWANCES.has(place)) === true;
}
