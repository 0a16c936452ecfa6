import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import { isDitto, isWord } from "../cells/row-words";
import { type Cell, isCellError } from "../sheet";
import { CALLED_OFF_SIZES } from "./evidence.data";

/** What a cell holds as far as arithmetic is concerned. */
export type ValueKind = "blank" | "number" | "size" | "feetInches" | "counted" | "range" | "text" | "ditto";

/** A cell's number and what kind of number it is. */
export interface CellValue {
  readonly kind: ValueKind;
  /** NaN where there is none; feet and inches are in inches, a range gives its middle */
  readonly value: number;
  /** the spacing of "12 @ 200" */
  readonly second: number;
  /** how a size was written: "#5", "15M", "H16" */
  readonly tag: "inch" | "canada" | "prefix" | null;
  /** what was typed, of texts and sizes: labels are told apart by it */
  readonly label: string | null;
}

const BLANK: CellValue = { kind: "blank", value: Number.NaN, second: Number.NaN, tag: null, label: null };
const DITTO: CellValue = { ...BLANK, kind: "ditto" };
const FEET = /^(\d+)\s*'\s*-?\s*(?:(\d+(?:\.\d+)?)?(?:\s*(\d+)\/(\d+))?\s*"?)?$/;
const DASHED_FEET = /^(\d+)\s*-\s*(\d{1,2}(?:\.\d+)?)(?:\s+(\d+)\/(\d+))?\s*"?$/;
const INCHES = /^(\d+(?:\.\d+)?)?(?:\s*(\d+)\/(\d+))?\s*"$/;
const COUNTED = /^(\d+)\s*(?:nos?\.?\s*)?@\s*(\d+(?:[.,]\d+)?)/i;
/** "2 x 12": members times bars in each */
const PRODUCT = /^(\d{1,4})\s*[x*\u00d7\u0445]\s*(\d{1,4})$/i;
const SPACING_ALONE = /^@\s*(\d+(?:[.,]\d+)?)$/;
const SIZE = /^(?:[#\u00d8]|n[o\u00b0]\.?|\p{L}{1,3}\.?)?\s?-?\s?\u00d8?\s*(\d{1,2}(?:[.,]5)?)\s*(m|mm)?$/iu;
/** a grade in the cell of the size: "12 B500B", "HRB400 \u00d814" */
const GRADE =
  /^\p{L}{1,4}\.?\d{3,4}[\p{L}\d]{0,4}\s+(?=\D{0,4}\d)|(?<=\d)\s+\p{L}{1,4}\.?\d{3,4}[\p{L}\d]{0,4}$/u;
const RANGE = /^(\d[\d.,]*)\s*(?:-|to|\.\.+|\u00f7|~|bis|\u00e0|a)\s*(\d[\d.,]*)/i;
const WITH_WORD = /^(\d[\d.,]*)\s*\p{L}{1,4}\.?$/u;
const INCHES_IN_FOOT = 12;
/** 5/8" is the bar of five eighths; nothing thicker in inches is a bar */
const EIGHTHS = 8;
const THICKEST = 1.5;

/** Reads cells for arithmetic under one habit of writing decimals; texts are remembered. */
export function valueReader(decimalComma: boolean): (cell: Cell | undefined) => CellValue {
  const known = new Map<string, CellValue>();
  return (cell) => {
    if (typeof cell === "number") return Number.isFinite(cell) ? numberValue(cell) : BLANK;
    if (cell === null || cell === undefined || isCellError(cell)) return BLANK;
    if (typeof cell !== "string") return { ...BLANK, kind: "text", label: String(cell) };
    let value = known.get(cell);
    if (value === undefined) {
      value = readText(cell, decimalComma);
      known.set(cell, value);
    }
    return value;
  };
}

/** The number of a text in one of two habits; NaN where it is none. */
function numberOfText(text: string, decimalComma: boolean): number {
  const bare = text.replace(/(?<=\d)[ '](?=\d{3}(?:\D|$))/g, "");
  if (!/^[-+]?[\d.,]*\d[\d.,]*$/.test(bare)) return Number.NaN;
  const plain = decimalComma
    ? bare.replace(/\.(?=\d{3}(?:[.,]|$))/g, "").replace(",", ".")
    : bare.replace(/,(?=\d{3}(?:[.,]|$))/g, "").replace(/,/g, ".");
  return plain.indexOf(".") === plain.lastIndexOf(".") ? Number(plain) : Number.NaN;
}

function numberValue(value: number): CellValue {
  return { kind: "number", value, second: Number.NaN, tag: null, label: null };
}

function readText(typed: string, decimalComma: boolean): CellValue {
  // a longer text is no amount, and reading it could take very long
  if (typed.length > LONGEST_VALUE) return { ...BLANK, kind: "text", label: typed };
  const text = cleanText(typed);
  const plain = text.toLowerCase();
  if (text === "" || isWord("blank", plain)) return BLANK;
  if (isDitto(plain)) return DITTO;
  const number = numberOfText(text, decimalComma);
  if (!Number.isNaN(number)) return numberValue(number);
  const inches = inchesOf(text);
  const eighths = inches * EIGHTHS;
  if (inches <= THICKEST && Number.isInteger(eighths) && eighths > 1 && !text.includes("'"))
    return { ...BLANK, kind: "size", value: eighths, tag: "inch", label: plain };
  if (!Number.isNaN(inches)) return { ...numberValue(inches), kind: "feetInches" };
  return (
    countedOf(text) ??
    sizeOf(text) ??
    calledOff(text) ??
    rangeOf(text, decimalComma) ??
    withWord(text, decimalComma) ?? { ...BLANK, kind: "text", label: plain }
  );
}

function inchesOf(text: string): number {
  const plain = text.replace(/ft\.?|feet/gi, "'").replace(/in\.?|''/gi, '"');
  const feet = FEET.exec(plain) ?? DASHED_FEET.exec(plain);
  if (feet !== null) {
    const beside = Number(feet[2] ?? 0) + fraction(feet[3], feet[4]);
    return beside <= INCHES_IN_FOOT ? Number(feet[1]) * INCHES_IN_FOOT + beside : Number.NaN;
  }
  const inches = INCHES.exec(plain);
  if (inches === null || (inches[1] === undefined && inches[2] === undefined)) return Number.NaN;
  return Number(inches[1] ?? 0) + fraction(inches[2], inches[3]);
}

function fraction(above: string | undefined, below: string | undefined): number {
  if (above === undefined || below === undefined) return 0;
  return Number(below) > 0 ? Number(above) / Number(below) : 0;
}

function countedOf(text: string): CellValue | null {
  const counted = COUNTED.exec(text);
  if (counted !== null) {
    const second = Number((counted[2] ?? "").replace(",", "."));
    return { ...BLANK, kind: "counted", value: Number(counted[1]), second };
  }
  const product = PRODUCT.exec(text);
  if (product !== null) return { ...BLANK, kind: "counted", value: Number(product[1]) * Number(product[2]) };
  const alone = SPACING_ALONE.exec(text);
  return alone === null ? null : numberValue(Number((alone[1] ?? "").replace(",", ".")));
}

function sizeOf(text: string): CellValue | null {
  const bare = text.replace(GRADE, "");
  const size = SIZE.exec(bare);
  if (size === null || (bare !== text && bare.trim() === "")) return null;
  const value = Number((size[1] ?? "").replace(",", "."));
  const isInch = /^(?:#|n[o\u00b0])/i.test(text);
  const isGraded = bare !== text;
  const tag = isInch
    ? "inch"
    : isGraded
      ? "prefix"
      : /^\d+\s*M$/.test(text)
        ? "canada"
        : /^\d/.test(text)
          ? null
          : "prefix";
  return { ...BLANK, kind: "size", value, tag, label: text.toLowerCase() };
}

/** "T16-01-150": type and size, mark and spacing in one text, as British lists call bars off */
const CALLED_OFF = /^[THBRY](\d{1,2})-\d{1,3}(?:-\d{2,3})?$/i;

function calledOff(text: string): CellValue | null {
  const value = Number(CALLED_OFF.exec(text)?.[1]);
  if (!CALLED_OFF_SIZES.value.includes(value)) return null;
  return { ...BLANK, kind: "size", value, tag: "prefix", label: text.toLowerCase() };
}

function rangeOf(text: string, decimalComma: boolean): CellValue | null {
  const range = RANGE.exec(text);
  if (range === null) return null;
  const middle =
    (numberOfText(range[1] ?? "", decimalComma) + numberOfText(range[2] ?? "", decimalComma)) / 2;
  return { ...numberValue(middle), kind: "range" };
}

/** "6 no.", "12 Stk", "850 mm": a word after a number says what is counted, not how many. */
function withWord(text: string, decimalComma: boolean): CellValue | null {
  const worded = WITH_WORD.exec(text);
  if (worded === null) return null;
  const value = numberOfText(worded[1] ?? "", decimalComma);
  return Number.isNaN(value) ? null : numberValue(value);
}
