import { resolveStandard, STANDARD_IDS } from "../standards/index";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** Ids of other standards that have a shape of this code. */
export function standardsWithShape(code: string, inForce: Standard): readonly string[] {
  return STANDARD_IDS.filter((id) => {
    const standard = resolveStandard(id);
    return !isRefusal(standard) && standard.id !== inForce.id && standard.shapes.has(code);
  });
}
