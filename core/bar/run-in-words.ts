import type { Cell } from "../schedule/sheet";
import { MM_PER_UNIT } from "../units/unit-table";
import { RUN_WORDS } from "./run-words.data";

/** A spacing and the run that it goes over, as a text gives them. */
export interface RunInWords {
  readonly spacing: number;
  readonly run: number;
  /** run over spacing where both name their units; null where the numbers alone stand */
  readonly gaps: number | null;
}

const LONGEST = 120;
const NUMBER = String.raw`(?:\d{1,3}(?:[ \u00a0\u202f]\d{3})+(?!\d)|\d{1,6}(?:[.,]\d{1,3})?)`;
const UNIT = String.raw`(?:mm|cm|m(?![\p{L}\d])|"|″|in\b)`;
const FEET = String.raw`(\d{1,3})\s*['′](?:\s*-?\s*(\d{1,2})\s*["″])?`;
const SPACED = new RegExp(
  String.raw`(?:@|(?<![\p{L}\d])c\s*/\s*c|(?<![\p{L}\d])c\s*/|(?<![\d\p{L}/])/|(?<=[ØøΦφ]\s?\d{1,2}\s?)/|(?<!\p{L})(?:at|cada|every|alle|tous les|ogni|co|каждые|шаг|كل)\s)\s*(${NUMBER})\s*(${UNIT})?`,
  "iu",
);
const OVER = new RegExp(
  String.raw`(?<!\p{L})(?:${[...RUN_WORDS.value].sort((a, b) => b.length - a.length).join("|")})\s*[:=]?\s*(?:${FEET}|(${NUMBER})\s*(${UNIT})?)`,
  "iu",
);
/** the run alone, with its unit: "Ø8/15 short way, 4.50 m" */
const ALONE = new RegExp(String.raw`[,;]\s*()()(${NUMBER})\s*(m)(?![\p{L}\d])`, "iu");
/** the run before the spacing: "660 c/20", "L=6,60 c/20" */
const BEFORE = new RegExp(String.raw`(?:^|[\s=:])()()(${NUMBER})\s*(${UNIT})?\s*$`, "iu");
const INCHES_OF_FOOT = 12;

/**
 * The spacing and the run of a text; null of one that does not name both.
 *
 * @example runInWords("at 250 c/c over 4.25 m") // { spacing: 250, run: 4.25, gaps: null }
 */
export function runInWords(text: string): RunInWords | null {
  if (text.length > LONGEST || !/\d\D+\d/.test(text)) return null;
  const spaced = SPACED.exec(text);
  if (spaced === null) return null;
  const rest = text.slice(spaced.index + spaced[0].length);
  const over = OVER.exec(rest) ?? ALONE.exec(rest) ?? BEFORE.exec(text.slice(0, spaced.index));
  if (over === null) return null;
  const [, feet, inches, plain, unit] = over;
  const spacing = numberOf(spaced[1]);
  const spacingUnit = unitOf(spaced[2]);
  const isInFeet = feet !== undefined && feet !== "";
  const run = !isInFeet ? numberOf(plain) : Number(feet) * INCHES_OF_FOOT + Number(inches ?? 0);
  const runUnit = !isInFeet ? unitOf(unit) : "in";
  if (!(spacing > 0) || !(run > 0)) return null;
  const isKnown = spacingUnit !== null && runUnit !== null;
  const gaps = isKnown ? (run * MM_PER_UNIT[runUnit]) / (spacing * MM_PER_UNIT[spacingUnit]) : null;
  return { spacing, run, gaps };
}

const SPACED_ALONE = new RegExp(String.raw`^\s*(?:@|c\s*\/\s*c?|\/)\s*(${NUMBER})\s*(?:${UNIT})?\s*$`, "iu");
const AMOUNT = new RegExp(String.raw`^[^\d]{0,6}(${NUMBER})\s*(?:${UNIT})?(?:\s*c\s*\/\s*c)?\s*$`, "iu");

/** The spacing of a cell that says nothing else: "@200", "c/20". */
export function spacingAlone(cell: Cell): number | null {
  return typeof cell === "string" ? aloneIn(SPACED_ALONE, cell) : null;
}

/** The one number of a cell, whatever sign or unit stands with it. */
export function amountAlone(cell: Cell): number | null {
  if (typeof cell === "number") return cell;
  return typeof cell === "string" ? aloneIn(AMOUNT, cell) : null;
}

function aloneIn(pattern: RegExp, text: string): number | null {
  const found = text.length > LONGEST ? null : pattern.exec(text);
  return found === null ? null : numberOf(found[1]);
}

function numberOf(typed: string | undefined): number {
  return Number((typed ?? "").replace(/\s/g, "").replace(",", "."));
}

function unitOf(typed: string | undefined): "mm" | "cm" | "m" | "in" | null {
  if (typed === undefined) return null;
  const unit = typed.toLowerCase();
  return unit === '"' || unit === "″" ? "in" : (unit as "mm" | "cm" | "m" | "in");
}
