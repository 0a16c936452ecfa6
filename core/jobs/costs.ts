import { type Priced, priceBars } from "../estimating/price-bars";
import type { Rates } from "../estimating/rates";
import { readRates } from "../estimating/read-rates";
import type { Shop } from "../shop/shop";
import type { Standard } from "../standards/port";
import { inOrderOfPours } from "../totals/in-order-of-pours";
import { groupName } from "../totals/named-groups";
import type { ReckonedTonnage } from "../totals/reckon-tonnage";
import { type JobBar, jobBars } from "./many/job-bar";
import type { ReadBook } from "./read-book";

/** What bars come to by the yard's own rates, apart from their net tonnes. */
export interface Costs {
  readonly priced: Priced;
  /** some hours go by the number of bends */
  readonly isByBends: boolean;
  /** a sentence each: what is not in hours and cost */
  readonly notes: readonly string[];
}

interface OfShop {
  readonly shop: Pick<Shop, "rates">;
}

/** The rates that a Shop sheet holds; null where it has no table of them, or one that nobody has filled. */
export function ratesOf({ shop }: OfShop, standard: Standard): Rates | null {
  const read = shop.rates === null ? null : readRates(shop.rates.block, standard);
  return read === null || read.rates.length + read.problems.length === 0 ? null : read;
}

/** Hours and cost of a book by pour, or whatever its tonnes go by; null without rates, and while totals are held. */
export function costsOf(
  { schedules, standard, workshop }: Pick<ReadBook, "schedules" | "standard"> & { readonly workshop: OfShop },
  { groupedBy, held }: Pick<ReckonedTonnage, "groupedBy" | "held">,
): Costs | null {
  const rates = ratesOf(workshop, standard);
  if (rates === null || held !== null) return null;
  const bars = schedules.flatMap((schedule) => jobBars(schedule, standard));
  const priced = priceBars(
    bars.flatMap((bar) => {
      const group = { pour: bar.pour, member: bar.member, sheet: bar.sheet }[groupedBy]?.trim() ?? "";
      return toPrice(bar, groupName(group, groupedBy)) ?? [];
    }),
    rates,
  );
  const isByBends = rates.rates.some(({ bendHours }) => bendHours !== null);
  const pours = inOrderOfPours(priced.pours, groupedBy);
  return { priced: { ...priced, pours }, isByBends, notes: costNotes(priced, rates) };
}

/** A bar as it is priced; null for one that is in no total. */
export function toPrice(bar: JobBar, pour: string) {
  const { kg, notInTotal, diameter, bends, count } = bar;
  if (kg === null || notInTotal !== null) return null;
  return { pour, diameter, mass: kg, bends: bends === null || count === null ? null : bends * count };
}

/** What hours and cost leave out. */
export function costNotes({ total }: Priced, { problems }: Rates): string[] {
  return [
    ...problems.map(
      ({ typed, wanted }) => `rates: "${typed}" is not read and prices nothing: give ${wanted}`,
    ),
    ...(total.unpriced > 0
      ? [`${total.unpriced.toFixed(1)} kg have no rate for their size: in no cost and no hours`]
      : []),
    ...(total.lacksBends ? ["bends of some bars are not known: hours for bends leave them out"] : []),
  ];
}

/** The same as plain data, in the shape that scripts rely on. */
export function costReport({ pours, total }: Priced) {
  const plain = ({ waste, hours, cost, unpriced }: Priced["total"]) => ({ waste, hours, cost, unpriced });
  return { pours: pours.map((each) => ({ pour: each.pour, ...plain(each) })), total: plain(total) };
}
