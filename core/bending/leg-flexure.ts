import { ELASTIC_MODULUS } from "./springback.data";

/**
 * Degrees that a bend opens because its legs were flexed between former, pin and back-rest, whatever
 * the angle: the moment falls evenly to nothing over each lever, at the fully plastic moment (derived).
 *
 * @example
 * legFlexure({ diameter: 16, yield: 500, levers: 200 }); // 2.0
 */
export function legFlexure(bar: { diameter: number; yield: number; levers: number }): number {
  const radians = ((64 / (18 * Math.PI)) * bar.yield * bar.levers) / (ELASTIC_MODULUS.value * bar.diameter);
  return (radians * 180) / Math.PI;
}
