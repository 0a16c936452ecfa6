import type { Standard } from "../standards/port";
import { exactProduct } from "../units/exact-product";
import { isRefusal } from "../units/refusal";
import type { SizePlan } from "./plan-by-size";

/** Stock bars of one size and length that a plan buys. */
export interface StockToBuy {
  readonly size: string;
  /** null where the size has one grade only */
  readonly grade: string | null;
  /** mm */
  readonly length: number;
  readonly bars: number;
  /** by the standard's mass per metre; null where it holds no such bar */
  readonly kilograms: number | null;
  /** the plan of this size is proven to buy the least */
  readonly provenLeast: boolean;
}

/** What the plans buy, size by size in their order, longest stock first. Remnants on hand are not bought. */
export function stockToBuy(plans: readonly SizePlan[], standard: Standard): StockToBuy[] {
  return plans.flatMap(({ size, grade, plan }) => {
    const reading = standard.readSize(size);
    const bar = isRefusal(reading) ? null : reading.bar;
    const bars = new Map<number, number>();
    for (const { stock, remnant, times } of plan.patterns)
      if (!remnant) bars.set(stock, (bars.get(stock) ?? 0) + times);
    return [...bars]
      .sort(([one], [other]) => other - one)
      .map(([length, count]) => ({
        size,
        grade,
        length,
        bars: count,
        kilograms: bar === null ? null : exactProduct(bar.massPerMetre, (length * count) / MM_PER_METRE),
        provenLeast: plan.provenLeast,
      }));
  });
}

const MM_PER_METRE = 1000;
