import { resolveStandard, type Standard } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";

/** The standard of an id as typed; blank is the default. Throws with words for the user where it is not held. */
export function standardAsked(id: string): Standard {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) throw new Error(refusalText(standard));
  return standard;
}
