/** A mark without its leading zeros, blanks and its own member's name before it: 01, "1 " and B1-01 are "1". */
export function markKey(mark: string, member: string | null): string {
  let bare = mark.trim().toUpperCase();
  if (member !== null && bare.includes("-")) {
    const before = `${member.trim().toUpperCase()}-`;
    if (before !== "-" && bare.startsWith(before)) bare = bare.slice(before.length);
  }
  let start = 0;
  while (bare.charCodeAt(start) === ZERO && isDigitOrLetter(bare.charCodeAt(start + 1))) start += 1;
  return start === 0 ? bare : oneOf(bare.slice(start));
}

const MOST_KEPT = 10_000;
const kept = new Map<string, string>();

/** The text as it was made before: marks that come again in each member are one text and not a hundred thousand. */
function oneOf(text: string): string {
  const known = kept.get(text);
  if (known !== undefined) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(text, text);
  return text;
}

const ZERO = 48;

/** 0 to 9 or A to Z; false past the end. */
function isDigitOrLetter(code: number): boolean {
  return (code >= ZERO && code <= 57) || (code >= 65 && code <= 90);
}
