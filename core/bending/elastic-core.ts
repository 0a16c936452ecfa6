import { ELASTIC_MODULUS } from "./springback.data";

/** A round bar round a former. */
export interface BarOnFormer {
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly former: number;
  /** MPa */
  readonly yield: number;
}

/**
 * The elastic core's share of the bar's half depth, 0 to 1 and more: the fibre that just yields stands
 * at that share of the radius. 1 and more is a bar that stays elastic and springs back whole.
 *
 * Plane sections, centre-line radius (former + diameter) / 2 (derived).
 */
export function elasticCoreShare(bar: BarOnFormer): number {
  return coreShareAtRadius((bar.former + bar.diameter) / 2, bar.diameter, bar.yield);
}

/** The same from the centre-line radius, mm. */
export function coreShareAtRadius(radius: number, diameter: number, yieldStress: number): number {
  return (2 * yieldStress * radius) / (ELASTIC_MODULUS.value * diameter);
}

/**
 * The share of curvature, and of bend angle, that a bar keeps when it is let go: 1 keeps all, 0 is
 * straight again. Elastic-perfectly plastic round section; `hardening` is the tangent modulus over the
 * elastic one (linear hardening). Closed form (derived).
 *
 * @example
 * curvatureKept(elasticCoreShare({ diameter: 16, former: 64, yield: 500 })); // 0.9788
 */
export function curvatureKept(core: number, hardening = 0): number {
  if (core >= 1) return 0;
  const root = Math.sqrt(1 - core * core);
  const lost = (2 / Math.PI) * (Math.asin(core) + (core / 3) * (5 - 2 * core * core) * root);
  return (1 - hardening) * (1 - lost);
}
