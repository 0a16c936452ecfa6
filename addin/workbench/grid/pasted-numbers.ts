import { addressAt } from "../../../core/schedule/cell-address";
import type { NumberSigns } from "./local-number";

/** A text that was pasted, and the cell of the sheet that it came into, from 0. */
export interface PastedText {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** A number in its cell. */
export interface PastedNumber {
  readonly row: number;
  readonly column: number;
  readonly value: number;
}

/** Numbers that pasted texts mean, and what is to be told of how they were read; null where nothing is. */
export interface PastedNumbers {
  readonly numbers: readonly PastedNumber[];
  readonly words: string | null;
}

type Sign = "," | ".";

/** What can only have decimals behind the comma: 1,25 or 1.234,5 or 1.234.567; and so with the point. */
const SURE: Readonly<Record<Sign, RegExp>> = {
  ",": /^[+-]?(?:(?:0|[1-9]\d*|[1-9]\d{0,2}(?:[. ]\d{3})+),\d+|[1-9]\d{0,2}(?:\.\d{3}){2,})$/,
  ".": /^[+-]?(?:(?:0|[1-9]\d*|[1-9]\d{0,2}(?:[, ]\d{3})+)\.\d+|[1-9]\d{0,2}(?:,\d{3}){2,})$/,
};
/** Thousands by the one sign, or three decimals by the other. */
const EITHER = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * Reads texts that were copied elsewhere. A number says by which sign its decimals are, or the numbers beside
 * it do; where none does, it is read as numbers are written at this place, and that is told.
 */
export function pastedNumbers(texts: readonly PastedText[], local: NumberSigns): PastedNumbers {
  const home: Sign = local.decimal === "," ? "," : ".";
  const read = texts.map((one) => {
    const text = one.text.replace(/[\u00a0\u202f]/g, " ").trim();
    return { ...one, text, sign: signOf(text), isEither: EITHER.test(text) };
  });
  const said = new Set(read.flatMap(({ sign }) => (sign === null ? [] : [sign])));
  const [only] = said;
  const shared = said.size === 1 ? only : undefined;
  const numbers: PastedNumber[] = [];
  const foreign: string[] = [];
  const guessed: string[] = [];
  for (const { row, column, text, sign, isEither } of read) {
    const by = sign ?? (isEither ? (shared ?? home) : null);
    if (by === null) continue;
    const value = valueBy(text, by);
    numbers.push({ row, column, value });
    const words = `"${text}" in ${addressAt(row, column)} as ${value}`;
    if (by !== home) foreign.push(words);
    else if (sign === null && shared === undefined && !text.includes(home)) guessed.push(words);
  }
  return { numbers, words: wordsOf(foreign, guessed, home) };
}

function signOf(text: string): Sign | null {
  if (EITHER.test(text)) return null;
  if (SURE[","].test(text)) return ",";
  return SURE["."].test(text) ? "." : null;
}

function valueBy(text: string, sign: Sign): number {
  const group = sign === "," ? /[. ]/g : /[, ]/g;
  return Number(text.replace(group, "").replace(",", "."));
}

function wordsOf(foreign: readonly string[], guessed: readonly string[], home: Sign): string | null {
  const [first] = foreign;
  const [guess] = guessed;
  const name = { ",": "comma", ".": "point" } as const;
  const other = home === "," ? "." : ",";
  const told = [
    first === undefined ? "" : `Pasted with a decimal ${name[other]}: read ${first}${more(foreign)}`,
    guess === undefined
      ? ""
      : `Not sure: read ${guess}${more(guessed)}, as numbers are written at this place. If its ${name[other]} stands before decimals, undo and type it`,
  ].filter((part) => part !== "");
  return told.length === 0 ? null : told.join(". ");
}

const more = (all: readonly string[]): string => (all.length === 1 ? "" : ` and ${all.length - 1} more`);
