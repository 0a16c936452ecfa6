import type { BarFacts } from "../bar/bar-facts";
import { courseCite, courseTrust, hasUnsureAngles } from "../shapes/course";
import type { Citation } from "../standards/citation";

/**
 * Where the course of a coded bar comes from, for what rests on it; nothing for a path, which is its own
 * course, and for right angles that a printed formula counts.
 */
export function courseOf({ definition }: Pick<BarFacts, "definition">): readonly Citation[] {
  if (definition === null) return [];
  const trust = courseTrust(definition);
  const isUncounted = trust !== "sure" && definition.formula === null;
  const isDoubtful = trust === "in doubt" || isUncounted || hasUnsureAngles(definition);
  return isDoubtful ? [courseCite(definition)] : [];
}
