const LEG = String.raw`\(?\d+(?:[.,]\d+)?(?:mm|cm|m)?\)?`;
const ANGLE = String.raw`(?:1[0-7]\d|180|\d{1,2})(?:\.\d+)?(?:r\d+)?`;
const JOINED = new RegExp(String.raw`^${LEG}(?:\s*[+-]\s*${ANGLE}\s+${LEG})+$`, "i");

/**
 * A path whose turns stand at the leg before them, with each apart. What is no path stays as it stands: legs that
 * are added have no blank behind the sign's number.
 *
 * @example turnsApart("40+90 200 + 90 40") // "40 +90 200 +90 40"
 */
export function turnsApart(text: string): string {
  return JOINED.test(text) ? text.replace(/\s*([+-])\s*/g, " $1") : text;
}
