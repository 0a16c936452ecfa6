import type { Bundle } from "../../core/totals";

/** True where bundles are of several schedules, so that a mark alone does not say which bar it is. */
export function isOfSeveral(bundles: readonly Bundle[]): boolean {
  return new Set(bundles.map(({ item }) => item.schedule ?? null)).size > 1;
}
