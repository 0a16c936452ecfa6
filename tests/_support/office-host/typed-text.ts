export type CellValue = string | number | boolean;

export interface TypedCell {
  readonly value: CellValue;
  /** number format that Excel gives the cell of its own accord */
  readonly format?: string;
}

const MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";
/** Excel takes the year of the day it runs; the fake host's day is fixed. */
const YEAR_OF_THE_FAKE_HOST = 2026;

/**
 * What Excel (English, United States) makes of a text written to a cell that is not formatted as text:
 * `"00"` is 0, `"1E5"` 100000, `"1-2"` the second of January, `"(5)"` -5, `"MAR1"` the first of March.
 * Known from Excel's own behaviour (common practice), kept to what a bar schedule can hold.
 */
export function typedText(text: string): TypedCell {
  if (text.startsWith("'")) return { value: text.slice(1) };
  const trimmed = text.trim();
  if (/^(true|false)$/i.test(trimmed)) return { value: trimmed.toLowerCase() === "true" };
  return asNumber(trimmed) ?? asFraction(trimmed) ?? asDate(trimmed) ?? { value: text };
}

function asNumber(text: string): TypedCell | null {
  const match = /^(\()?([+-]?)\$?((?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d*)?(?:e[+-]?\d+)?)(%)?(\))?$/i.exec(text);
  if (match === null || !/\d/.test(text) || (match[1] === undefined) !== (match[5] === undefined))
    return null;
  const size = Number((match[3] ?? "").replaceAll(",", ""));
  if (!Number.isFinite(size) || match[3] === "") return null;
  const signed = match[1] === "(" || match[2] === "-" ? -size : size;
  const scientific = /e/i.test(text) ? { format: "0.00E+00" } : {};
  return match[4] === "%" ? { value: signed / 100, format: "0%" } : { value: signed, ...scientific };
}

function asFraction(text: string): TypedCell | null {
  const match = /^(\d+) (\d+)\/(\d+)$/.exec(text);
  if (match === null || Number(match[3]) === 0) return null;
  return { value: Number(match[1]) + Number(match[2]) / Number(match[3]), format: "# ?/?" };
}

function asDate(text: string): TypedCell | null {
  const numeric = /^(\d{1,2})[-/](\d{1,2})(?:[-/](\d{2}|\d{4}))?$/.exec(text);
  if (numeric !== null) {
    const year = numeric[3] === undefined ? YEAR_OF_THE_FAKE_HOST : fullYear(Number(numeric[3]));
    return dateCell(Number(numeric[1]), Number(numeric[2]), year, numeric[3] === undefined);
  }
  const named =
    new RegExp(`^(${MONTHS})[a-z]*[- ]?(\\d{1,2})$`, "i").exec(text) ??
    new RegExp(`^(\\d{1,2})[- ]?(${MONTHS})[a-z]*$`, "i").exec(text);
  if (named === null) return null;
  const [month, day] = /^\d/.test(named[1] ?? "") ? [named[2], named[1]] : [named[1], named[2]];
  const index = MONTHS.split("|").indexOf((month ?? "").toLowerCase()) + 1;
  return dateCell(index, Number(day), YEAR_OF_THE_FAKE_HOST, true);
}

function dateCell(month: number, day: number, year: number, short: boolean): TypedCell | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return null;
  const serial = Math.round(date.getTime() / 86_400_000) + 25_569;
  return { value: serial, format: short ? "d-mmm" : "m/d/yyyy" };
}

function fullYear(year: number): number {
  if (year >= 100) return year;
  return year < 30 ? 2000 + year : 1900 + year;
}
