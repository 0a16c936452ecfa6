import type { BarFacts } from "./bar-facts";
import { noteTexts, plainNote } from "./note-texts";
import type { SheetFacts } from "./sheet-facts";

/** What a note makes the length of, of bars whose shape its word names: "stirrup 2a + 2b + 2c", "link 2(a + b) + 2k". */
export interface StatedSum {
  /** beginning of the shape's word, lower case, without accents */
  readonly shape: string;
  /** how often each leg is taken, by place: A is 0 */
  readonly times: readonly number[];
}

/** a word is the same in one and in many: "spillo", "spilli" */
const STEM = 4;
/** characters of a note that is looked at */
const LONGEST = 300;
/** mm: what is left of a length that was written without decimals */
const WRITTEN_WITHOUT_DECIMALS = 1;
const TERM = String.raw`\d?\s?[*x\u00d7]?\s?(?:[a-k]|\(\s*[a-k](?:\s*\+\s*[a-k])*\s*\))`;
const SUM = new RegExp(
  String.raw`(\p{L}{3,})\s*[:=]?\s*(?<!\p{L})(${TERM}(?:\s*\+\s*${TERM})*)(?![\p{L}\d])`,
  "gu",
);
const TERMS = /(\d?)\s?[*x\u00d7]?\s?(?:([a-k])|\(([^)]*)\))/g;
const LETTER = /[a-k]/g;

/**
 * The sums of legs that a note gives by the word of a shape.
 *
 * @example sumsIn("staffe: 2a + 2b + 2c; spilli: a + 2b") // [{ shape: "staf", times: [2, 2, 2] }, { shape: "spil", times: [1, 2] }]
 */
export function sumsIn(note: string): readonly StatedSum[] {
  if (note.length > LONGEST || !note.includes("+")) return [];
  return [...plainNote(note).matchAll(SUM)].flatMap(([, word = "", sum = ""]) => {
    const times: number[] = [];
    for (const [, often = "", alone, inside = ""] of sum.matchAll(TERMS))
      for (const letter of alone ?? inside.match(LETTER) ?? []) {
        const place = letter.charCodeAt(0) - "a".charCodeAt(0);
        while (times.length <= place) times.push(0);
        times[place] = (times[place] ?? 0) + (often === "" ? 1 : Number(often));
      }
    // a letter alone is no sum
    return times.filter((often) => often > 0).length < 2 ? [] : [{ shape: word.slice(0, STEM), times }];
  });
}

/** Whether a bar's length is what a note of its sheet makes of its legs: of its shape's, where a shape is named. */
export function lengthsAsStated({ sheet, reading }: SheetFacts): (facts: BarFacts) => boolean {
  const sums = [...noteTexts(sheet, reading)].flatMap(({ text }) => sumsIn(text));
  if (sums.length === 0) return () => false;
  return (facts) => {
    const { length, dims } = facts.row;
    const word = plainNote(String(facts.typed("shape") ?? "")).trim();
    if (length === null) return false;
    return sums.some((one) => {
      if (
        (word !== "" && !word.startsWith(one.shape)) ||
        dims.some((dim, at) => dim !== null && (one.times[at] ?? 0) === 0)
      )
        return false;
      // of no named shape it is where the bar has all of the legs
      if (word === "" && one.times.some((often, at) => often > 0 && (dims[at] ?? null) === null))
        return false;
      const made = one.times.reduce((so, often, at) => so + often * (dims[at] ?? 0), 0);
      return Math.abs(made - length) <= WRITTEN_WITHOUT_DECIMALS;
    });
  };
}
