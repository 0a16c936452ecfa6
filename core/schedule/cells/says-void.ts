import type { Cell } from "../sheet";
import { isWord, plainWords, wordsOf } from "./row-words";

const SHORTEST = 4;
/** "取消", "HỦY": other writings need fewer signs for a word */
const SHORTEST_OF_OTHERS = 2;

/** "CANCELLED" in place of a size: the bar is none any more. */
export function saysVoid(cell: Cell | undefined): boolean {
  return (
    typeof cell === "string" &&
    cell.length >= (/^[ -~]*$/.test(cell) ? SHORTEST : SHORTEST_OF_OTHERS) &&
    !/\d/.test(cell) &&
    isWord("superseded", plainWords(cell))
  );
}

/** What a remark takes out: the whole bar, perhaps the bar, or nothing. */
export type RemarkVoid = "bar" | "perhaps" | null;

/** "supersedes A": the bar takes another's place, and counts */
const TAKES_A_PLACE = /^supersed(?:es|ing)\b(?! this\b)/;
const ANYWHERE = /\bsupersed|\bdeleted\b|\bcancelled\b|\bwithdrawn\b/;
const DATE = /^\d{1,4}([./-])\d{1,2}\1\d{1,4}$/;
const REVISION = /^(?:\p{L}|.*\d.*)$/u;

/**
 * A remark takes a bar out only where it says nothing else, or what replaced the bar: "deleted", "superseded by 12",
 * "omit, see rev B". In "omit end hook" or "deleted lap" another thing may be taken out, and the bar stays.
 */
export function remarkVoid(text: string): RemarkVoid {
  const plain = plainWords(text);
  if (TAKES_A_PLACE.test(plain)) return null;
  const words = plain.split(/[^\p{L}\p{M}\p{N}/.-]+|(?<!\d)[/.-]|[/.-](?!\d)/u).filter((one) => one !== "");
  for (let at = 0; at < words.length; at += 1) {
    const long = lengthOfVoid(words, at);
    if (long === 0) continue;
    const before = words.slice(0, at);
    const after = words.slice(at + long);
    if (isAllOf("what-is-superseded", before) && isReplacement(after)) return "bar";
    if (at === 0) return "perhaps";
  }
  return beginsWithVoid(plain) || ANYWHERE.test(plain) ? "perhaps" : null;
}

const MOST_WORDS = 3;

/** How many words from there on make one word of the use; 0 where none do. */
function lengthOfVoid(words: readonly string[], at: number): number {
  for (let long = MOST_WORDS; long > 0; long -= 1) {
    if (at + long <= words.length && isWord("superseded", words.slice(at, at + long).join(" "))) return long;
  }
  return 0;
}

/** Scripts that part no words: the word stands at the beginning of a longer one. */
function beginsWithVoid(plain: string): boolean {
  for (const word of wordsOf("superseded"))
    if (/[^\u0020-\u007e]$/.test(word) && plain.startsWith(word)) return true;
  return false;
}

function isAllOf(use: "what-supersedes" | "what-is-superseded", words: readonly string[]): boolean {
  const [first] = words;
  return (
    first === undefined ||
    (isWord(use, first) && words.every((one) => isWord(use, one) || REVISION.test(one)))
  );
}

function isReplacement(words: readonly string[]): boolean {
  const [first = ""] = words;
  return isAllOf("what-supersedes", words) || (words.length === 1 && DATE.test(first));
}
