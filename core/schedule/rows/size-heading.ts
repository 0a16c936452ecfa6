import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { SizeCell } from "../cells/read-size-cell";
import { holdsWord, plainWords } from "../cells/row-words";
import { massPerMetreOf } from "../cells/size-elsewhere";

/** "#3", "No. 4", "\u00d812", "12 mm", "dia 16": signs of a size wherever they stand */
const SIGNED =
  /(?:^|[\s(])((?:#|n[o\u00ba\u00b0]\.?|[\u00f8\u00d8\u2300\u03a6\u03c6]|dia\.?)\s?\d{1,2}(?:[.,]\d)?(?:\s?mm)?|\d{1,2}(?:[.,]\d)?\s?mm)(?=[\s).,:;]|$)/giu;
/** "N12", "HD16", "10M": a size only beside a word for bars, or alone */
const NAMED = /(?:^|[\s(])(\p{Lu}{1,3}-?\d{1,2}|\d{1,2}M)(?=[\s).,:;]|$)/gu;

/** The one bar size that a heading names: "#3 BARS (0.376 LB/FT)", "N12 bars"; null where it names none or several. */
export function sizeOfHeading(
  typed: string,
  readSize: (cell: string, type: string) => SizeCell,
): string | null {
  if (typed.length > LONGEST_VALUE) return null;
  const text = cleanText(typed);
  const signed = sizesIn(text, SIGNED, readSize);
  if (signed.length > 0) return only(signed);
  const named = sizesIn(text, NAMED, readSize);
  const [one] = named;
  const isAlone = one !== undefined && text.replace(/[\s:.-]+$/, "") === one;
  return isAlone || holdsWord("bars", plainWords(text)) ? only(named) : null;
}

function only([one, another]: readonly string[]): string | null {
  return another === undefined ? (one ?? null) : null;
}

function sizesIn(
  text: string,
  pattern: RegExp,
  readSize: (cell: string, type: string) => SizeCell,
): readonly string[] {
  const found = [...text.matchAll(pattern)].map(([, size = ""]) =>
    size.replace(/^n[o\u00ba\u00b0]\.?\s?/i, "#"),
  );
  return [...new Set(found)].filter((size) => massPerMetreOf(readSize(size, "").size) !== null);
}
