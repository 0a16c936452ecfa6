import type { Cell } from "../schedule/sheet";
import { plainWords, wordsAndUnit } from "./find-sections";
import { nearWord } from "./near-word";
import { SHOP_COLUMNS, SHOP_LIMITS } from "./shop-words.data";

export type LimitName = keyof typeof SHOP_LIMITS;

const NAMES = Object.keys(SHOP_LIMITS) as LimitName[];

/** The limit that a cell names; null for any other words. */
export function limitNamed(cell: Cell): LimitName | null {
  const { words } = wordsAndUnit(cell);
  const isNamed = (name: LimitName): boolean =>
    SHOP_LIMITS[name].some((known) => wordsAndUnit(known).words === words);
  return NAMES.find(isNamed) ?? null;
}

/** Why a cell under "limit" is none, and what may be meant. */
export function limitWords(cell: Cell): string {
  const { words } = wordsAndUnit(cell);
  const column = Object.values(SHOP_COLUMNS).find((known) =>
    known.some((word) => word === words || word === plainWords(cell)),
  );
  if (column !== undefined)
    return `nothing goes by it: it is no limit but the head of a table, so write it under "${column[0]}"`;
  const near = nearLimit(words);
  return near === null
    ? `nothing goes by it: it is no limit that is known: these are ${FIRST_WORDS.join(", ")}`
    : `nothing goes by it: did you mean "${near}"?`;
}

const FIRST_WORDS = NAMES.map((name) => SHOP_LIMITS[name][0]);

function nearLimit(words: string): string | null {
  const known = NAMES.flatMap((name) => SHOP_LIMITS[name].map((word) => wordsAndUnit(word).words));
  const near = nearWord(words, known);
  const name = near === null ? null : limitNamed(near);
  return name === null ? null : SHOP_LIMITS[name][0];
}
