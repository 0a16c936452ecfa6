/** "1)", "(2)", "*", "¹": a mark that points to a note; the square of a unit is none */
const NOTE_MARK = /(?:\s*[*\u2020\u2021]+\)?|(?<=\p{L}{3}|[.)\]])\s?[\u00b9\u00b2\u00b3]\)?|\s+\(?\d\))$/u;
const COLON = /\s*[:\uff1a]$/;
const WORD = /\p{L}/u;

/** the places where a word may be parted */
const SOFT = /[\u00ad\u200b]/g;

/** The words of a head without the colon or the mark of a note that stands behind them. */
export function headText(typed: string): string {
  const text = typed.replace(SOFT, "").trim();
  const bare = text.replace(COLON, "").replace(NOTE_MARK, "");
  return WORD.test(bare) ? bare : text;
}
