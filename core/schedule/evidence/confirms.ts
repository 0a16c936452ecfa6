import { WEIGH } from "./evidence.data";
import type { Agreement } from "./reading-agreement";
import type { IdentityName } from "./table-evidence";

const AMOUNTS: ReadonlySet<IdentityName> = new Set<IdentityName>(["mass", "totalLength", "bySize"]);

/** True where the words' own identities of amounts are tested on enough bars, and all kept. */
export function confirms(agreement: readonly Agreement[]): boolean {
  const { leastBars, confirms: share } = WEIGH.value;
  const tested = agreement.filter(({ identity, bars }) => AMOUNTS.has(identity) && bars >= leastBars);
  return tested.length > 0 && tested.every((one) => one.share >= share && !one.byHeading);
}
