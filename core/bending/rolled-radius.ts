import { defineRefusal, type Refusal } from "../units/refusal";
import { coreShareAtRadius, curvatureKept } from "./elastic-core";
import { ELASTIC_MODULUS } from "./springback.data";

const radiusNotPositive = defineRefusal(
  "radius-not-positive",
  "value",
  "a {diameter} mm bar cannot be curved to a radius of {radius} mm: both must be over 0",
);

export interface RolledRadius {
  /** mm, centre line while loaded */
  readonly loaded: number;
  /** the elastic core's share at that radius: near 1 a small change of yield moves the result far */
  readonly core: number;
  /** mm: a bar curved no tighter than this comes out straight */
  readonly elasticLimit: number;
}

/**
 * The centre-line radius to roll a bar to so that it keeps `released` mm after springback, by bisection;
 * the answer is unique. A guess for the first trial piece: a tenth more yield moves the released radius
 * by tens of per cent, so log radii of trial pieces (derived).
 *
 * @example
 * rolledRadius({ released: 2000, diameter: 16, yield: 500 }); // loaded 995
 */
export function rolledRadius(bar: {
  released: number;
  diameter: number;
  yield: number;
}): RolledRadius | Refusal {
  if (!(bar.released > 0) || !(bar.diameter > 0)) {
    return radiusNotPositive({ radius: bar.released, diameter: bar.diameter });
  }
  const elasticLimit = (ELASTIC_MODULUS.value * bar.diameter) / (2 * bar.yield);
  const curvatureAfter = (radius: number) =>
    curvatureKept(coreShareAtRadius(radius, bar.diameter, bar.yield)) / radius;
  let tight = 0;
  let slack = Math.min(bar.released, elasticLimit);
  for (let round = 0; round < 80; round += 1) {
    const middle = (tight + slack) / 2;
    if (curvatureAfter(middle) > 1 / bar.released) tight = middle;
    else slack = middle;
  }
  const loaded = (tight + slack) / 2;
  return { loaded, core: coreShareAtRadius(loaded, bar.diameter, bar.yield), elasticLimit };
}
