import type { Bar, Standard } from "../../standards/port";
import type { TableReading, TotalRow } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { type CommaUse, readNumberText } from "../cells/read-number-text";
import { beginsWithWord, endsWithWord, isWord } from "../cells/row-words";
import { sizeElsewhere } from "../cells/size-elsewhere";
import { ROUND_STEEL } from "../evidence/evidence.data";
import { recogniseHeader, unitInHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";

/** Size with masses or lengths but neither mark, shape nor count: sums, not bars. */
export function sumsOnly({ columns }: TableReading): boolean {
  if (!columns.has("size") || columns.has("mark") || columns.has("shape") || columns.has("each"))
    return false;
  if (columns.has("A") || columns.has("members") || columns.has("member")) return false;
  const sums = columns.has("mass") || columns.has("unitMass");
  return sums && !(columns.has("length") && columns.has("total"));
}

/** the sign of a sum, alone or before its unit; "Σ1" and "Σενάζ" are members */
const SIGN_OF_SUM = /^[\u03c3\u2211](?=$|\s?[=:(]|\s(?:kg|t|m)\b)/u;
const WASTAGE = /waste|%|margin|verschnitt|chutes|loss|损耗|wire|contingency/;
const CARRIED = /\b(?:carried|brought) forward\b/;
const SIZE_FIRST = /^(?:\p{L}{0,2}|#)\s?\d{1,2}m?\s*(?:mm)?\s*(?:ø|bars?)?\s+(\p{L}.*)$/u;
/** "B/F sht 1", "Übertrag von Blatt 2" */
const PAGE_OF_SUM = /\s+(?:\p{L}+\s+){0,3}(?:no\s*)?\d{1,3}$/u;
const MOST_WORDS_BEFORE = 4;
const LONGEST_LABEL = 60;
/** what the sum is in: "Sivu 2 yhteensä kg", "Kopā (t)" */
const UNIT_BEHIND = /\s+[([]?(?:kgs?|t|lbs?|m|кг|т|м|كجم|كغم|طن|ק\s?ג|กก|公斤|吨|噸)[)\]]?$/;

/**
 * What kind of sum the first words of a row make it; null where they make it none. Without a number
 * beside them only the bare word counts: "Total station, ground floor" is a member.
 */
export function totalKind(
  plains: readonly string[],
  hasNumbers: boolean,
): "total" | "subtotal" | "carried" | "wastage" | null {
  for (const label of plains) {
    if (label.length > LONGEST_LABEL) continue;
    const plain = label.replace(UNIT_BEHIND, "");
    if (isWord("carried", plain.replace(PAGE_OF_SUM, ""))) return "carried";
    if (!hasNumbers && !isWord("total", plain) && !isWord("subtotal", plain) && !isWord("carried", plain))
      continue;
    if (beginsWithWord("subtotal", plain)) return "subtotal";
    if (isWord("carried", plain) || CARRIED.test(plain)) return "carried";
    if (beginsWithWord("wastage", plain) && WASTAGE.test(plain)) return "wastage";
    if (beginsWithWord("total", plain) || SIGN_OF_SUM.test(plain)) return "total";
    // "#3 total ft", "R10 total"
    const behindSize = SIZE_FIRST.exec(plain)?.[1];
    if (hasNumbers && behindSize !== undefined && beginsWithWord("total", behindSize)) return "subtotal";
    const isShort = plain.split(" ").length <= MOST_WORDS_BEFORE;
    const isSum = endsWithWord("total", plain) || endsWithWord("subtotal", plain);
    if ((isShort || /total$/.test(plain)) && isSum) return "subtotal";
  }
  return null;
}

const SUMMED: ReadonlySet<string> = new Set(["mass", "unitMass", "totalLength", "length"]);
const NUMBER = /^[-+]?[\d.,'\u2019\s]*\d\s*%?$/;

/**
 * True where a row holds a label that names what columns sum ("Länge m", "Poids (kg)") and numbers, or
 * numbers under several bar sizes at once, which no single bar has.
 */
export function isFootRow(
  cells: readonly Cell[],
  filled: readonly number[],
  { bySize }: Pick<TableReading, "bySize">,
): boolean {
  let labels = 0;
  let numbers = 0;
  let underSizes = 0;
  let namesSum = false;
  for (const column of filled) {
    const cell = cells[column];
    if (typeof cell === "number" || (typeof cell === "string" && NUMBER.test(cleanText(cell)))) {
      numbers += 1;
      if (bySize?.some((one) => one.column === column) === true) underSizes += 1;
    } else if (typeof cell === "string") {
      if (labels > 0 && isUnitAlone(cell)) continue;
      labels += 1;
      if (SUMMED.has(recogniseHeader(cell)?.kind ?? "")) namesSum = true;
    }
  }
  if (labels > 2 || numbers === 0) return false;
  return namesSum || (underSizes > 1 && underSizes >= numbers - 1);
}

/** Numbers of several bar sizes at once, and all of the row. */
export function isUnderSizes(
  cells: readonly Cell[],
  filled: readonly number[],
  { bySize = [] }: Pick<TableReading, "bySize">,
): boolean {
  const numbers = filled.filter((column) => typeof cells[column] === "number");
  return numbers.length > 1 && numbers.every((column) => bySize.some((one) => one.column === column));
}

function isUnitAlone(cell: string): boolean {
  return unitInHeader(cell) !== null && recogniseHeader(cell) === null;
}

/** The numbers of a sum's row, by column, as they are typed. */
export function totalRow(
  cells: readonly Cell[],
  row: number,
  filled: readonly number[],
  label: string,
  kind: NonNullable<TotalRow["kind"]>,
  comma: CommaUse,
): TotalRow {
  const numbers: { column: number; value: number }[] = [];
  // "0,222 | 1,580": one of them says how all are written
  const isDecimal = filled.some((column) => DECIMAL_COMMA.test(String(cells[column] ?? "")));
  const own = isDecimal && comma === "thousands" ? "decimal" : comma;
  for (const column of filled) {
    const cell = cells[column];
    const value = typeof cell === "string" ? readNumberText(cleanText(cell), own) : cell;
    if (typeof value === "number" && Number.isFinite(value)) numbers.push({ column, value });
  }
  return { row, label, cells: numbers, kind };
}

const DECIMAL_COMMA = /^\s*(?:0,\d+|\d+,\d{1,2})\s*$/;

const MASS_UNIT = /^\s*[([]?(?:kgs?|lbs?|t|tons?|tonnes?|mt|кг|т)[)\]]?\.?\s*$/i;

/** True for a row of words alone that names sizes beside lengths or masses, and no mark, shape or count of members; or members beside masses. */
export function headsSums(cells: readonly Cell[], filled: readonly number[]): boolean {
  if (filled.length < 2) return false;
  const kinds = new Set<string>();
  for (const column of filled) {
    const cell = cells[column];
    if (typeof cell !== "string") return false;
    const kind = recogniseHeader(cell)?.kind ?? (MASS_UNIT.test(cell) ? "mass" : undefined);
    if (kind !== undefined) kinds.add(kind);
    // what is summed is named first, if not by size then by member, floor or anything else, and nothing but amounts behind it
    else if (column !== filled[0]) kinds.add("");
  }
  if (kinds.has("mass") && [...kinds].every((kind) => OF_MEMBERS.has(kind))) return true;
  const isOfBars = ["mark", "each", "members", "shape", "A", "B"].some((kind) => kinds.has(kind));
  if (!kinds.has("size") || isOfBars) return false;
  // bars of a size and what they weigh: one bar's length alone makes it a list
  if (kinds.has("total")) return kinds.has("mass") && !kinds.has("length");
  return ["mass", "unitMass", "totalLength", "length"].some((kind) => kinds.has(kind));
}

/** what a summary by member, floor or the like has over its columns */
const OF_MEMBERS: ReadonlySet<string> = new Set([
  "member",
  "members",
  "pour",
  "each",
  "total",
  "totalLength",
  "mass",
]);

const MOST_WORDS = 3;
const LEAST_SIZES = 3;
/** the same beside a word that says that they are sizes */
const LEAST_HEADED = 2;
/** and where neither such a word nor the standard says so of each */
const LEAST_UNHEADED = 4;
const LONGEST_SIZE = 8;

/** The bar sizes of a row that is a head of sums by size, rising; null where the row is none. */
export function sizesInRow(
  cells: readonly Cell[],
  filled: readonly number[],
  standard: Standard,
): readonly { readonly size: string; readonly column: number }[] | null {
  const sizes: { size: string; column: number }[] = [];
  let words = 0;
  let before = 0;
  let gradeBefore = "";
  let isOfGrades = false;
  // "Dia | 8 | 14 | 18": round steel that the standard in force does not hold, where words say that these are sizes
  const saysSizes = [filled[0], filled.at(-1)].some((column) => {
    const cell = cells[column ?? -1];
    return typeof cell === "string" && recogniseHeader(cell)?.kind === "size";
  });
  let owned = 0;
  let hasFigure = false;
  for (const column of filled) {
    const [grade, cell] = withoutGrade(cells[column]);
    const own = typeof cell === "string" || typeof cell === "number" ? barNamed(cell, standard) : null;
    const bar = own ?? (typeof cell === "number" ? roundSteel(cell) : null);
    owned += Number(own !== null);
    if (bar === null) {
      words += 1;
      hasFigure ||= /\d/.test(String(cell));
      if (typeof cell === "number" || words > MOST_WORDS) return null;
      continue;
    }
    // the same diameter of another bar type may follow: R10, Y10
    const label = String(cell).trim();
    const isAgain = bar.diameter === before && sizes[sizes.length - 1]?.size !== label;
    if (bar.diameter <= before && !isAgain) {
      if (grade === gradeBefore) return null;
      isOfGrades = true;
    }
    gradeBefore = grade;
    before = bar.diameter;
    sizes.push({ size: label, column });
  }
  if (sizes.length < (saysSizes ? LEAST_HEADED : LEAST_SIZES)) return null;
  // without a word for them, most are bars of the standard, and no figure stands among them
  const isSure = saysSizes || owned === sizes.length;
  if (!isSure && (owned * 2 <= sizes.length || sizes.length < LEAST_UNHEADED || hasFigure)) return null;
  // where sizes begin anew with each grade, a column is of no size alone
  return isOfGrades ? sizes.map(({ column }) => ({ size: String(cells[column]).trim(), column })) : sizes;
}

function roundSteel(diameter: number): Pick<Bar, "diameter"> | null {
  return ROUND_STEEL.value.diameters.includes(diameter) ? { diameter } : null;
}

/** a grade before the sign of the diameter: "A500C \u00d812" */
const GRADED = /^([^\u00d8]{0,12}) ?(\u00d8 ?\d.*)$/;

/** The grade that stands before the sign of a diameter, and the rest. */
function withoutGrade(cell: Cell | undefined): readonly [grade: string, rest: Cell | undefined] {
  if (typeof cell !== "string" || cell.length > LONGEST_LABEL) return ["", cell];
  const [, grade = "", size] = GRADED.exec(cleanText(cell)) ?? [];
  return size === undefined || grade.trim() === "" ? ["", cell] : [grade.trim(), size];
}

/** The bar whose size a cell names alone; null for anything else. */
export function barNamed(cell: string | number, standard: Standard): Pick<Bar, "diameter"> | null {
  if (typeof cell === "string" && (cell.length > LONGEST_SIZE || !/\d/.test(cell))) return null;
  const typed = typeof cell === "string" ? cleanText(cell) : String(cell);
  const text = typed.replace(/^\p{L}\s?|\s*mm$/giu, "");
  const own = standard.bars.find(({ size, diameter }) => size === text || String(diameter) === text);
  return own ?? (typeof cell === "string" ? (barElsewhere(typed) ?? roundNamed(typed)) : null);
}

/** "Ø14", "14 mm": round steel that the standard in force does not hold. */
function roundNamed(text: string): Pick<Bar, "diameter"> | null {
  const [, signed, inMm] = ROUND_NAMED.exec(text) ?? [];
  return signed === undefined && inMm === undefined ? null : roundSteel(Number(signed ?? inMm));
}

const ROUND_NAMED = /^(?:\u00d8\s?(\d{1,2})(?:\s?mm)?|(\d{1,2})\s?mm)$/;

const MOST_REMEMBERED = 1000;
const elsewhere = new Map<string, Pick<Bar, "diameter"> | null>();

/** Of another standard's sizes: C18, #7, 15M. Only letters or a sign beside a number name one. */
function barElsewhere(text: string): Pick<Bar, "diameter"> | null {
  if (!/^(?:(?:\p{L}{1,2}|#)\d{1,2}|\d{2}M)$/u.test(text)) return null;
  let known = elsewhere.get(text);
  if (known === undefined) {
    if (elsewhere.size >= MOST_REMEMBERED) elsewhere.clear();
    known = sizeElsewhere(text);
    elsewhere.set(text, known);
  }
  return known;
}
