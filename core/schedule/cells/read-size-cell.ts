import type { SizeReading, Standard } from "../../standards/port";
import { isRefusal, refusalText } from "../../units/refusal";
import type { GuessCode } from "../bar-row";
import { ROUND_STEEL } from "../evidence/evidence.data";
import { type Answer, type CellPlace, guessed, type RowContext, sameAsMark, unread } from "./cell-answer";
import { cleanText } from "./clean-text";
import { LONGEST_VALUE, shortened } from "./longest-text";
import { lookalikeDigits } from "./read-number-text";
import { remember } from "./remember";
import { isDitto, isWord, plainWords } from "./row-words";
import { SOFT_METRIC_SIZES } from "./row-words.data";
import { massPerMetreOf, sizeElsewhere } from "./size-elsewhere";
import { sizeInTwoSystems } from "./size-in-two-systems";

/** What a size cell says, a call-off with count, mark, spacing and layer included. */
export interface SizeCell {
  readonly is: "size" | "ditto" | "blank" | "unread" | "same-as";
  readonly size: SizeReading | null;
  readonly sameAs: string | null;
  readonly count: number | null;
  readonly members: number | null;
  readonly each: number | null;
  readonly mark: string | null;
  readonly spacing: number | null;
  readonly layer: string | null;
  readonly guess: GuessCode | null;
  readonly asks: boolean;
  readonly reason: string;
  readonly proposal: string | null;
  /** a grade that stands in the same cell: "12 B500B" */
  readonly grade?: string;
}

const NOTHING: SizeCell = {
  is: "blank",
  size: null,
  sameAs: null,
  count: null,
  members: null,
  each: null,
  mark: null,
  spacing: null,
  layer: null,
  guess: null,
  asks: false,
  reason: "",
  proposal: null,
};
const CALL_OFF =
  /^(?:(\d+(?:\s*[x*+]\s*\d+)*)\s*(?:[x/-]\s*|nos?\.?\s+(?:of\s+)?)?)?((?:[A-Z]{1,2}|\u00d8|#)\s*\d+(?:\s*mm)?|\d{2}M)(?:\s*-\s*(\d+[A-Z]?))?(?:\s*-\s*(\d+))?(?:\s*@?\s*(\d+)?\s*(?:mm)?\s*(?:c\/c|crs|ctrs?|cts|centres|centers))?\s*((?:[TBNF]\d?|EF|NF|FF|EW|ABR)(?:\s+(?:[TBNF]\d?|EF|NF|FF|EW|ABR))*)?$/i;
const AT =
  /^(.*\d.*?)\s*(?:@|c\/c|at)\s*(\d+)\s*(?:mm)?\s*(?:c\/c|crs|ctrs?|cts|centres|centers)?\s*([TBNF]\d?|EF|NF|FF|EW|ABR)?$/i;
/** "12,5", also behind its sign: no size has thousands */
const DECIMAL_COMMA = /^(?:\u00d8\s*)?\d{1,2},\d{1,2}$/;
const TWO_COUNTS = /^(\d+)\s*[x*]\s*(\d+)$/;
const LEAST_SPACING = 50;
/** "34Ø8/10/20", "41Ø8/15": spacings in cm behind a stroke */
const SPACED_IN_CM = /^(.*\u00d8\s*\d{1,2})\s*\/\s*(\d{1,2}(?:[.,]5)?)(?:\s*\/\s*(\d{1,2}(?:[.,]5)?))?$/;
const MM_IN_CM = 10;

const BARE_NUMBER = /^\s*(\d{1,2})\s*$/;

/** Reads the size cells of one column under one standard; answers are remembered by what was typed. */
export function sizeCellReader(
  standard: Standard,
  softMetric: boolean,
  habitual: ReadonlySet<string> = new Set(),
  isNumberSign = false,
  areEighths = false,
) {
  const readerOf = (type: string) =>
    remember<string | number, SizeCell>((cell) => {
      const bare = areEighths
        ? String(cell).replace(BARE_NUMBER, "#$1")
        : isNumberSign && typeof cell === "string"
          ? cell.replace(NUMBER_SIGN, "\u00d8")
          : cell;
      const reading = readSizeCell(bare, type, standard, softMetric);
      const plain = String(cell).trim().replace(",", ".");
      const isHabit = habitual.has(plain) || habitual.has(String(cell).trim());
      if (reading.guess !== "size-from-mass" || !isHabit) return reading;
      // what stands in many rows is no slip
      return sizeOfText(plain, type, standard, softMetric, cell) ?? reading;
    }, unreadCell);
  const untyped = readerOf("");
  const byType = new Map<string, (cell: string | number) => SizeCell>();
  return (cell: string | number, type: string): SizeCell => {
    if (type === "") return untyped(cell);
    const known = byType.get(type);
    if (known !== undefined) return known(cell);
    const reader = readerOf(type);
    byType.set(type, reader);
    return reader(cell);
  };
}

/** The size that a reading stands for, where it is no plain size of the standard. */
export function settleSize(reading: SizeCell, place: CellPlace, context: RowContext): Answer<SizeReading> {
  const { is, size, guess, asks, reason, proposal } = reading;
  if (guess !== null) {
    const offered = proposal === null ? {} : { proposal };
    return guessed(place, size, { guess, asks, reason, ...offered }, context);
  }
  if (is === "size") return { value: size, problem: null };
  if (is === "ditto") return { value: context.above?.size ?? null, problem: null };
  if (is === "same-as") return sameAsMark<SizeReading>(place, reading.sameAs, (bar) => bar.size, context);
  return unread(place, reason);
}

function readSizeCell(
  cell: string | number,
  type: string,
  standard: Standard,
  softMetric: boolean,
): SizeCell {
  if (typeof cell === "number") return sizeOfNumber(cell, type, standard, softMetric);
  const text = sizeInTwoSystems(cleanText(cell));
  const plain = plainWords(text);
  if (plain === "" || isWord("blank", plain)) return NOTHING;
  if (isDitto(plain)) return { ...NOTHING, is: "ditto" };
  if (text.length > LONGEST_VALUE) return unreadCell(`"${shortened(text)}" is no bar size`);
  const number = Number(DECIMAL_COMMA.test(text) ? text.replace(",", ".") : text);
  if (Number.isFinite(number)) return sizeOfNumber(number, type, standard, softMetric, cell);
  return (
    sizeOfText(text, type, standard, softMetric, cell) ??
    spaced(text, standard, softMetric, cell) ??
    callOff(text, standard, softMetric, cell) ??
    byLookalike(text, standard, cell) ??
    notOfStandard(text, cell, standard) ??
    besideGrade(text, standard, softMetric, cell) ??
    unreadSize(text, type, standard)
  );
}

const GRADE_BEHIND = /^(.*\d(?:\s*mm|M|")?)\s+(\p{L}{1,4}[\s.]?\d{3,4}[\p{L}\d]{0,4})$/u;
const GRADE_BEFORE = /^(\p{L}{1,4}[\s.]?\d{3,4}[\p{L}\d]{0,4})\s+(\D{0,4}\d.*)$/u;

/** A size with its grade: "12 B500B", "HRB400 \u00d814". */
function besideGrade(text: string, standard: Standard, softMetric: boolean, typed: string): SizeCell | null {
  const behind = GRADE_BEHIND.exec(text);
  const before = behind === null ? GRADE_BEFORE.exec(text) : null;
  const [size, grade] = behind === null ? [before?.[2], before?.[1]] : [behind[1], behind[2]];
  if (size === undefined || grade === undefined) return null;
  const inside = readSizeCell(size, "", standard, softMetric);
  return inside.is === "size" ? { ...inside, size: retyped(inside.size, typed), grade } : null;
}

/** A bar of another standard: it has a mass, and a rule says that the standard in force has no such bar. */
function notOfStandard(text: string, typed: string, standard: Standard): SizeCell | null {
  const size = sizeElsewhere(text);
  if (size !== null) return sized(size, typed);
  const parts = /^([A-Z]{1,3})[\s-]*(\d+(?:\.\d+)?)$/i.exec(text);
  const plain = parts === null ? null : readOf(standard, parts[2] ?? "");
  if (parts === null || massPerMetreOf(plain) === null) return null;
  const reason = `${parts[1]} is no bar type of ${standard.id}; the diameter was taken from ${parts[2]}`;
  return sized({ ...plain!, prefix: (parts[1] ?? "").toUpperCase() }, typed, {
    guess: "size-prefix",
    reason,
  });
}

function sizeOfNumber(
  number: number,
  type: string,
  standard: Standard,
  softMetric: boolean,
  typed: string | number = number,
): SizeCell {
  if (!(number > 0)) return unreadCell(`"${shortened(String(typed))}" is no bar size`);
  if (!Number.isInteger(number)) {
    const bar = standard.bars.find(
      ({ massPerMetre }) => Math.abs(massPerMetre - number) <= massPerMetre * 0.004,
    );
    // 6.3 is rolled in South America as well
    const isRolled = ROUND_STEEL.value.diameters.includes(number);
    if (bar !== undefined && !isRolled && Math.abs(bar.diameter - number) > 0.2) {
      return asking(readOf(standard, bar.size), typed, {
        guess: "size-from-mass",
        reason: `${number} is the mass of a metre of ${bar.size}, typed where the size belongs`,
      });
    }
  }
  return (
    sizeOfText(String(number), type, standard, softMetric, typed) ??
    unreadSize(String(number), type, standard)
  );
}

function sizeOfText(
  text: string,
  type: string,
  standard: Standard,
  softMetric: boolean,
  typed: string | number,
): SizeCell | null {
  const bare = withoutSymbol(text);
  const whole = type === "" || /^[A-Z#]/i.test(bare) ? bare : `${type}${bare}`;
  if (softMetric) {
    const soft = softMetricOf(bare);
    const reading = soft === null ? null : readOf(standard, `#${soft}`);
    if (reading !== null)
      return sized(reading, typed, {
        guess: "size-prefix",
        reason: `${text} is the soft metric name of #${soft}`,
      });
  }
  const direct = readOf(standard, whole) ?? (whole === bare ? null : readOf(standard, bare));
  if (direct !== null) return sized(direct, typed);
  const parts = /^([A-Z]{1,3})[\s-]*(\d+(?:\.\d+)?)(?:\s*mm)?$/i.exec(bare);
  if (parts === null) return null;
  const prefix = (parts[1] ?? "").toUpperCase();
  if (/^(?:F|O|PHI)$/.test(prefix)) return null;
  const plain = readOf(standard, parts[2] ?? "");
  if (plain === null) return null;
  const reading: SizeReading = { ...plain, prefix };
  if (standard.grades.some(({ prefixes }) => prefixes.includes(prefix))) return sized(reading, typed);
  if (plain.bar === null) return null;
  return sized(reading, typed, {
    guess: "size-prefix",
    reason: `${prefix} is no bar type of ${standard.id}; the diameter was taken from ${parts[2]}`,
  });
}

const SYMBOL_BEFORE = /^(?:dia(?:m(?:eter)?)?\.?|\u00d8|phi)\s*(?=\d)/i;
/** "d16": the small letter of a diameter in formulas; D16 is a bar's name in many lists */
const SMALL_D = /^d\s?(?=\d{1,2}$)/;
const SYMBOL_BEHIND = /(\d)\s*(?:mm)?\s*(?:dia(?:m(?:eter)?)?\.?|\u00d8|phi|#)$/i;

function withoutSymbol(text: string): string {
  return (DECIMAL_COMMA.test(text) ? text.replace(",", ".").replace(/\.0+$/, "") : text)
    .replace(SYMBOL_BEFORE, "")
    .replace(SMALL_D, "")
    .replace(SYMBOL_BEHIND, "$1")
    .replace(/^(\d+)\s*mm\s*\u00d8?$/i, "$1")
    .trim();
}

/** A size or call-off with its spacing behind it: "12T16 @ 200 B1". */
function spaced(text: string, standard: Standard, softMetric: boolean, typed: string): SizeCell | null {
  const at = AT.exec(text);
  if (at === null || !(Number(at[2]) >= LEAST_SPACING)) return null;
  const before = (at[1] ?? "").trim().replace(/\s*(?:c\/c)$/i, "");
  const number = Number(before);
  const inside = Number.isFinite(number)
    ? sizeOfNumber(number, "", standard, softMetric, before)
    : (sizeOfText(before, "", standard, softMetric, before) ??
      callOff(before, standard, softMetric, before) ??
      byLookalike(before, standard, before));
  if (inside === null || (inside.is !== "size" && inside.guess === null)) return null;
  return {
    ...inside,
    size: retyped(inside.size, typed),
    spacing: Number(at[2]),
    layer: at[3]?.toUpperCase() ?? inside.layer,
  };
}

function callOff(text: string, standard: Standard, softMetric: boolean, typed: string): SizeCell | null {
  const spaced = SPACED_IN_CM.exec(text);
  if (spaced !== null) {
    const before = spaced[1] ?? "";
    const inside = callOff(before, standard, softMetric, typed === text ? before : typed);
    // two spacings are two stretches: neither is that of the row
    const spacing = spaced[3] === undefined ? Number((spaced[2] ?? "").replace(",", ".")) * MM_IN_CM : null;
    return inside === null ? null : { ...inside, spacing };
  }
  const parts = CALL_OFF.exec(text);
  if (parts === null) return null;
  // a size that the standard has not is named without its count
  const own = cleanText(parts[2] ?? "");
  const asked = typed === text ? own : typed;
  const size =
    sizeOfText(own, "", standard, softMetric, asked) ??
    (parts[1] === undefined ? null : notOfStandard(own, String(asked), standard));
  if (size === null || size.size === null) return null;
  const first = parts[3];
  const second = parts[4];
  const isSpacing =
    first !== undefined && second === undefined && !first.startsWith("0") && Number(first) >= LEAST_SPACING;
  const spacing = second ?? (isSpacing ? first : undefined) ?? parts[5];
  const counts = parts[1]?.replace(/\s/g, "");
  const product = counts === undefined ? null : TWO_COUNTS.exec(counts);
  return {
    ...size,
    count: counts === undefined ? null : counted(counts),
    members: product === null ? null : Number(product[1]),
    each: product === null ? null : Number(product[2]),
    mark: isSpacing ? null : (first ?? null),
    spacing: spacing === undefined ? null : Number(spacing),
    layer: parts[6]?.toUpperCase() ?? null,
  };
}

function counted(text: string): number {
  return text
    .split("+")
    .reduce((sum, part) => sum + part.split(/[x*]/i).reduce((so, factor) => so * Number(factor), 1), 0);
}

function byLookalike(text: string, standard: Standard, typed: string): SizeCell | null {
  const lost = /^[fFoO]\s*(\d+)$/.exec(text);
  if (lost !== null) {
    const reading = readOf(standard, lost[1] ?? "");
    if (reading !== null && reading.bar !== null) {
      return sized(reading, typed, {
        guess: "size-from-symbol",
        reason: `the letter of "${shortened(text)}" is a diameter sign that lost its font`,
      });
    }
  }
  const metric = /^(\d+)\s*M$/i.exec(text);
  if (metric !== null) {
    const near = nearestMetric(Number(metric[1]), standard);
    if (near === null) return null;
    return asking(readOf(standard, near), typed, {
      guess: "size-not-made",
      reason: `${text} is no bar of ${standard.id}: ${near} or ${metric[1]} mm may be meant`,
    });
  }
  const parts = /^([A-Z]{0,2}?)\s*([\dOoQlISsBZz|]{2,3})$/.exec(text);
  const digits = parts === null ? null : lookalikeDigits(parts[2] ?? "");
  if (parts === null || digits === null) return null;
  const size = sizeOfText(`${parts[1]}${digits}`, "", standard, false, typed);
  if (size?.size === null || size === null || size.size.bar === null) return null;
  return asking(size.size, typed, {
    guess: "lookalike-digit",
    reason: `"${shortened(text)}" may be ${parts[1]}${digits}: a letter stands where a digit belongs`,
  });
}

/** The soft metric name only where nothing else of that number is meant; see `isSoftMetric`. */
function softMetricOf(text: string): number | null {
  const number = Number(/^#?\s*(\d+)$/.exec(text)?.[1] ?? Number.NaN);
  return SOFT_METRIC_SIZES.rows.find(({ metric }) => metric === number)?.inch ?? null;
}

const NUMBER_SIGN = /^\s*#\s*(?=\d)/;

function nearestMetric(number: number, standard: Standard): string | null {
  let best: { size: string; off: number } | null = null;
  for (const { size } of standard.bars) {
    const off = Math.abs(Number(/^(\d+)M$/.exec(size)?.[1] ?? Number.NaN) - number);
    if (off <= 2 && (best === null || off < best.off)) best = { size, off };
  }
  return best?.size ?? null;
}

function readOf(standard: Standard, text: string): SizeReading | null {
  const reading = standard.readSize(text);
  return isRefusal(reading) || !Number.isFinite(reading.diameter) ? null : reading;
}

function retyped(size: SizeReading | null, typed: string | number): SizeReading | null {
  return size === null ? null : { ...size, typed: String(typed) };
}

function sized(
  size: SizeReading,
  typed: string | number,
  extra?: { guess: GuessCode; reason: string },
): SizeCell {
  return {
    ...NOTHING,
    is: "size",
    size: retyped(size, typed),
    guess: extra?.guess ?? null,
    reason: extra?.reason ?? "",
  };
}

function asking(
  size: SizeReading | null,
  typed: string | number,
  extra: { guess: GuessCode; reason: string },
): SizeCell {
  return {
    ...NOTHING,
    is: "unread",
    size: retyped(size, typed),
    ...extra,
    asks: true,
    proposal: size?.bar?.size ?? null,
  };
}

function unreadCell(reason: string): SizeCell {
  return { ...NOTHING, is: "unread", reason };
}

function unreadSize(text: string, type: string, standard: Standard): SizeCell {
  const same = /^(?:same as|as)\s+(?:mark\s+)?([\p{L}\d][\p{L}\d\-/.]*)$/iu.exec(text);
  if (same !== null) return { ...NOTHING, is: "same-as", sameAs: same[1] ?? "" };
  const refusal = standard.readSize(`${type}${text}`);
  return unreadCell(isRefusal(refusal) ? refusalText(refusal) : `"${shortened(text)}" is no bar size`);
}
