/** How a size was written. */
export interface SizeText {
  /** upper case: "H", "HD", "#", "" */
  readonly prefix: string;
  readonly number: number;
  /** upper case: "M" of 15M, "MM" where millimetres were written, "" */
  readonly suffix: string;
}

/** Longer texts are no size. */
const LONGEST = 200;
const DIAMETER_WORDS = /^(?:DIAMETER|DIAM\.?|DIA\.?|[ØΦ∅⌀])\s*/u;
const TRAILING_DIAMETER = /\s*(?:DIAMETER|DIAM\.?|DIA\.?|[ØΦ∅⌀])$/u;
const SIZE =
  /^(?:(#|NO\.?|[A-Z]{1,3}(?:\s?\d{3}[A-Z]{0,2})?(?=[\s\-ØΦ∅⌀]*\d))[\s\-ØΦ∅⌀]*)?(\d+(?:\.\d+)?)\s*(MM|M)?\.?$/u;

/** "M.S. 8" is "MS 8". */
function withoutPoints(text: string): string {
  return text.replace(/^(?:[A-Z]\.\s?){2,3}/u, (letters) => `${letters.replace(/[.\s]/g, "")} `);
}

/**
 * The letters and the number of a bar size: "H16", "H 16", "Ø16", "16mm", "dia 16", "#5", "No.5",
 * "15M", "HD16". Null where the text is no size at all. Which bar it is a standard decides.
 */
export function splitSizeText(typed: string): SizeText | null {
  if (typed.length > LONGEST) return null;
  const text = typed
    .trim()
    .toUpperCase()
    .replace(/[\u00A0\u2009]/g, " ");
  const bare = withoutPoints(text).replace(DIAMETER_WORDS, "").replace(TRAILING_DIAMETER, "");
  const parts = SIZE.exec(bare);
  const number = Number(parts?.[2]);
  if (parts === null || !(number > 0)) return null;
  const prefix = (parts[1] ?? "").replace(/\s/g, "");
  return { prefix: prefix.startsWith("NO") ? "#" : prefix, number, suffix: parts[3] ?? "" };
}
