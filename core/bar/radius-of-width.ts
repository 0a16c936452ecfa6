import { compiledShape } from "../shapes/compiled-shape";
import { templateRadius } from "../shapes/path-template";
import { placeOf } from "../shapes/shape-values";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { isRefusal } from "../units/refusal";
import type { BarFacts } from "./bar-facts";
import type { OfKind } from "./bar-kind";

/** A bend whose radius follows from a dimension, as that of a half circle from its width. */
interface RadiusOfWidth {
  readonly letter: (typeof DIMENSION_LETTERS)[number];
  /** mm, inside */
  readonly radius: number;
}

/** The tightest bend of a coded shape whose radius follows from a dimension; null where it has none with an inside. */
export function radiusOfWidth(facts: BarFacts): RadiusOfWidth | null {
  if (!facts.kind.ask(bendsByDimension, facts)) return null;
  const { shape, isPath } = facts;
  const template = shape?.compiled?.template;
  if (isPath || shape === null || template?.kind !== "planar") return null;
  let tightest: RadiusOfWidth | null = null;
  for (const turn of template.turns) {
    if (turn.radius === null) continue;
    const radius = templateRadius(turn, shape.values);
    const letter = DIMENSION_LETTERS.find((one) => turn.radius?.places.includes(placeOf(one) ?? -1));
    if (radius === null || letter === undefined || !(radius > 0)) continue;
    if (tightest === null || radius < tightest.radius) tightest = { letter, radius };
  }
  return tightest;
}

/** Most codes have no such bend, and need not be laid. */
function bendsByDimension({ definition }: OfKind): boolean {
  const template = definition === null ? null : compiledShape(definition).template;
  return template?.kind === "planar" && template.turns.some(({ radius }) => radius !== null);
}

/** mm: the least inside radius for a bar, as the standard's table prints it; null where it holds none. */
export function leastInsideRadius({ leastFormer, standard, diameter, use }: BarFacts): number | null {
  if (leastFormer === null) return null;
  const printed = standard.formulaRadius(diameter ?? 0, use);
  // a table may print r cut to whole millimetres: 87 for a former of 175
  return isRefusal(printed) ? leastFormer.value / 2 : Math.min(leastFormer.value / 2, printed.value);
}

/** A width that asks for a tighter bend than the bar takes; null where none does. */
export function tightWidth(facts: BarFacts): (RadiusOfWidth & { readonly least: number }) | null {
  const width = radiusOfWidth(facts);
  const least = width === null ? null : leastInsideRadius(facts);
  return least === null || width === null || width.radius >= least - CLOSE ? null : { ...width, least };
}

const CLOSE = 1e-6;
