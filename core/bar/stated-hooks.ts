import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { MM_PER_UNIT } from "../units/unit-table";
import type { BarFacts } from "./bar-facts";
import { HOOK_WORDS } from "./hook-words.data";
import { BEGINS, NOTE_PARTS, plainNote, saidOnce } from "./note-texts";
import type { SheetFacts } from "./sheet-facts";
import { hooksOf } from "./short-ends";
import { STATED_HOOKS } from "./stated-hooks.data";

/** A hook below the least that a title or a note of the sheet gives hooks. */
export interface HookBelowStated {
  readonly facts: BarFacts;
  /** mm */
  readonly length: number;
  /** the leg that is the hook, where a note calls it so */
  readonly at: (typeof DIMENSION_LETTERS)[number] | "length";
  readonly least: number;
  /** the cell that says it */
  readonly cell: string;
}

/** What a part of a note asks of a hook: diameters and mm, the greater of which holds. */
interface LeastHook {
  readonly diameters: number;
  readonly mm: number;
  /** mm of each size that the note names, where it goes by sizes */
  readonly bySize?: ReadonlyMap<string, number>;
}

const { least, others, diameters, diametersBegin, millimetres, centimetres, inches } = STATED_HOOKS.value;
const { sizes, of } = STATED_HOOKS.value;
const { longest, mostDiameters, from, to, kept, share } = STATED_HOOKS.value;
const any = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join("|");
const plainWords = (words: readonly string[]): readonly string[] => words.map((word) => plainNote(word));
const HOOKS = new RegExp(`${BEGINS}(?:${any(plainWords(HOOK_WORDS.value))})`, "u");
const LETTER = new RegExp(
  String.raw`(?<!\p{L})([a-h])\s?(?:[=:]|each)\s?(?:\d{2,3}\s?(?:deg|[\u00b0\u00ba])?\s)?(?:${any(plainWords(HOOK_WORDS.value))})`,
  "u",
);
const LEAST = new RegExp(`${BEGINS}(?:${any(plainWords(least))})`, "u");
const OTHERS = new RegExp(`${BEGINS}(?:${any(plainWords(others))})`, "u");
const FIGURE = new RegExp(
  String.raw`(?<![\d.,x*/-])(\d{1,3}(?:[.,]\d)?)\s?(?:((?:${any(diameters)})(?!\p{L})|${any(diametersBegin)})|(${any(centimetres)})|(${any(inches)})(?!\p{L})|(?:${any(millimetres)}))`,
  "gu",
);
const SIZE = String.raw`(#|\u00f8|(?:${any(sizes)})(?=\s?\d))\s?(\d{1,2})(?!\d|[.,]\d)`;
const LENGTH = String.raw`(\d{1,3})(?:\s(\d)/(\d))?\s?(?:(${any(inches)})(?!\p{L})|(${any(centimetres)})|(?:${any(millimetres)}))?`;
/** "D10=90", "#4: 4 1/2"" */
const SIZE_FIRST = new RegExp(`${SIZE}\\s?[=:]\\s?${LENGTH}`, "gu");
/** "4 1/2" for #4", "130 (H10)" */
const LENGTH_FIRST = new RegExp(`(?<![\\d.,/])${LENGTH}\\s?(?:${any(of)})?\\s?\\(?${SIZE}`, "gu");

/** Hooks below what the sheet itself asks of hooks, where most of its hooks keep it. */
export function hooksBelowStated(sheet: SheetFacts): readonly HookBelowStated[] {
  const stated = saidOnce(sheet, leastHooksIn);
  if (stated === null) return [];
  const ofColumn = hooksOf(sheet).map((hook) => ({ ...hook, at: "length" as const }));
  const byLetter = ofColumn.length > 0 ? ofColumn : hooksByLetter(sheet);
  const all = byLetter.length > 0 ? byLetter : hooksAtEnds(sheet, stated);
  const hooks = all.map(({ facts, mm, at }) => {
    return { facts, at, length: mm, least: leastOf(facts, stated), cell: stated.cell };
  });
  const below = hooks.filter((one) => one.length < one.least - CLOSE);
  const isKept = hooks.length - below.length >= kept && below.length <= share * hooks.length;
  return isKept ? below : [];
}

/** mm that is asked of the hooks of a bar. */
function leastOf({ row, diameter }: BarFacts, { diameters: times, mm, bySize }: LeastHook): number {
  if (bySize === undefined) return Math.max(mm, times * (diameter ?? 0));
  const typed = String(row.sizeTyped ?? "").replace(/\s/g, "");
  return bySize.get(sizeKey(typed.includes("#") ? "#" : "", /\d+/.exec(typed)?.[0] ?? "")) ?? 0;
}

function sizeKey(sign: string, digits: string): string {
  return (sign === "#" ? "#" : "") + digits;
}

/** What a note asks by size; empty where it does not. */
function bySizeIn(plain: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const add = (
    sign: string,
    digits: string,
    [whole = "", above = "", below = "", inch, cm]: readonly string[],
  ) => {
    const unit = inch !== undefined ? "in" : cm !== undefined ? "cm" : "mm";
    const length = (Number(whole) + (above === "" ? 0 : Number(above) / Number(below))) * MM_PER_UNIT[unit];
    if (length >= from && length <= to) found.set(sizeKey(sign, digits), length);
  };
  for (const [, sign = "", digits = "", ...length] of plain.matchAll(SIZE_FIRST)) add(sign, digits, length);
  if (found.size === 0)
    for (const [, ...parts] of plain.matchAll(LENGTH_FIRST))
      add(parts[5] ?? "", parts[6] ?? "", parts.slice(0, 5));
  return found;
}

/** The legs that a note calls hooks, "2A + 2B + 2C, C = hook", of bars that are no plain sums of their legs. */
function hooksByLetter(sheet: SheetFacts) {
  const said = saidOnce(sheet, (note) => {
    const letter = LETTER.exec(plainNote(note))?.[1];
    return letter === undefined
      ? []
      : [{ letter: letter.toUpperCase() as (typeof DIMENSION_LETTERS)[number] }];
  });
  if (said === null) return [];
  const place = DIMENSION_LETTERS.indexOf(said.letter);
  return sheet.bars.flatMap((facts) => {
    const { dims, length } = facts.row;
    const hook = dims[place] ?? null;
    const filled = dims.flatMap((dim) => dim ?? []);
    if (hook === null || length === null || filled.length < LEGS_AND_HOOK) return [];
    const isSum = Math.abs(length - filled.reduce((sum, dim) => sum + dim, 0)) <= LIKE_SUM;
    return isSum ? [] : [{ facts, mm: hook, at: said.letter }];
  });
}

/** The shorter end leg of bars of three legs or more, where the other end is a hook as long as is asked. */
function hooksAtEnds(sheet: SheetFacts, stated: LeastHook) {
  return sheet.bars.flatMap((facts) => {
    const { dims } = facts.row;
    const filled = [...dims.keys()].filter((at) => (dims[at] ?? null) !== null);
    const [first = -1, last = -1] = [filled[0], filled.at(-1)];
    if (filled.length < LEGS_AND_HOOK) return [];
    const ends = [first, last].map((at) => ({
      at: DIMENSION_LETTERS[at] ?? ("length" as const),
      leg: dims[at] ?? 0,
    }));
    const [short, long] = ends.sort((one, other) => one.leg - other.leg);
    const asked = leastOf(facts, stated);
    if (short === undefined || long === undefined || long.leg < asked || long.leg > LONGEST_HOOK * asked)
      return [];
    return [{ facts, mm: short.leg, at: short.at }];
  });
}

/** a longer end is a leg */
const LONGEST_HOOK = 1.5;
/** two sides of a link and its hook */
const LEGS_AND_HOOK = 3;
/** mm */
const LIKE_SUM = 5;

/** one size with its length may say another thing */
const LEAST_SIZES = 2;

/** mm: hooks are written in whole ones, or in centimetres */
const CLOSE = 1;

/**
 * What the parts of a note ask of hooks at least.
 *
 * @example leastHooksIn("Tie hooks not less than 6d nor 3 in") // [{ diameters: 6, mm: 76.2 }]
 */
export function leastHooksIn(note: string): readonly LeastHook[] {
  if (!/\p{Nd}/u.test(note)) return [];
  return note.split(NOTE_PARTS).flatMap((part) => {
    if (part.length > longest) return [];
    const plain = plainNote(part);
    if (!HOOKS.test(plain) || !LEAST.test(plain) || OTHERS.test(plain)) return [];
    const bySize = bySizeIn(plain);
    if (bySize.size >= LEAST_SIZES) return [{ diameters: 0, mm: 0, bySize }];
    let [times, mm] = [0, 0];
    for (const [, typed = "", ofDiameter, ofCentimetre, ofInch] of plain.matchAll(FIGURE)) {
      const number = Number(typed.replace(",", "."));
      if (ofDiameter !== undefined) times = Math.max(times, number <= mostDiameters ? number : 0);
      else {
        const unit = ofCentimetre !== undefined ? "cm" : ofInch !== undefined ? "in" : "mm";
        const length = number * MM_PER_UNIT[unit];
        mm = Math.max(mm, length >= from && length <= to ? length : 0);
      }
    }
    return times === 0 && mm === 0 ? [] : [{ diameters: times, mm }];
  });
}
