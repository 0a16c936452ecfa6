import type { Cited } from "../standards/citation";
import type { Standard, Use } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";

/** Least former of a standard, mm. The standard remembers its answers. */
export function leastFormer(
  standard: Standard,
  diameter: number,
  use: Use,
  grade?: string,
  coating?: string,
): Cited<number> | Refusal {
  if (grade === undefined && coating === undefined) return standard.former({ diameter, use });
  return standard.former({
    diameter,
    use,
    ...(coating === undefined ? {} : { coating }),
    ...(grade === undefined ? {} : { grade }),
  });
}

/** Least end leg as an outside dimension, mm; NaN where the standard holds none. */
export function leastEndLeg(standard: Standard, diameter: number, use: Use, grade?: string): number {
  const leg = standard.endLeg(diameter, use, grade);
  return isRefusal(leg) ? NaN : leg.value.outside;
}
