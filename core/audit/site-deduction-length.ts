import type { BarFacts } from "../bar/bar-facts";

/** Diameters that sites deduct for a bend, by its angle up to this. */
const DEDUCTIONS = [
  { upTo: 60, diameters: 1 },
  { upTo: 110, diameters: 2 },
  { upTo: 150, diameters: 3 },
] as const;
/** mm: what a site rounds such a length to */
const ROUNDED_WITHIN = 10;

/**
 * mm, where the typed length is the sum of the legs less the site's deductions and too short for the
 * bar; null otherwise. Deductions of 1d, 2d and 3d are common practice, not geometry.
 */
export function siteDeductionLength(facts: BarFacts): number | null {
  const { planarPath, diameter, exactLength } = facts;
  const { length } = facts.row;
  if (planarPath === null || diameter === null || exactLength === null || length === null) return null;
  if (facts.standard.siteDeductions !== null || planarPath.turns.length === 0) return null;
  let site = 0;
  for (const leg of planarPath.legs) site += leg.length;
  for (const { angle } of planarPath.turns) {
    const row = DEDUCTIONS.find(({ upTo }) => Math.abs(angle) <= upTo);
    if (row === undefined) return null;
    site -= row.diameters * diameter;
  }
  const typedSo = length >= site - ROUNDED_WITHIN && length <= site + ROUNDED_WITHIN;
  return typedSo && length < exactLength - 1 ? site : null;
}
