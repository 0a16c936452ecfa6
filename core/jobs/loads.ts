import { plainWords } from "../shop/find-sections";
import type { Shop } from "../shop/shop";
import type { Bundles } from "../totals/bundles";
import { type Loads, type LorryLimits, makeLoads } from "../totals/loads";
import { defineRefusal, type Refusal } from "../units/refusal";

const limitUnknown = defineRefusal(
  "lorry-limit-unknown",
  "not-held",
  "no lorry limit is known, so no load can be made up: write Lorry load kg under the limits of the Shop sheet",
);
const noLimit = defineRefusal("lorry-limit-bad", "value", "{limit} kg is no lorry load: give one over 0");

export interface LoadsJob {
  readonly loads: Loads;
  readonly notes: readonly string[];
}

/** Bundles on lorries by day, under the given limits or those of the Shop sheet; refuses where none is known. */
export function loadsOf(
  { bundles }: Bundles,
  shop: Shop,
  given: Partial<LorryLimits> = {},
): LoadsJob | Refusal {
  const mass = given.mass ?? shop.limits.lorryLoad;
  const length = given.length ?? shop.limits.lorryLength;
  if (mass === null) return limitUnknown({});
  if (!(mass > 0) || !Number.isFinite(mass)) return noLimit({ limit: mass });
  const days = new Map(shop.pours.map(({ pour, day }) => [plainWords(pour), day]));
  const loads = makeLoads(bundles, { mass, length }, (pour) => days.get(plainWords(pour)) ?? null);
  const pours = new Set(bundles.map(({ item }) => plainWords(item.pour)));
  const unmet = shop.pours.filter(({ pour }) => !pours.has(plainWords(pour)));
  const notes = [
    ...(length === null ? ["the lorry's length is not written down: no bar was looked at for it"] : []),
    ...(unmet.length === 0
      ? []
      : [`days of pours that no bar is for: ${unmet.map(({ pour }) => pour).join(", ")}`]),
  ];
  return { loads, notes };
}
