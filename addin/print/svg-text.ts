import { escapeText } from "./html";

/** One `<text>` of a plot, its height centred on y. */
export function svgText(
  x: number,
  y: number,
  className: string,
  anchor: "start" | "middle" | "end",
  words: string,
): string {
  return `<text class="${className}" x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}" dominant-baseline="central">${escapeText(words)}</text>`;
}
