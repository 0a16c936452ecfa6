import { LANGUAGES } from "../header/all-languages";
import { cleanText } from "./clean-text";
import { LONGEST_WORDS } from "./longest-text";
import { ROW_WORDS, type RowWordUse } from "./row-words.data";
import { TITLE_WORDS } from "./title-words.data";

const titleWords = Object.values(TITLE_WORDS);
const BY_USE = new Map<RowWordUse, ReadonlySet<string>>();
for (const row of [
  ...ROW_WORDS.rows,
  { use: "title" as const, words: titleWords.flatMap(({ own }) => own) },
  { use: "fact" as const, words: titleWords.flatMap(({ besideOthers }) => besideOthers) },
  ...LANGUAGES.flatMap(({ rows = [] }) => rows),
])
  BY_USE.set(row.use, new Set([...(BY_USE.get(row.use) ?? []), ...row.words.map(withoutMarks)]));

/** what heads a total in a language begins its lines of sums too */
const SHORTEST_TOTAL = 4;
const ofTotals = LANGUAGES.flatMap(({ parts }) => parts.total ?? []).filter(
  (word) => word.length >= SHORTEST_TOTAL || /[^\p{Script=Latin}\s]/u.test(word),
);
BY_USE.set("total", new Set([...(BY_USE.get("total") ?? []), ...ofTotals.map(withoutMarks)]));

/** A text in the form that the word tables are kept in; of a long one its beginning. */
export function plainWords(typed: string): string {
  const beginning = typed.length > LONGEST_WORDS ? typed.trimStart().slice(0, LONGEST_WORDS) : typed;
  return withoutMarks(cleanText(beginning))
    .toLowerCase()
    .replace(/[.:;,]+(?=\s|$)/g, "")
    .replace(/\s+/g, " ")
    .trim();
}

/** Without accents, and in Arabic without hamza, vowel signs and what only widens a word, and with one of two letters. */
function withoutMarks(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f\u0640\u064b-\u0655\u0670]/g, "")
    .replace(/[\u0649\u06cc]/g, "\u064a")
    .replace(/\u0629/g, "\u0647")
    .replace(/\u06a9/g, "\u0643")
    .normalize("NFC");
}

/** True where the whole text is one of the words of that use. */
export function isWord(use: RowWordUse, plain: string): boolean {
  return BY_USE.get(use)?.has(plain) ?? false;
}

/** quotation marks, arrows of quotation or two strokes alone, with dashes or points round them: \u201e, -//-, >> */
const DITTO_MARKS = /^[-=\s.]*(?:["\u201e\u00bb]{1,2}|"\s"|''|,,|>>|\/\/|(?<=-)ii(?=-))[-=\s.]*$/;

/** True where the text, in lower case, says that what stands above is meant. */
export function isDitto(plain: string): boolean {
  if (isWord("ditto", plain) || DITTO_MARKS.test(plain)) return true;
  return !/\d/.test(plain) && isWord("ditto", plainWords(plain));
}

/** The words of that use. */
export function wordsOf(use: RowWordUse): ReadonlySet<string> {
  return BY_USE.get(use) ?? NO_WORDS;
}

const NO_WORDS: ReadonlySet<string> = new Set();

/** in such writing a word may go on without a blank; Greek parts its words */
const GOES_ON = /[^\u0020-\u007e\p{Script=Greek}]$/u;

/** True where the text begins with one of the words of that use, at a word's end. */
export function beginsWithWord(use: RowWordUse, plain: string): boolean {
  for (const word of BY_USE.get(use) ?? []) {
    if (!plain.startsWith(word)) continue;
    const next = plain.charAt(word.length);
    if (next === "" || !/[\p{L}]/u.test(next) || GOES_ON.test(word)) return true;
  }
  return false;
}

/** True where the text ends with one of the words of that use. */
export function endsWithWord(use: RowWordUse, plain: string): boolean {
  for (const word of BY_USE.get(use) ?? [])
    if (plain.endsWith(` ${word}`) || (UNPARTED.test(word) && plain.endsWith(word))) return true;
  return false;
}

/** two signs and more of writing without blanks between the words */
const UNPARTED = /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}]{2}/u;

/** True where one of the words of that use stands anywhere in the text. */
export function holdsWord(use: RowWordUse, plain: string): boolean {
  for (const word of BY_USE.get(use) ?? []) {
    const at = plain.indexOf(word);
    if (at < 0) continue;
    const before = plain.charAt(at - 1);
    const after = plain.charAt(at + word.length);
    if (!/[\p{L}]/u.test(before) && !/[\p{L}]/u.test(after)) return true;
  }
  return false;
}
