import { Decimal } from "decimal.js";
import { KG_PER_UNIT } from "../units/unit-table";
import { type Rate, type Rates, rateOf } from "./rates";

/** Bars to be priced: a row of a schedule. */
export interface PricedBars {
  readonly pour: string;
  /** mm, nominal; null where the size is not known */
  readonly diameter: number | null;
  /** kg, net */
  readonly mass: number;
  /** bends of all its bars; null where they are not known */
  readonly bends: number | null;
}

/** What a pour, or all of them, comes to by the yard's own rates. */
export interface PricedPour {
  readonly pour: string;
  /** t, as the tonnage tells it: waste is never in it */
  readonly net: number;
  /** t that is ordered beside the net tonnes */
  readonly waste: number;
  /** null where no rate tells hours */
  readonly hours: number | null;
  /** null where no rate tells money */
  readonly cost: number | null;
  /** kg of bars that no rate fits, or whose size is not known: in `net`, in nothing else */
  readonly unpriced: number;
  /** bends were not known, so the hours that are told by bends are not in `hours` */
  readonly lacksBends: boolean;
}

const HUNDRED = 100;

/**
 * Cost and hours by pour in the order they first come, and of all. Supply is paid on what is ordered, net
 * and waste; cutting, bending and fixing on the net tonnes (common practice). Sums are exact decimals.
 */
export function priceBars(bars: readonly PricedBars[], rates: Rates): Priced {
  const sums = new PriceSums(rates);
  for (const row of bars) sums.add(row);
  return sums.result();
}

export interface Priced {
  readonly pours: readonly PricedPour[];
  readonly total: PricedPour;
}

/** The same, row by row, where not all rows are held at once. */
export class PriceSums {
  private readonly pours = new Map<string, PourSum>();
  private readonly total = new PourSum("total");

  constructor(private readonly rates: Rates) {}

  add(row: PricedBars): void {
    const sum = this.pours.get(row.pour) ?? new PourSum(row.pour);
    this.pours.set(row.pour, sum);
    const rate = row.diameter === null ? null : rateOf(this.rates, row.diameter);
    sum.add(row, rate);
    this.total.add(row, rate);
  }

  result(): Priced {
    return { pours: [...this.pours.values()].map((sum) => sum.result()), total: this.total.result() };
  }
}

class PourSum {
  private net = new Decimal(0);
  private waste = new Decimal(0);
  private hours: Decimal | null = null;
  private cost: Decimal | null = null;
  private unpriced = new Decimal(0);
  private lacksBends = false;

  constructor(private readonly pour: string) {}

  add({ mass, bends }: PricedBars, rate: Rate | null): void {
    const tonnes = new Decimal(mass).div(KG_PER_UNIT.t);
    this.net = this.net.plus(tonnes);
    if (rate === null) {
      this.unpriced = this.unpriced.plus(mass);
      return;
    }
    const waste = tonnes.times(rate.waste ?? 0).div(HUNDRED);
    this.waste = this.waste.plus(waste);
    if (rate.supply !== null) this.pay(tonnes.plus(waste).times(rate.supply));
    for (const work of [rate.cutting, rate.bending, rate.fixing])
      if (work !== null) this.pay(tonnes.times(work));
    if (rate.hours !== null) this.take(tonnes.times(rate.hours));
    if (rate.bendHours === null) return;
    if (bends === null) this.lacksBends = true;
    else this.take(new Decimal(bends).div(HUNDRED).times(rate.bendHours));
  }

  result(): PricedPour {
    return {
      pour: this.pour,
      net: this.net.toNumber(),
      waste: this.waste.toNumber(),
      hours: this.hours?.toNumber() ?? null,
      cost: this.cost?.toNumber() ?? null,
      unpriced: this.unpriced.toNumber(),
      lacksBends: this.lacksBends,
    };
  }

  private pay(money: Decimal): void {
    this.cost = (this.cost ?? new Decimal(0)).plus(money);
  }

  private take(hours: Decimal): void {
    this.hours = (this.hours ?? new Decimal(0)).plus(hours);
  }
}
