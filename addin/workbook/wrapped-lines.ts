/**
 * Lines that a text takes in a column of so many characters where it wraps between words. A column's
 * characters are as wide as a digit, which running text on the average is not, so this is rather too many.
 */
export function wrappedLines(text: string, width: number): number {
  const room = Math.max(1, Math.floor(width));
  if (text.length <= room && !text.includes("\n")) return 1;
  let lines = 0;
  for (const line of text.split("\n")) {
    lines += 1;
    let used = 0;
    for (const word of line.split(" ")) {
      if (used > 0 && used + 1 + word.length > room) {
        lines += 1;
        used = 0;
      }
      used += (used === 0 ? 0 : 1) + word.length;
      if (used > room) {
        lines += Math.ceil(used / room) - 1;
        used = used % room || room;
      }
    }
  }
  return lines;
}
