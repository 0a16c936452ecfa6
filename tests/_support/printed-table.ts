/** Rows of a table typed in from a page: columns parted by blanks, one line a row. */
export function printedTable(text: string): string[][] {
  return text
    .trim()
    .split("\n")
    .map((line) => line.trim().split(/\s+/));
}
