import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import { isWord, plainWords } from "../cells/row-words";
import type { Sample } from "./column-sample";

const WITH_WORD = /^\d[\d .,]*\s*\(?(\p{L}{2,8})\.?\)?$/u;
/** rows that hold a word before it is taken to say what is counted, and their share */
const FEWEST = 3;
const SHARE = 0.8;

/**
 * "24 gab.": the one word that stands behind the numbers of a count column in nearly all of its rows says what is
 * counted, in whatever language. Null where none does, and of words that make a number another: a set, a pair, a unit.
 */
export function countWord(sample: Sample | undefined): string | null {
  const texts = sample?.texts ?? [];
  const rows = new Map<string, number>();
  for (const text of texts) {
    const word = plainWords(WITH_WORD.exec(text)?.[1] ?? "");
    if (word !== "") rows.set(word, (rows.get(word) ?? 0) + 1);
  }
  for (const [word, count] of rows) {
    if (count < FEWEST || count < SHARE * texts.length) continue;
    return isWord("count-set", word) || word in MM_PER_UNIT || word in KG_PER_UNIT ? null : word;
  }
  return null;
}
