import type { ColumnKind } from "../bar-row";
import { LANGUAGES } from "./all-languages";
import type { WordPart } from "./language-words";

const MOST_WORDS_OF_PART = 4;
const LONGEST = 60;
/** writing in which words stand without blanks between them */
const UNPARTED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]/u;
const ONE = new Set(["1", "one"]);

/** What a heading of several known words stands for: "pzas/elem" counts one member's bars. */
export interface HeadingOfParts {
  readonly kind: ColumnKind | "ignored";
  /** one word may be used loosely, and gives way to a column that is named in full */
  readonly weak: boolean;
  readonly otherwise: ColumnKind | null;
}

/**
 * The column that the words of a heading make up, in whichever order they stand; null where a word is not known
 * or where they make up none.
 *
 * @param plain lower case, without accents and points, its unit taken off
 * @example headingOfParts("no of pieces per element", partsOf) // { kind: "each" }
 */
export function headingOfParts(plain: string, parts: ReadonlyMap<string, WordPart>): HeadingOfParts | null {
  if (plain === "" || plain.length > LONGEST) return null;
  const found = new Set<WordPart>();
  let last: WordPart | null = null;
  let rest = plain.replace(/\s*\/\s*/g, " / ").trim();
  while (rest !== "") {
    const word = firstPart(rest, parts);
    if (word === null) return null;
    found.add(word.part);
    last = word.part;
    rest = rest.slice(word.length).trimStart();
  }
  // "No per": of what, everybody knows
  const isNoPer = last === "per" && /\p{L}$/u.test(plain) && [...found].every((part) => OF_NUMBERS.has(part));
  return isNoPer && found.has("count") ? named("each") : kindOf(found);
}

const OF_NUMBERS: ReadonlySet<WordPart> = new Set<WordPart>(["count", "per", "bar"]);

/** The parts of all languages by their words; `spell` gives a word the form that headings are compared in. */
export function partsByWord(spell: (word: string) => string): ReadonlyMap<string, WordPart> {
  const parts = new Map<string, WordPart>([["/", "per"]]);
  for (const { parts: own } of LANGUAGES) {
    for (const [part, words] of Object.entries(own) as [WordPart, readonly string[]][]) {
      for (const word of words) {
        // a stroke inside a word, as in "c/u", stands apart in the text too
        const spelt = spell(word).replace(/\s*\/\s*/g, " / ");
        if (!parts.has(spelt)) parts.set(spelt, part);
      }
    }
  }
  return parts;
}

function firstPart(
  text: string,
  parts: ReadonlyMap<string, WordPart>,
): { readonly part: WordPart; readonly length: number } | null {
  const words = text.split(" ");
  for (let count = Math.min(MOST_WORDS_OF_PART, words.length); count > 0; count -= 1) {
    const phrase = words.slice(0, count).join(" ");
    const part = ONE.has(phrase) ? "one" : parts.get(phrase);
    if (part !== undefined) return { part, length: phrase.length };
  }
  const first = words[0] ?? "";
  if (!UNPARTED.test(first)) return null;
  for (let length = first.length - 1; length > 0; length -= 1) {
    const part = parts.get(first.slice(0, length));
    if (part !== undefined) return { part, length };
  }
  return null;
}

type Case = readonly [all: readonly WordPart[], none: readonly WordPart[], means: HeadingOfParts | null];

const named = (kind: HeadingOfParts["kind"]): HeadingOfParts => ({ kind, weak: false, otherwise: null });

/** In this order: the first whose words all stand there, and none of the others. */
const CASES: readonly Case[] = [
  [["mass", "metre"], ["total", "member", "count"], named("unitMass")],
  [["mass", "total"], ["member", "length", "size", "metre"], named("mass")],
  // the mass of one member is neither the row's nor a metre's nor a bar's
  [["mass", "member"], [], named("ignored")],
  [["mass", "one"], ["total"], named("pieceMass")],
  [["mass", "per", "count"], ["total"], named("pieceMass")],
  [["mass", "per", "bar"], ["total"], named("pieceMass")],
  [["mass", "per"], [], named("ignored")],
  [["mass"], ["length", "count", "size"], named("mass")],
  [["length", "total"], ["member", "mass", "size"], named("totalLength")],
  [["length", "member"], [], null],
  [["length", "per"], ["mass", "size", "total", "member"], named("length")],
  [["length"], ["mass", "size", "count", "total"], named("length")],
  [["size"], ["count", "member", "total", "length", "mass"], named("size")],
  [["count", "total", "member"], [], null],
  [["count", "total"], ["length", "mass", "size"], named("total")],
  [["count", "member", "per"], [], named("each")],
  [["count", "member", "one"], [], named("each")],
  [["count", "member"], ["length", "mass", "size"], named("members")],
  [["count", "one"], ["length", "mass", "size"], named("each")],
  [["member", "per"], ["length", "mass", "size", "total"], named("each")],
  [["total", "bar"], ["length", "mass", "size", "member", "per", "one", "metre"], named("total")],
  [["count"], ["length", "mass", "size"], { kind: "total", weak: true, otherwise: "each" }],
];

function kindOf(found: ReadonlySet<WordPart>): HeadingOfParts | null {
  if (found.size === 0) return null;
  const one = CASES.find(
    ([all, none]) => all.every((part) => found.has(part)) && !none.some((part) => found.has(part)),
  );
  return one?.[2] ?? null;
}
