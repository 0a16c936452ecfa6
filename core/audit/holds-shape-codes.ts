import type { Standard } from "../standards/port";

/** True where the standard lists shapes by code; a straight bar alone is no list. */
export function holdsShapeCodes(standard: Standard): boolean {
  return standard.shapes.size > 1;
}
