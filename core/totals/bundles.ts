/** Bars of one mark, ready to be tied. */
export interface BundleItem {
  /** the reference of its schedule, and the revision that it is of */
  readonly schedule?: string | null;
  readonly revision?: string | null;
  readonly pour: string | null;
  readonly member: string | null;
  readonly mark: string | null;
  readonly size: string;
  readonly shape: string | null;
  readonly count: number;
  /** mm, cut length */
  readonly length: number;
  /** mm of room that it takes on a lorry; the cut length where nothing else is said */
  readonly reach?: number;
  /** kg of one bar */
  readonly massEach: number;
  /** unsafe or unbendable findings of the bar that somebody said are not to be told, with reason, name and date */
  readonly waived?: readonly string[];
  /** why the bar is not to be made until somebody clears it */
  readonly held?: readonly string[];
  /** what is to be asked before the bar is made: perhaps unsafe or unbendable */
  readonly asked?: readonly string[];
  /** what the schedule says of its bars beside the figures, as typed */
  readonly remark?: string | null;
  /** mill certificates that its bars may be of; a blank one is said as not written down */
  readonly heats?: readonly string[];
}

/** One tied bundle and its label: `number` of `of` for its mark. */
export interface Bundle {
  readonly item: BundleItem;
  readonly count: number;
  readonly mass: number;
  readonly number: number;
  readonly of: number;
  /** One bar alone is above the lifting limit. */
  readonly overLimit: boolean;
}

export interface Bundles {
  /** pour by pour and member by member in the schedule's order, the order of fixing */
  readonly bundles: readonly Bundle[];
  /** what goes on the lorry first: the last to be fixed */
  readonly loading: readonly Bundle[];
}

/**
 * Bundles under a lifting limit (kg). A bundle never mixes marks, so that one label tells all that is
 * in it; bars of a mark are shared out as evenly as whole bars allow. A bar above the limit is its own
 * bundle and says so.
 */
export function makeBundles(items: readonly BundleItem[], liftingLimit: number): Bundles {
  const pours = new Map<string | null, Map<string | null, BundleItem[]>>();
  for (const item of items) {
    if (!(item.count > 0)) continue;
    const members = pours.get(item.pour) ?? new Map<string | null, BundleItem[]>();
    pours.set(item.pour, members);
    const known = members.get(item.member);
    if (known === undefined) members.set(item.member, [item]);
    else known.push(item);
  }
  const bundles: Bundle[] = [];
  for (const members of pours.values())
    for (const ofMember of members.values())
      for (const item of ofMember) for (const bundle of bundlesOf(item, liftingLimit)) bundles.push(bundle);
  return { bundles, loading: bundles.slice().reverse() };
}

function bundlesOf(item: BundleItem, liftingLimit: number): Bundle[] {
  const overLimit = item.massEach > liftingLimit;
  const most = overLimit ? 1 : Math.max(1, wholeBars(liftingLimit, item.massEach));
  const of = Math.ceil(item.count / most);
  const least = Math.floor(item.count / of);
  const withOneMore = item.count - least * of;
  return Array.from({ length: of }, (_, index) => {
    const count = least + (index < withOneMore ? 1 : 0);
    return { item, count, mass: count * item.massEach, number: index + 1, of, overLimit };
  });
}

/** Bars that the limit lifts; a mass that fits to the gram is not lost to rounding. */
function wholeBars(limit: number, massEach: number): number {
  return massEach > 0 ? Math.floor(limit / massEach + GRAIN) : Number.MAX_SAFE_INTEGER;
}

const GRAIN = 1e-9;
