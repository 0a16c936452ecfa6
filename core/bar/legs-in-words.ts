import { MM_PER_UNIT } from "../units/unit-table";
import type { BarFacts } from "./bar-facts";
import { LEGS_IN_WORDS } from "./identities.data";
import type { SheetFacts } from "./sheet-facts";
import { textColumns } from "./text-columns";

/** A row whose length is not the sum of the legs that its words give, as it is in the other rows of its table. */
export interface OffLegs {
  readonly facts: BarFacts;
  /** column of the words */
  readonly column: number;
  readonly legs: string;
  /** mm, less what the list takes off for bends */
  readonly sum: number;
  /** diameters a bend */
  readonly less: number;
  readonly kept: number;
  readonly tested: number;
}

const NUMBER = String.raw`\d{1,5}(?:[.,]\d{1,3})?`;
/** "2x0,55": a leg that comes again */
const TIMES = String.raw`(?:[1-9]\s?[x×]\s?)?`;
/** corners of a drawn course, as lists in Chinese draw them: 300\u2514 5900 \u2518300 */
const CORNERS = "\u2500-\u257f";
const CHAIN = new RegExp(
  String.raw`(?<![\d.,])${TIMES}${NUMBER}(?:(?:\s*[+|–/-]\s*|\s*[${CORNERS}]+\s*|\s{2,})${TIMES}${NUMBER}){1,7}(?![\d.,])`,
  "i",
);
const PART = new RegExp(`(${TIMES})(${NUMBER})`, "gi");

/** a leg drawn with a stroke of signs: 42|____714____|42 */
const STROKES = /_{2,}|[\u2014\u2015]{2,}/g;

/** What a text writes of legs, without the strokes that draw them. */
function withoutStrokes(text: string): string {
  return text.replace(STROKES, " ").trim();
}

/**
 * Legs that a text joins: "bent 250 + 3700 + 250". Null where it holds other numbers too, which may be hooks or marks.
 *
 * @example legsInWords("0,40+5,20+0,40") // [0.4, 5.2, 0.4]
 * @example legsInWords("2x0,55+0,20") // [0.55, 0.55, 0.2]
 * @example legsInWords("42|____714____|42") // [42, 714, 42]
 */
export function legsInWords(
  text: string,
): { readonly legs: readonly number[]; readonly typed: string } | null {
  if (text.length > LEGS_IN_WORDS.value.longest) return null;
  const plain = withoutStrokes(text);
  const chain = CHAIN.exec(plain)?.[0];
  if (chain === undefined || /\d/.test(plain.replace(chain, ""))) return null;
  const legs = [...chain.matchAll(PART)].flatMap(([, times = "", leg = ""]) =>
    new Array<number>(Number.parseInt(times, 10) || 1).fill(Number(leg.replace(",", "."))),
  );
  return legs.every((leg) => leg > 0) ? { legs, typed: chain } : null;
}

/** Rows that break the habit by which the lengths of a table are the sums of the legs that a column of words gives. */
export function offLegs(sheet: SheetFacts): OffLegs[] {
  const { looked, rows } = LEGS_IN_WORDS.value;
  return sheet.reading.tables.flatMap((table) => {
    if (!table.columns.has("length")) return [];
    for (const column of textColumns(table)) {
      const bars = sheet.bars.filter(({ row }) => row.table === table);
      // few lists have such words, and most need not be looked through
      if (summed(sheet, bars.slice(0, looked), column).length < rows) continue;
      const found = offAmong(summed(sheet, bars, column), alone(sheet, bars, column), column);
      if (found !== null) return found;
    }
    return [];
  });
}

/** The end legs, mm, of rows whose words give legs that make the length; of all tables with such a column. */
export function endsInWords(
  sheet: SheetFacts,
): readonly { readonly facts: BarFacts; readonly legs: string; readonly ends: readonly number[] }[] {
  return sheet.reading.tables.flatMap((table) => {
    if (!table.columns.has("length")) return [];
    for (const column of textColumns(table)) {
      const bars = sheet.bars.filter(({ row }) => row.table === table);
      const { looked, rows } = LEGS_IN_WORDS.value;
      if (summed(sheet, bars.slice(0, looked), column).length < rows) continue;
      const all = summed(sheet, bars, column);
      const way = wayAmong(all);
      if (way === null) continue;
      return all
        .filter((one) => way.isKept(one, way.mm, way.less))
        .map(({ facts, legs, ends }) => ({ facts, legs, ends: ends.map((end) => end * way.mm) }));
    }
    return [];
  });
}

interface Summed {
  readonly facts: BarFacts;
  readonly legs: string;
  readonly sum: number;
  readonly bends: number;
  readonly ends: readonly number[];
  readonly least: number;
  /** what rounding may have left out of the legs, in their unit */
  readonly rounded: number;
  readonly length: number;
}

function summed(sheet: SheetFacts, bars: readonly BarFacts[], column: number): readonly Summed[] {
  return bars.flatMap((facts) => {
    const text = sheet.sheet.cell(facts.row.row, column);
    const { length } = facts.row;
    const found = typeof text === "string" && length !== null && length > 0 ? legsInWords(text) : null;
    if (found === null || length === null) return [];
    const sum = found.legs.reduce((so, leg) => so + leg, 0);
    return [
      {
        ...{ facts, legs: found.typed, sum, bends: found.legs.length - 1, length },
        ...{ least: Math.min(...found.legs), rounded: roundedOff(found) },
        // legs that come again are not written as the bar runs
        ends: /[x×]/i.test(found.typed) ? [] : [found.legs[0] ?? 0, found.legs.at(-1) ?? 0],
      },
    ];
  });
}

const LONE = new RegExp(String.raw`^\s*${NUMBER}\s*$`);

/** Rows whose text is one number, which where the others join legs is a straight bar, or one whose legs are left out. */
function alone(sheet: SheetFacts, bars: readonly BarFacts[], column: number): readonly Summed[] {
  return bars.flatMap((facts) => {
    const cell = sheet.sheet.cell(facts.row.row, column);
    const text =
      typeof cell === "string" && cell.length <= LEGS_IN_WORDS.value.longest ? withoutStrokes(cell) : "";
    const { length } = facts.row;
    if (!LONE.test(text) || length === null || length <= 0) return [];
    const leg = Number(text.replace(",", "."));
    const rounded = roundedOff({ legs: [leg], typed: text });
    return [{ facts, legs: text.trim(), sum: leg, bends: 0, ends: [], least: leg, rounded, length }];
  });
}

/** Half of the last decimal of each leg; whole numbers of mm are not rounded. */
function roundedOff({ legs, typed }: { readonly legs: readonly number[]; readonly typed: string }): number {
  const decimals = /[.,](\d+)/.exec(typed)?.[1]?.length ?? 0;
  return decimals === 0 ? 0 : (legs.length * 10 ** -decimals) / 2;
}

/** Diameters that a list takes off for each bend, where it gives what is cut: common practice. */
const DEDUCTIONS = [0, 1, 1.5, 1.75, 2, 2.5, 3] as const;
const UNITS = ["mm", "cm", "m", "in", "ft"] as const;

const DEDUCTED_SHARE = 0.8;
const ROUNDED_OFF = 0.02;
/** mm: a shorter figure is no leg */
const SHORTEST_LEG = 20;
/** mm: a shorter number on its own is a shape or a size */
const SHORTEST_STRAIGHT = 200;

/** How most rows of a column make their lengths of the legs that they write; null where they make none. */
function wayAmong(all: readonly Summed[]) {
  const { rows, share, within } = LEGS_IN_WORDS.value;
  let best = { mm: 1, less: 0, kept: 0, off: Infinity };
  const made = ({ sum, bends, facts }: Summed, mm: number, less: number): number =>
    sum * mm - less * bends * (facts.diameter ?? 0);
  const isKept = (one: Summed, mm: number, less: number): boolean =>
    Math.abs(one.length - made(one, mm, less)) <= within + one.rounded * mm;
  for (const unit of UNITS) {
    const mm = MM_PER_UNIT[unit];
    for (const less of DEDUCTIONS) {
      const keeping = all.filter((one) => isKept(one, mm, less));
      const kept = keeping.length;
      const off = keeping.reduce((so, one) => so + Math.abs(one.length - made(one, mm, less)), 0);
      // the plain sum where it does as well
      const isBetter = kept > best.kept || (kept === best.kept && best.less > 0 && off < best.off);
      if (isBetter) best = { mm, less, kept, off };
    }
  }
  const { mm, less, kept } = best;
  if (kept < rows || kept < (less === 0 ? share : DEDUCTED_SHARE) * all.length) return null;
  return { mm, less, kept, made, isKept };
}

function offAmong(all: readonly Summed[], lone: readonly Summed[], column: number): OffLegs[] | null {
  const way = wayAmong(all);
  if (way === null) return null;
  const { mm, less, kept, made, isKept } = way;
  const isOff = (one: Summed): boolean => {
    if (isKept(one, mm, less) || one.least * mm < SHORTEST_LEG) return false;
    const off = Math.abs(one.length - made(one, mm, less));
    // with strokes between them they may be a diameter, a pitch and turns
    if (one.legs.includes("/") && (off > made(one, mm, less) || off > one.length)) return false;
    // lengths after deductions are rounded each its own way
    return less === 0 || (off > ROUNDED_OFF * one.length && off < one.length);
  };
  const isOffAlone = (one: Summed): boolean => one.sum * mm >= SHORTEST_STRAIGHT && isOff(one);
  return [...all.filter(isOff), ...lone.filter(isOffAlone)].map((one) => ({
    ...{ facts: one.facts, column, legs: one.legs, less, kept, tested: all.length },
    sum: made(one, mm, less),
  }));
}
