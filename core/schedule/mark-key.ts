/** A mark without its leading zeros, blanks and its own member's name before it: 01, "1 " and B1-01 are "1". */
export function markKey(mark: string, member: string | null): string {
  let bare = mark.trim().toUpperCase();
  if (member !== null && bare.includes("-")) {
    const before = `${member.trim().toUpperCase()}-`;
    if (before !== "-" && bare.startsWith(before)) bare = bare.slice(before.length);
  }
  let start = 0;
  while (bare.charCodeAt(start) === ZERO && isDigitOrLetter(bare.charCodeAt(start + 1))) start += 1;
  return start === 0 ? bare : bare.slice(start);
}

const ZERO = 48;

/** 0 to 9 or A to Z; false past the end. */
function isDigitOrLetter(code: number): boolean {
  return (code >= ZERO && code <= 57) || (code >= 65 && code <= 90);
}
