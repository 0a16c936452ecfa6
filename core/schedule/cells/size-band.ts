const SIGN = "(?:[\u00f8\u00d8\u2300\u03a6\u03c6]|[d\u0111](?:ia\\.?|k)?)";
const SIZE = `${SIGN}?\\s?(\\d{1,2})(?:\\s?mm)?`;
/** a grade, or words such as "weight of steel" */
const WORDS = "(?:\\p{L}[\\p{L}\\p{M}\\d-]*\\s*:?\\s){0,4}";
/** "10 < \u00d8 <= 18", "\u00d8 > 18", "CB400-V: D \u2264 10", ">\u00d818"; what stands before it is a grade */
const BAND = new RegExp(
  `^${WORDS}(?:(\\d{1,2})\\s?([<\u2264])(=?)\\s?)?${SIGN}\\s?([<>\u2264\u2265])(=?)\\s?(\\d{1,2})(?:\\s?mm)?$`,
  "iu",
);
const SIGN_BEFORE = new RegExp(`^${WORDS}([<>\u2264\u2265])(=?)\\s?${SIZE}$`, "iu");
const FROM_TO = new RegExp(
  `^${WORDS}${SIGN}\\s?(\\d{1,2})\\s?(?:-|\u2013|\u00f7|~|\\.{2,3}|\u2026)\\s?${SIZE}$`,
  "iu",
);

/** Which diameters, mm, a class of sizes takes in: "10 < \u00d8 <= 18", "D \u2264 10", "\u00d820-\u00d825"; null for anything else. */
export function sizeBand(text: string): ((diameter: number) => boolean) | null {
  const two = FROM_TO.exec(text);
  if (two !== null) {
    const [from, to] = [Number(two[1]), Number(two[2])];
    return from < to ? (diameter) => diameter >= from && diameter <= to : null;
  }
  const band = BAND.exec(text);
  const before = band === null ? SIGN_BEFORE.exec(text) : null;
  const [, least, over = "", isEqualLow = "", sign, isEqual, most] =
    band ?? (before === null ? [] : ["", undefined, "", "", before[1], before[2], before[3]]);
  if (sign === undefined) return null;
  const [low, high] = [Number(least ?? 0), Number(most)];
  const isIn = sign === "\u2264" || sign === "\u2265" || isEqual === "=";
  if (sign === ">" || sign === "\u2265") return (diameter) => diameter > high || (isIn && diameter === high);
  const isLowIn = over === "\u2264" || isEqualLow === "=";
  const from = (diameter: number) => diameter > low || (isLowIn && diameter === low);
  return (diameter) => from(diameter) && (diameter < high || (isIn && diameter === high));
}
