import type { BoughtLine } from "../engine/printed-page";

const HEADS = ["Size", "Stock length", "Bars", "kg"];

/** What a buyer orders, a line each size and length; kilograms whole, as an order says them. */
export function orderText(lines: readonly BoughtLine[], separator: string): string {
  return [HEADS, ...lines.map(({ size, stock, bars, kilograms }) => [size, stock, bars, kilograms])]
    .map((line) => line.map((cell) => quoted(cell, separator)).join(separator))
    .join("\r\n");
}

/** The order as a file for the spreadsheets of this place: `;` where the comma is the decimal sign. */
export function orderCsv(lines: readonly BoughtLine[], locale?: string): string {
  const decimal = new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .find(({ type }) => type === "decimal")?.value;
  // the mark by which a spreadsheet knows the letters
  return `\ufeff${orderText(lines, decimal === "," ? ";" : ",")}\r\n`;
}

function quoted(cell: string, separator: string): string {
  return cell.includes(separator) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
