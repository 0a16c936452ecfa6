import type { Bundle } from "./bundles";

/** What a lorry may carry; null is not known. */
export interface LorryLimits {
  /** kg */
  readonly mass: number;
  /** mm, the longest bar */
  readonly length: number | null;
}

/** One lorry: its bundles as they are put on, the last to be fixed first. */
export interface Load {
  readonly number: number;
  /** as "2030-05-31"; null where the pours of the load have no day */
  readonly day: string | null;
  readonly loading: readonly Bundle[];
  /** kg */
  readonly mass: number;
}

export interface Loads {
  readonly loads: readonly Load[];
  /** bundles that no such lorry may carry */
  readonly left: readonly { readonly bundle: Bundle; readonly why: "too heavy" | "too long" }[];
}

/**
 * Bundles in the order of fixing shared out on lorries: by the day of their pours, those without a day last,
 * and never two days on one lorry; each is filled in the order of fixing until the next bundle would be above
 * its limit, and loaded in reverse, so that what is fixed first lies on top.
 */
export function makeLoads(
  bundles: readonly Bundle[],
  limits: LorryLimits,
  dayOf: (pour: string | null) => string | null,
): Loads {
  const left: { bundle: Bundle; why: "too heavy" | "too long" }[] = [];
  const days = new Map<string | null, Bundle[]>();
  for (const bundle of bundles) {
    const why = whyLeft(bundle, limits);
    if (why !== null) {
      left.push({ bundle, why });
      continue;
    }
    const day = dayOf(bundle.item.pour);
    const known = days.get(day);
    if (known === undefined) days.set(day, [bundle]);
    else known.push(bundle);
  }
  const inOrder = [...days].sort(([a], [b]) => (a ?? LAST_DAY).localeCompare(b ?? LAST_DAY));
  const lorries = inOrder.flatMap(([day, ofDay]) => lorriesOf(ofDay, limits.mass).map((on) => ({ day, on })));
  const loads = lorries.map(({ day, on }, at) => ({
    number: at + 1,
    day,
    loading: on.slice().reverse(),
    mass: massOf(on),
  }));
  return { loads, left };
}

/** later than any day that is written */
const LAST_DAY = "9999-12-32";

function whyLeft({ mass, item }: Bundle, limits: LorryLimits): "too heavy" | "too long" | null {
  if (mass > limits.mass + GRAIN) return "too heavy";
  return limits.length !== null && (item.reach ?? item.length) > limits.length ? "too long" : null;
}

function lorriesOf(bundles: readonly Bundle[], limit: number): Bundle[][] {
  const lorries: Bundle[][] = [];
  for (const bundle of bundles) {
    const last = lorries.at(-1);
    if (last !== undefined && massOf([...last, bundle]) <= limit + GRAIN) last.push(bundle);
    else lorries.push([bundle]);
  }
  return lorries;
}

const massOf = (bundles: readonly Bundle[]): number => bundles.reduce((sum, { mass }) => sum + mass, 0);

/** kg: noise of sums */
const GRAIN = 1e-6;
