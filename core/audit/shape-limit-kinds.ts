import type { LimitJudgement } from "../shapes/shape-limits";

/** A limit on the end of a link, printed against the links' column of end projections. */
export function isHookTailLimit({ text }: LimitJudgement): boolean {
  return text.includes("P(links)");
}

/** A limit on an end leg, printed against the end projection P. */
export function isEndLegLimit(limit: LimitJudgement): boolean {
  return /\bP\b/.test(limit.text) && !isHookTailLimit(limit);
}

/** The width over a bend, against two radii and two bars. */
export function isWidthOfBend({ text }: LimitJudgement): boolean {
  return /2\(r \+ d\)/.test(text);
}

/** A radius against the least of the standard: the former's rule speaks of it. */
export function isRadiusLimit({ letter }: LimitJudgement): boolean {
  return letter === "R";
}
