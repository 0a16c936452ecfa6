import type { SizePlan } from "./plan-by-size";

/** True of pieces that are not to be made until somebody clears them. */
export type IsHeld = (size: string, mark: string) => boolean;

/** The plans without bars that give a piece on HOLD, and what of those would be left. */
export function withoutHeld(
  plans: readonly SizePlan[],
  isHeld: IsHeld,
): { readonly firm: readonly SizePlan[]; readonly notes: readonly string[] } {
  const left: string[] = [];
  const firm = plans.map((group): SizePlan => {
    const { size, plan, list } = group;
    const isFirm = list.map(
      ({ stops }) => !stops.some(({ marks }) => marks.some(({ mark }) => isHeld(size, mark))),
    );
    for (const [at, { bars, stock, offcut }] of list.entries())
      if (isFirm[at] === false)
        left.push(`${bars} of ${size}, ${Math.floor(stock)} mm, rest ${Math.floor(offcut)} mm`);
    const patterns = plan.patterns.filter((_, at) => isFirm[at] !== false);
    return { ...group, plan: { ...plan, patterns }, list: list.filter((_, at) => isFirm[at] !== false) };
  });
  const notes =
    left.length === 0
      ? []
      : [
          `bars with pieces on HOLD are not booked, neither as used nor their rests: ${left.join("; ")}: book them by hand once they are cut`,
        ];
  return { firm, notes };
}
