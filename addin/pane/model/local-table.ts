/** Texts as they are; a number is tonnes or metres, to the thousandth. */
export type Line = readonly (string | number)[];

/** A table as text for the spreadsheets of this place: their decimal sign, and the separator given. */
export function tableText(lines: readonly Line[], separator: string, locale?: string): string {
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: 3,
    maximumFractionDigits: 3,
    useGrouping: false,
  });
  const cell = (value: string | number): string =>
    typeof value === "number" ? format.format(value) : quoted(value, separator);
  return lines.map((line) => line.map(cell).join(separator)).join("\r\n");
}

/** A table as a file: `;` between cells where the comma is the decimal sign. */
export function tableCsv(lines: readonly Line[], locale?: string): string {
  const decimal = new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .find(({ type }) => type === "decimal")?.value;
  // the mark by which a spreadsheet knows the letters
  return `\ufeff${tableText(lines, decimal === "," ? ";" : ",", locale)}\r\n`;
}

/** Quoted where it must be; a text that a spreadsheet would take for a formula gets an apostrophe. */
function quoted(text: string, separator: string): string {
  const safe = /^[=+@\t]/.test(text) ? `'${text}` : text;
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
