import { MM_PER_UNIT } from "../units/unit-table";
import { RUN_WORDS, SPACING_BEHIND, SPACING_WORDS } from "./run-words.data";

/** A spacing and the run that it goes over, as a text gives them. */
export interface RunInWords {
  readonly spacing: number;
  readonly run: number;
  /** run over spacing where both name their units; null where the numbers alone stand */
  readonly gaps: number | null;
  /** a word of the text calls the run one */
  readonly isNamed: boolean;
  /** of "3 x 34" before the spacing both numbers; none of a text without a product */
  readonly factors: readonly number[];
}

const LONGEST = 120;
const NUMBER = String.raw`(?:\d{1,3}(?:[ \u00a0\u202f]\d{3})+(?!\d)|\d{1,6}(?:[.,]\d{1,3})?)`;
/** units as other scripts write them */
const UNITS: ReadonlyMap<string, "mm" | "cm" | "m"> = new Map([
  ...(["мм", "مم", "ملم", 'מ"מ', "มม."] as const).map((unit) => [unit, "mm"] as const),
  ...(["см", "سم", 'ס"מ', "ซม."] as const).map((unit) => [unit, "cm"] as const),
  ...(["м", "م", "מ'", "מטר", "ม."] as const).map((unit) => [unit, "m"] as const),
]);
const FOREIGN = [...UNITS.keys()].sort((a, b) => b.length - a.length).join("|");
const UNIT = String.raw`(?:mm|cm|m(?![\p{L}\d])|"|″|in\b(?!\s+\d)|(?:${FOREIGN})(?![\p{L}\d]))`;
const FEET = String.raw`(\d{1,3})\s*['′](?:\s*-?\s*(\d{1,2})\s*["″])?`;
/** scripts without spaces between words begin one anywhere */
const BEGIN = String.raw`(?<![\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Arabic}\p{Script=Hebrew}])`;
/** "T10-200": bars of 10 at 200, as British lists write them */
const OF_SIZE = String.raw`(?<=(?:[ØøΦφ⌀∅]|(?<!\p{L})(?:H|T|Y|R|N|D|B|C|HA|HD|DB)\s?)\d{1,2}\s?)[-–](?=\s?\d{2,3}(?![\d.,]))`;
const EVERY = [...SPACING_WORDS.value].sort((a, b) => b.length - a.length).join("|");
const SPACED = new RegExp(
  String.raw`(?:@|(?<![\p{L}\d])[cks]\s*/\s*[cks](?!\p{L})|(?<![\p{L}\d])c\s*/|(?<![\p{L}\d])[cks](?=\d{3}(?![\d.,]))|(?<![\d\p{L}/])/|(?<=[ØøΦφ]\s?\d{1,2}\s?)/|${OF_SIZE}|(?<!\p{L})[es]\s?=|${BEGIN}(?:${EVERY})(?:\s|[.=:]+\s*))\s*(${NUMBER})\s*(${UNIT})?`,
  "iu",
);
/** "200 crs over 6600": the spacing before its word, where a run is named behind it */
const BEHIND = [...SPACING_BEHIND.value].sort((a, b) => b.length - a.length).join("|");
const SPACED_BEHIND = new RegExp(
  String.raw`(?<![\d.,])(${NUMBER})\s*(${UNIT})?\s*(?:${BEHIND})(?!\p{L})`,
  "iu",
);
/** "3 x 34": members and the bars of each */
const PRODUCT = /(?<![\d.,])(\d{1,3})\s*[x\u00d7*]\s*(\d{1,3})(?!\d|[.,]\d)/u;
const WORDS = [...RUN_WORDS.value].sort((a, b) => b.length - a.length).join("|");
const OVER = new RegExp(
  String.raw`${BEGIN}(?:(?:${WORDS})\.?\s*[:=]?|[lb]\s?=)\s*(?:${FEET}|(${NUMBER})\s*(${UNIT})?)`,
  "iu",
);
/** the run alone, with its unit: "Ø8/15 short way, 4.50 m" */
const ALONE = new RegExp(String.raw`[,;]\s*()()(${NUMBER})\s*(m)(?![\p{L}\d])`, "iu");
/** the run before the spacing: "660 c/20", "L=6,60 c/20" */
const BEFORE = new RegExp(String.raw`(?:^|[\s=:])()()(${NUMBER})\s*(${UNIT})?\s*$`, "iu");
/** the run before the size: "4.50 m, Ø10/15" */
const BEFORE_SIZE = new RegExp(
  String.raw`(?<![\d.,])()()(${NUMBER})\s*(m|cm)\s*[,;]\s*[ØøΦφ⌀∅]\s*\d{1,2}\s*$`,
  "iu",
);
/** a run in feet needs no word of its own: "@ 12\" O.C. IN 40'-0\"" */
const IN_FEET = new RegExp(String.raw`(?<!\p{L})in\s+${FEET}()()`, "iu");
/** "@200 in 9000", and no "in 2 layers" */
const IN_MM = /(?<!\p{L})in\s+()()(\d{3,6}(?![\d.,]))\s*(mm)?/iu;
const INCHES_OF_FOOT = 12;

/** the run before its word: "9.0 m run" */
const NAMED_BEHIND = new RegExp(
  String.raw`(?<![\d.,])()()(${NUMBER})\s*(${UNIT})\s+(?:${WORDS})(?!\p{L})`,
  "iu",
);
/** how the count was worked out: "7.50/0.15+1" */
const SUM = /(?<![\d.,/])(\d{1,6}(?:[.,]\d{1,3})?)\s*\/\s*(\d{0,4}(?:[.,]\d{1,3})?)\s*\+\s*1(?![\d.,])/;

/**
 * The spacing and the run of a text; null of one that does not name both.
 *
 * @example runInWords("at 250 c/c over 4.25 m") // { spacing: 250, run: 4.25, gaps: null, isNamed: true, factors: [] }
 */
export function runInWords(text: string): RunInWords | null {
  if (text.length > LONGEST || !/\d\D+\d/.test(text)) return null;
  const [, whole, part] = SUM.exec(text) ?? [];
  if (whole !== undefined && numberOf(part) > 0) {
    const [run, spacing] = [numberOf(whole), numberOf(part)];
    return { spacing, run, gaps: run / spacing, isNamed: true, factors: [] };
  }
  const ahead = SPACED.exec(text);
  const spaced = ahead ?? SPACED_BEHIND.exec(text);
  if (spaced === null) return null;
  const rest = text.slice(spaced.index + spaced[0].length);
  if (SPACED.test(rest)) return null;
  const before = text.slice(0, spaced.index);
  const named = OVER.exec(rest) ?? IN_FEET.exec(rest) ?? IN_MM.exec(rest) ?? OVER.exec(before);
  if (ahead === null && named === null) return null;
  const over = named ?? ALONE.exec(rest) ?? BEFORE.exec(before) ?? BEFORE_SIZE.exec(before);
  if (over === null) return null;
  const [spacing, run] = [measureOf(spaced[1], spaced[2]), runOf(over)];
  if (!(spacing.value > 0) || !(run.value > 0)) return null;
  const gaps = gapsOf(run, spacing);
  return {
    spacing: spacing.value,
    run: run.value,
    gaps,
    isNamed: named !== null,
    factors: factorsIn(before),
  };
}

function factorsIn(text: string): readonly number[] {
  return (PRODUCT.exec(text) ?? []).slice(1).map(Number);
}

/** A number with its unit, null where none is written. */
export interface Measure {
  readonly value: number;
  readonly unit: "mm" | "cm" | "m" | "in" | null;
}

/** The one spacing of a text: "E\u00d810@15"; null of none, and of several. */
export function spacingInWords(text: string): Measure | null {
  if (text.length > LONGEST || !/\d/.test(text)) return null;
  const spaced = SPACED.exec(text);
  if (spaced === null || SPACED.test(text.slice(spaced.index + spaced[0].length))) return null;
  const spacing = measureOf(spaced[1], spaced[2]);
  return spacing.value > 0 ? spacing : null;
}

const ALL = new RegExp(String.raw`^[^\d]{0,6}(${NUMBER})\s*(${UNIT})?(?:\s*c\s*/\s*c)?\s*$`, "iu");

const FEET_ALONE =
  /^\s*(\d{1,3})\s?['\u2032\u2019]\s?-?\s?(?:(\d{1,2}(?:\.\d+)?)\s?(?:["\u2033\u201d]|''))?\s*$/;

/** The one number of a text, whatever sign stands with it: "@200", "2,40 m", "150 c/c", "5'-6"". */
export function measureAlone(text: string): Measure | null {
  const [, feet, inches] = (text.length > LONGEST ? null : FEET_ALONE.exec(text)) ?? [];
  if (feet !== undefined) return { value: Number(feet) * INCHES_OF_FOOT + Number(inches ?? 0), unit: "in" };
  const [, number, unit] = (text.length > LONGEST ? null : ALL.exec(text)) ?? [];
  const measure = measureOf(number, unit);
  return measure.value > 0 ? measure : null;
}

/** The run that a text names by a word, without its spacing: "9.0 m run", "over 4.5 m". */
export function runNamed(text: string): Measure | null {
  if (text.length > LONGEST || !/\d/.test(text)) return null;
  const over = NAMED_BEHIND.exec(text) ?? OVER.exec(text);
  const run = over === null ? null : runOf(over);
  return run !== null && run.value > 0 && run.unit !== null ? run : null;
}

/** Run over spacing where both name their units. */
export function gapsOf(run: Measure, spacing: Measure): number | null {
  if (run.unit === null || spacing.unit === null) return null;
  return (run.value * MM_PER_UNIT[run.unit]) / (spacing.value * MM_PER_UNIT[spacing.unit]);
}

function runOf([, feet, inches, plain, unit]: RegExpExecArray): Measure {
  if (feet === undefined || feet === "") return measureOf(plain, unit);
  return { value: Number(feet) * INCHES_OF_FOOT + Number(inches ?? 0), unit: "in" };
}

function measureOf(number: string | undefined, unit: string | undefined): Measure {
  return { value: numberOf(number), unit: unitOf(unit) };
}

function numberOf(typed: string | undefined): number {
  return Number((typed ?? "").replace(/\s/g, "").replace(",", "."));
}

function unitOf(typed: string | undefined): "mm" | "cm" | "m" | "in" | null {
  if (typed === undefined) return null;
  const unit = typed.toLowerCase();
  const foreign = UNITS.get(unit);
  if (foreign !== undefined) return foreign;
  return unit === '"' || unit === "″" ? "in" : (unit as "mm" | "cm" | "m" | "in");
}
