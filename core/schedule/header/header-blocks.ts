import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import type { ColumnKind, ColumnUnit } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { sizeElsewhere } from "../cells/size-elsewhere";
import { EVERYDAY_SIZES } from "../evidence/evidence.data";
import { type HeaderMeaning, recogniseHeader } from "./recognise-header";

/** A column of a header as far as its words tell. */
export interface HeaderColumn {
  readonly kind: ColumnKind;
  readonly column: number;
  readonly header: string;
  readonly unit: ColumnUnit | null;
  readonly corrected: boolean;
  /** the arithmetic of the rows gave its kind or its unit */
  readonly by?: "arithmetic";
  /** the column beside it that holds the inches of a length in feet */
  readonly inches?: number;
}

/** One schedule's part of a header; several stand side by side. */
export interface HeaderBlock {
  readonly left: number;
  readonly right: number;
  readonly columns: readonly HeaderColumn[];
  /** columns of serial numbers, dates and the like */
  readonly ignored: readonly number[];
  readonly bySize: readonly { readonly size: string; readonly column: number }[];
  readonly unknown: readonly { readonly column: number; readonly header: string }[];
  /** columns whose words say what another's say already */
  readonly again?: readonly { readonly column: number; readonly header: string }[];
  /** the sheet's own products tell whether a bare "No. of bars" counts one member's bars or all */
  readonly countIsSettled?: boolean;
}

/** One row of a header, by column. */
export interface HeaderRow {
  readonly texts: ReadonlyMap<number, string>;
  readonly merged: ReadonlySet<number>;
}

/** A column with what its words were taken for. */
export interface FoundColumn {
  readonly column: number;
  readonly header: string;
  readonly meaning: HeaderMeaning | null;
  readonly corrected: boolean;
  readonly inches?: number;
}

/** known words that make a header */
export const LEAST_WORDS = 4;
/** bar sizes side by side that make columns by size */
export const LEAST_SIZES = 3;
/** Kinds of column that tell a bar schedule from another table. */
export const CORE: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "mark",
  "size",
  "shape",
  "length",
  "members",
  "each",
  "total",
  "mass",
  "totalLength",
  "A",
  "B",
  "C",
]);

/** The schedules that stand side by side under one header. */
export function headerBlocks(
  found: readonly FoundColumn[],
  rows: readonly HeaderRow[],
  standard: Standard,
): HeaderBlock[] {
  const starts = blockStarts(found);
  return starts.map((start, index) => {
    const end = starts[index + 1] ?? Number.POSITIVE_INFINITY;
    return blockOf(
      found.filter(({ column }) => column >= start && column < end),
      rows,
      standard,
    );
  });
}

/** Where the header words begin anew, another schedule stands beside the first. */
function blockStarts(columns: readonly FoundColumn[]): number[] {
  const repeats = repeatedStarts(columns);
  if (repeats.length > 1) return repeats;
  const again = firstWordAgain(columns);
  if (again !== null) return [columns[0]?.column ?? 0, again];
  const starts = [columns[0]?.column ?? 0];
  let seen = new Set<string>();
  for (let index = 0; index < columns.length; index += 1) {
    const kind = columns[index]?.meaning?.kind;
    if (kind === undefined || kind === "ignored") continue;
    if (!seen.has(kind)) {
      seen.add(kind);
      continue;
    }
    const rest = new Set(columns.slice(index).map(({ meaning }) => meaning?.kind ?? "ignored"));
    rest.delete("ignored");
    const again = [...rest].filter((one) => seen.has(one));
    const core = again.filter((one) => CORE.has(one as ColumnKind));
    if (rest.size < LEAST_WORDS || again.length < 3 || core.length < 2) continue;
    let first = fromFirstWord(columns, starts[starts.length - 1] ?? 0, index);
    const opener = columns[first]?.meaning?.kind ?? kind;
    index = first;
    // a serial-number column before the block's first word belongs to it
    while (first > 0 && columns[first - 1]?.meaning?.kind === "ignored") first -= 1;
    starts.push(columns[first]?.column ?? 0);
    seen = new Set([opener]);
  }
  return starts;
}

/**
 * A word may stand twice in one schedule ("Length m", "Length mm"): the next one begins where the block's first word
 * comes again, if all words between stand behind it once more.
 */
function fromFirstWord(columns: readonly FoundColumn[], left: number, repeat: number): number {
  const kindAt = (index: number) => columns[index]?.meaning?.kind ?? "ignored";
  const opens = columns.findIndex((one, index) => one.column >= left && kindAt(index) !== "ignored");
  const again = columns.findIndex((_, index) => index > repeat && kindAt(index) === kindAt(opens));
  if (again < 0) return repeat;
  const before = new Set(columns.slice(opens, repeat).map(({ meaning }) => meaning?.kind ?? "ignored"));
  const behind = new Set(columns.slice(again).map(({ meaning }) => meaning?.kind ?? "ignored"));
  const between = columns.slice(repeat, again).map(({ meaning }) => meaning?.kind ?? "ignored");
  const isWhole = between.every((kind) => kind === "ignored" || !before.has(kind) || behind.has(kind));
  const rest = [...behind].filter((kind) => kind !== "ignored");
  return isWhole && rest.length >= LEAST_WORDS ? again : repeat;
}

/** Where the same run of header texts stands again, word for word. */
function repeatedStarts(columns: readonly FoundColumn[]): number[] {
  const texts = columns.map(({ header }) => header.trim().toLowerCase());
  for (let length = LEAST_WORDS; length * 2 <= columns.length; length += 1) {
    const isAgain = texts.every((text, index) => index < length || text === texts[index - length]);
    if (!isAgain || columns.length % length !== 0) continue;
    const core = columns.slice(0, length).filter(({ meaning }) => CORE.has(meaning?.kind as ColumnKind));
    if (core.length < 2) return [];
    return columns.filter((_, index) => index % length === 0).map(({ column }) => column);
  }
  return [];
}

/**
 * Where the first word of all stands again behind an empty column, and behind it words of the first schedule, letter by
 * letter: two schedules whose other columns differ, whatever their words mean.
 */
function firstWordAgain(columns: readonly FoundColumn[]): number | null {
  const texts = columns.map(({ header }) => header.trim().toLowerCase());
  const at = texts.indexOf(texts[0] ?? "", 1);
  const second = columns[at];
  if (second === undefined || texts[0] === "" || texts.indexOf(texts[0] ?? "", at + 1) >= 0) return null;
  if (second.column - (columns[at - 1]?.column ?? 0) < 2) return null;
  const before = new Set(texts.slice(0, at));
  const shared = columns.slice(at).filter(({ header }) => before.has(header.trim().toLowerCase()));
  const core = shared.filter(({ meaning }) => CORE.has(meaning?.kind as ColumnKind));
  return shared.length >= LEAST_WORDS && core.length > 1 ? second.column : null;
}

function blockOf(found: readonly FoundColumn[], rows: readonly HeaderRow[], standard: Standard): HeaderBlock {
  const columns: HeaderColumn[] = [];
  const spare: { column: number; header: string; isKnown: boolean }[] = [];
  const ignored: number[] = [];
  const taken = new Set<string>();
  const typeIsShape = isShapeType(found);
  for (const { column, header, meaning, corrected, inches } of byPreference(
    withBarCount(withoutSerials(found)),
  )) {
    const isType = typeIsShape && meaning?.kind === "grade" && TYPE.test(header);
    const first = isType ? "shape" : meaning?.kind;
    const isTaken = first !== undefined && taken.has(first);
    const kind = isTaken && meaning !== null && meaning.otherwise !== null ? meaning.otherwise : first;
    if (kind === "ignored") ignored.push(column);
    else if (kind === undefined || taken.has(kind))
      // "Elemento" and "Elem.": of two columns of members one may count them, and arithmetic tells
      spare.push({ column, header, isKnown: kind !== undefined && kind !== "member" });
    else {
      taken.add(kind);
      const beside = inches === undefined ? {} : { inches };
      columns.push({ kind, column, header, unit: meaning?.unit ?? null, corrected, ...beside });
    }
  }
  for (const { column, header } of loneLetters(columns)) spare.push({ column, header, isKnown: false });
  columns.sort((one, other) => one.column - other.column);
  const bySize = spare
    .map(({ column }) => ({ column, size: sizeOver(rows, column, standard) }))
    .filter((one): one is { column: number; size: SizeNamed } => one.size !== null)
    .sort((one, other) => one.column - other.column);
  // where one number sign stands for a diameter, all do
  const isDiameters = bySize.some(({ size }) => size.isDiameter);
  const sized = (bySize.length >= LEAST_SIZES ? bySize : []).map(({ column, size: { size } }) => ({
    column,
    size: isDiameters ? size.replace(NUMBER_SIGN, "") : size,
  }));
  return {
    left: found[0]?.column ?? 0,
    right: found[found.length - 1]?.column ?? 0,
    columns,
    ignored,
    bySize: sized,
    unknown: spare
      .filter(({ column, isKnown }) => !isKnown && !sized.some((one) => one.column === column))
      .map(({ column, header }) => ({ column, header })),
    again: spare.filter(({ isKnown }) => isKnown).map(({ column, header }) => ({ column, header })),
  };
}

/** "No." first of all columns numbers the rows where another column counts the bars; behind them it is a mark. */
function withoutSerials(found: readonly FoundColumn[]): readonly FoundColumn[] {
  // behind a column of names it numbers the bars
  const first = found.find(({ header }) => header.trim() !== "");
  const hasMark = found.some(({ meaning }) => meaning?.kind === "mark");
  const counts = found.filter(({ meaning }) => meaning?.kind === "total" || meaning?.kind === "each");
  const hasCount = counts.some(({ meaning }) => meaning?.serial !== true);
  return found.map((one) => {
    const { meaning, corrected } = one;
    if (meaning?.serial !== true || corrected) return one;
    const isSpare = hasCount || counts.length > 1;
    if (one === first && isSpare) return { ...one, meaning: { ...meaning, kind: "ignored" as const } };
    return hasCount && !hasMark ? { ...one, meaning: { ...meaning, kind: "mark" as const } } : one;
  });
}

/** "No. of", whose noun is left out */
const BARE_COUNT = /^(?:no|nos|nr|number|qty)\.?\s+of\.?$/i;

/** "No. of" counts members where another column counts their bars; where no other counts, it counts the bars. */
function withBarCount(found: readonly FoundColumn[]): readonly FoundColumn[] {
  const isCounted = found.some(({ meaning }) => meaning?.kind === "total" || meaning?.kind === "each");
  if (isCounted) return found;
  return found.map((one) => {
    const { meaning, corrected } = one;
    const isBare = meaning?.kind === "members" && !corrected && BARE_COUNT.test(cleanText(one.header));
    return isBare ? { ...one, meaning: { ...meaning, kind: "total" as const } } : one;
  });
}

const TYPE = /^(?:bend(?:ing)?\s+)?type$/i;

/** Takes out a letter that heads the only leg and is not the first: "b" beside "s" is the width that bars are spread over. */
function loneLetters(columns: HeaderColumn[]): readonly HeaderColumn[] {
  const [leg, another] = columns.filter(({ kind }) => LEG.test(kind));
  if (leg === undefined || another !== undefined || leg.kind === "A" || leg.corrected) return [];
  return columns.splice(columns.indexOf(leg), 1);
}

/** "Type" is the bend's where dimensions stand and no shape does, or where the grade has a column of its own. */
function isShapeType(found: readonly FoundColumn[]): boolean {
  const kinds = found.map(({ meaning }) => meaning?.kind);
  if (kinds.includes("shape")) return false;
  return (kinds.includes("A") && kinds.includes("B")) || kinds.filter((kind) => kind === "grade").length > 1;
}

const LEG = /^[A-K]$/;

/** A user's correction comes first, then words of one meaning, then words that give way; each before such under unknown ones. */
function byPreference(found: readonly FoundColumn[]): readonly FoundColumn[] {
  const rank = ({ corrected, meaning, header }: FoundColumn): number => {
    if (corrected || meaning === null) return corrected ? -1 : 0;
    // a letter stands below whatever heads its legs
    const isOfPart = !LEG.test(meaning.kind) && recogniseHeader(header) === null;
    return (meaning.weak ? 2 : 0) + (isOfPart ? 1 : 0);
  };
  return [...found].sort((one, other) => rank(one) - rank(other));
}

function sizeOver(rows: readonly HeaderRow[], column: number, standard: Standard): SizeNamed | null {
  for (let index = rows.length - 1; index >= 0; index -= 1) {
    const text = rows[index]?.texts.get(column);
    const size = text === undefined ? null : sizeOf(text, standard);
    if (size !== null) return size;
  }
  return null;
}

const LONGEST_SIZE = 40;

/** The bar size that a heading names: "Ø12", "16 mm"; null for other words. */
export function sizeNamed(text: string, standard: Standard): string | null {
  return sizeOf(text, standard)?.size ?? null;
}

interface SizeNamed {
  readonly size: string;
  /** "#12" is no number of any table, but a diameter of many */
  readonly isDiameter: boolean;
}

const NUMBER_SIGN = /^#\s?/;

const AMOUNT_UNIT = /\s*[([](?:m|lm|ml|mtr|cm|mm|kgs?|t|lbs?|ft|\u043c|\u043a\u0433)\.?[)\]]$/iu;

function sizeOf(text: string, standard: Standard): SizeNamed | null {
  if (text.length > LONGEST_SIZE) return null;
  const bare = cleanText(text)
    // a grade may stand before it: "A-IIIN Ø12"
    .replace(/^(?:[^\u00d8]{0,12}\s)?(?:\u00d8|dia)\s*/i, "")
    // what its amounts are in: "Ø8 (m)"
    .replace(AMOUNT_UNIT, "")
    .replace(/\s*(?:mm|\u00d8)$/i, "");
  if (!/^(?:\p{L}{0,2}|#)\s?\d+(?:\.\d)?$|^\d{2}\s?M$|^\d[\d/ ]*"$/u.test(bare)) return null;
  const reading = standard.readSize(bare);
  const own = isRefusal(reading) ? null : (reading.bar?.size ?? null);
  if (own !== null) return { size: own, isDiameter: false };
  // a letter that no standard has before just this size
  const lettered = /^\p{Lu}\s?(\d{1,2})$/u.exec(bare)?.[1];
  if (lettered !== undefined && EVERYDAY_SIZES.value.includes(Number(lettered)))
    return { size: bare, isDiameter: false };
  // two letters of a bar type that no standard held has before all its sizes: "HD19"
  const isSize = sizeElsewhere(bare) !== null || sizeElsewhere(bare.replace(/^\p{Lu}{2}\s?/u, "")) !== null;
  if (isSize) return { size: bare, isDiameter: false };
  const plain = bare.replace(NUMBER_SIGN, "");
  const isDiameter = plain !== bare && EVERYDAY_SIZES.value.includes(Number(plain));
  return isDiameter ? { size: plain, isDiameter } : null;
}
