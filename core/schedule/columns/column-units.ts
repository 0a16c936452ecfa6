import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import type { ColumnKind, ColumnUnit, UnitReason } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import type { HeaderBlock, HeaderColumn } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { median, numberIn, parsed, type Sample } from "./column-sample";
import { IN_COLUMN_UNIT } from "./in-column-unit";

const FEET = /\d\s*(?:['\u2032]|ft\b|feet)|^\d+\s*-\s*\d/i;
const FEET_MARK = /\d\s*(?:'|"|ft\b|in\b|feet)|^\d+\s*-\s*\d+(?:\s+\d+\/\d+)?$|\d\s\d+\/\d+/i;

/** The unit of a column of lengths, and how it was found. */
export interface Decided {
  readonly unit: ColumnUnit;
  readonly guess: string | null;
  readonly isGuess: boolean;
  readonly asks: boolean;
  readonly by: UnitReason;
  /** a title says it of all lengths */
  readonly ofTitle?: true;
}

/** The unit that words over it or in the title, the dimensions beside it or the size of its numbers give a column. */
export function unitOf(
  column: HeaderColumn,
  sample: Sample,
  comma: CommaUse,
  standard: Standard,
  { byLength, said }: { readonly byLength: ColumnUnit | null; readonly said: ColumnUnit | null },
): Decided {
  if (column.unit !== null && (column.by === "arithmetic" || column.corrected)) {
    const code = column.corrected ? "user" : "arithmetic";
    return { unit: column.unit, guess: null, isGuess: false, asks: false, by: { code } };
  }
  // of what its header names the unit, lengths alone are held against their numbers
  const middle = column.unit !== null && column.kind !== "length" ? null : middleOf(sample, comma);
  if (column.unit !== null) return againstHeader(column, column.unit, middle);
  const inCells = unitInCells(sample);
  if (inCells !== null)
    return { unit: inCells, guess: null, isGuess: false, asks: false, by: { code: "written" } };
  const isBarLength = column.kind === "length" || column.kind === "totalLength";
  if (standard.unit === "in" && (said === null || !isBarLength)) {
    if (middle !== null && middle > 1500) return byMagnitude("mm", middle);
    const guess = "taken in inches, the unit of the standard";
    return { unit: "in", guess, isGuess: false, asks: false, by: { code: "standard" } };
  }
  // no bars lie so close
  if (column.kind === "spacing" && middle !== null && middle < CLOSEST_MM)
    return byMagnitude(middle < 1 ? "m" : "cm", middle);
  if (byLength !== null && byLength !== "mm") {
    const guess = `taken in ${byLength}: so the dimensions make up the lengths`;
    return guessed(byLength, guess, { code: "dimensions" });
  }
  if (middle !== null && byLength === null) {
    if (isBarLength && middle < 20) return byMagnitude("m", middle);
    if (isDimension(column.kind) && middle < 5) return byMagnitude("m", middle);
  }
  // where no length proves them, dimensions are in what the title says, if bars can have them
  const isOfTitle = isDimension(column.kind) && byLength === null && said === "cm" && (middle ?? 0) < 1000;
  if (said !== null && (isBarLength || isOfTitle))
    return { unit: said, guess: null, isGuess: false, asks: false, by: { code: "written" }, ofTitle: true };
  const guess = "taken in mm, the unit of the standard";
  return { unit: "mm", guess, isGuess: false, asks: false, by: { code: "standard" } };
}

/** between bars, axis to axis: concrete has to pass between them (common practice) */
const CLOSEST_MM = 45;

const WITH_UNIT = /^[\d.,\s]+(mm|cm|m)\.?$/i;

/** The unit that all cells write behind their numbers, which stands before that of a title. */
function unitInCells({ texts, numbers }: Sample): ColumnUnit | null {
  const units = new Set(texts.map((text) => WITH_UNIT.exec(cleanText(text))?.[1]?.toLowerCase() ?? ""));
  const [unit = ""] = units;
  return numbers.length === 0 && units.size === 1 && unit !== "" ? (unit as ColumnUnit) : null;
}

function middleOf(sample: Sample, comma: CommaUse): number | null {
  const numbers = sample.numbers.filter((number) => number > 0 && number < 30_000);
  return median(numbers.concat(parsed(sample.texts, comma)));
}

/** The header's word stands unless its numbers make that impossible; then the user is asked. */
function againstHeader(column: HeaderColumn, unit: ColumnUnit, middle: number | null): Decided {
  const stands: Decided = { unit, guess: null, isGuess: false, asks: false, by: { code: "written" } };
  if (middle === null || column.kind !== "length") return stands;
  if (unit === "mm" && middle < 20) {
    return against("mm", "m", middle);
  }
  if (unit === "m" && middle >= 100) {
    return middle < LEAST_MIDDLE_MM ? against("m", "cm", middle, "mm") : against("m", "mm", middle);
  }
  return stands;
}

/** Total lengths to which their own head gives no unit are in metres where in the unit of all most would be shorter than one bar. */
export function unitOfTotals(decided: Decided, totals: Sample, oneMm: number | null): Decided {
  const isOwn = decided.ofTitle !== true && (decided.by.code !== "standard" || decided.unit !== "mm");
  if (isOwn || decided.unit === "m" || oneMm === null) return decided;
  const middle = median(totals.numbers.filter((number) => number > 0));
  const isShort = middle !== null && middle * IN_COLUMN_UNIT[decided.unit] < oneMm;
  return isShort ? byMagnitude("m", middle) : decided;
}

function byMagnitude(unit: ColumnUnit, middle: number): Decided {
  const guess = `taken in ${unit}: the middle value is ${shown(middle)}`;
  return guessed(unit, guess, { code: "magnitude", middle });
}

/** the middle bar of a list in mm is longer, one in cm is not */
const LEAST_MIDDLE_MM = 1200;

function against(written: ColumnUnit, meant: ColumnUnit, middle: number, otherwise?: ColumnUnit): Decided {
  const guess = `the header says ${written}, but the middle value is ${shown(middle)}: ${otherwise === undefined ? `${meant} is meant` : `${meant} is meant, or ${otherwise}`}`;
  return { ...guessed(meant, guess, { code: "against-header", middle }), asks: true };
}

function guessed(unit: ColumnUnit, guess: string, by: UnitReason): Decided {
  return { unit, guess, isGuess: true, asks: false, by };
}

/**
 * The unit in which the dimensions of the sampled rows come nearest to their typed lengths: one for all columns
 * of dimensions that write decimals alike, once `lengths` holds the length.
 */
export function dimensionUnits(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
): (column: HeaderColumn, comma: CommaUse) => ColumnUnit | null {
  const known = new Map<CommaUse, ColumnUnit | null>();
  return (column, comma) => {
    if (!isDimension(column.kind)) return null;
    if (!known.has(comma)) known.set(comma, dimensionUnit(block, rows, lengths, comma));
    return known.get(comma) ?? null;
  };
}

function dimensionUnit(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
): ColumnUnit | null {
  const length = block.columns.find(({ kind }) => kind === "length");
  const factor = lengths.get("length")?.factor;
  if (length === undefined || factor === undefined) return null;
  const dims = block.columns.filter(({ kind }) => isDimension(kind));
  const ratios: number[] = [];
  for (const cells of rows) {
    const whole = numberIn(cells[length.column], comma);
    const sum = dims.reduce((so, dim) => so + (numberIn(cells[dim.column], comma) ?? 0), 0);
    if (whole !== null && whole > 0 && sum > 0) ratios.push(Math.log10((whole * factor) / sum));
  }
  const middle = median(ratios);
  if (middle === null || ratios.length < 2) return null;
  const power = Math.round(middle);
  // where a leg is in no column of its own the rest falls short of the length, by less than another unit would
  if (Math.abs(middle - power) > (power === 0 ? MOST_SHORT : MOST_OFF_UNIT)) return null;
  return power === 3 ? "m" : power === 1 ? "cm" : power === 0 ? "mm" : null;
}

/** powers of ten by which dimensions may differ from a length in the same unit, and in another one */
const MOST_SHORT = 0.42;
const MOST_OFF_UNIT = 0.2;

export function isFeetInches(
  sample: Sample,
  {
    unit,
    said,
    ofLengths,
  }: { readonly unit: ColumnUnit; readonly said: ColumnUnit | null; readonly ofLengths: boolean },
  standard: Standard,
): boolean {
  // the head says inches, and "5 1/4" beside a bare 6 are no feet
  if (said === "in" && !sample.texts.some((text) => FEET.test(text))) return false;
  if (unit !== "in" && unit !== "ft" && standard.unit !== "in") {
    return sample.texts.length > 0 && (share(sample, /'|"|\d\s*ft\b/i) >= 0.5 || isDashed(sample, ofLengths));
  }
  return sample.texts.length > 0 && share(sample, FEET_MARK) >= 0.5;
}

/** "24-06", "3-11" and "8-0" down a column: feet and inches as lists of the United States write them (common practice). */
function isDashed(sample: Sample, ofLengths: boolean): boolean {
  // legs are written as the lengths are
  if (!ofLengths && !sample.texts.some((text) => DASHED_ZERO.test(text))) return false;
  const ofTexts = share({ texts: sample.texts, numbers: [] }, DASHED);
  const dashed = sample.texts.filter((text) => DASHED.test(text)).length;
  // sums below the list are bare numbers of the same column
  const least = dashed >= FEW_DASHED ? LEAST_DASHED : MOST_DASHED;
  return ofTexts >= MOST_DASHED && share(sample, DASHED) >= least;
}

const DASHED = /^\d{1,3}\s*-\s*(?:0?\d|1[01])(?:\s+\d+\/\d+)?$/;
/** what no legs that are added, and no run of marks, would be written with */
const DASHED_ZERO = /-\s*0/;
const MOST_DASHED = 0.6;
const LEAST_DASHED = 0.4;
const FEW_DASHED = 3;

function share(sample: Sample, mark: RegExp): number {
  const marked = sample.texts.filter((text) => mark.test(text)).length;
  return marked / Math.max(1, sample.texts.length + sample.numbers.length);
}

/** The unit of a column of masses by its header or the standard. */
export function massUnitOf(column: HeaderColumn, standard: Standard): ColumnUnit {
  return column.unit ?? (standard.unit === "in" ? "lb" : "kg");
}

function shown(number: number): string {
  return String(Math.round(number * 1000) / 1000);
}

/** True where the typed masses are nearest to a thousandth of count x length x mass per metre, of few rows too. */
export function massesAreTonnes(
  mass: HeaderColumn,
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  standard: Standard,
): boolean {
  const at = (kind: ColumnKind): number => block.columns.find((column) => column.kind === kind)?.column ?? -1;
  const factor = lengths.get("length")?.factor;
  if (factor === undefined) return false;
  const ratios: number[] = [];
  for (const cells of rows) {
    const typed = numberIn(cells[mass.column], "thousands");
    const length = numberIn(cells[at("length")], "thousands");
    const count = numberIn(cells[at("total")], "thousands") ?? numberIn(cells[at("each")], "thousands");
    const size = cells[at("size")];
    const reading = typeof size === "string" || typeof size === "number" ? standard.readSize(size) : null;
    if (reading === null || isRefusal(reading) || reading.bar === null) continue;
    const expected = (count ?? 0) * (((length ?? 0) * factor) / 1000) * reading.bar.massPerMetre;
    if (typed !== null && typed > 0 && expected > 0) ratios.push(typed / expected);
  }
  const middle = median(ratios);
  return middle !== null && middle < 0.01;
}

function isDimension(kind: ColumnKind): boolean {
  return (DIMENSION_LETTERS as readonly ColumnKind[]).includes(kind);
}
