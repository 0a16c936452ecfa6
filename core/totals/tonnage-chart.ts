import { encodeXml } from "../units/encode-xml";
import { greatest } from "../units/extremes";
import type { Tonnage } from "./tonnage-by-pour";

const ROW = 30;
const BAR = 20;
const LEFT = 120;
const RIGHT = 70;
const LEGEND = 20;
const BELOW_LEGEND = 14;
const WIDTH = 640;
const LETTER = 6.4;
/** colours that differ; the second half of them carries the other words */
const SERIES = 16;

/**
 * Tonnes by pour as an SVG text: one row a pour, stacked by size, to one scale. Colours come from the
 * page by the classes `series-0` to `series-15`, from the eighth on with `other`; sizes stand in the bars too, so that colour is not all
 * there is. It names itself for a screen reader; the numbers belong in a table beside it. `width` is the
 * room it is drawn for, at letters of 12 px; `groupedBy` says what stands for the pours.
 */
export function tonnageChart(tonnage: Tonnage, width = WIDTH, groupedBy = "pour"): string {
  const sizes = [...tonnage.bySize.keys()];
  const most = Math.max(greatest(tonnage.pours.map((pour) => pour.total)), 0);
  const scale = most > 0 ? (width - LEFT - RIGHT) / most : 0;
  const keys = legend(sizes, width);
  const top = keys.lines * LEGEND + BELOW_LEGEND;
  const height = top + tonnage.pours.length * ROW + BAR / 2;
  const rows = tonnage.pours.map((pour, index) => pourRow(pour, sizes, top + index * ROW, scale));
  const title = `Tonnes by ${groupedBy} and size: ${tonnes(tonnage.total)} t in all`;
  return `<svg class="tonnage-chart" viewBox="0 0 ${width} ${height}" role="img" aria-label="${encodeXml(title)}" xmlns="http://www.w3.org/2000/svg"><title>${encodeXml(title)}</title>${keys.svg}${rows.join("")}</svg>`;
}

function pourRow(pour: Tonnage["pours"][number], sizes: readonly string[], y: number, scale: number): string {
  let x = LEFT;
  const parts = sizes.map((size, series) => {
    const mass = pour.bySize.get(size) ?? 0;
    const width = mass * scale;
    if (width <= 0) return "";
    const label =
      width > size.length * LETTER + LETTER
        ? text(x + width / 2, y + BAR / 2, `in-bar${other(series)}`, "middle", size)
        : "";
    const part = `<rect class="${look(series)}" x="${x.toFixed(2)}" y="${y}" width="${width.toFixed(2)}" height="${BAR}"><title>${encodeXml(`${name(pour.pour)}, ${size}: ${tonnes(mass)} t`)}</title></rect>${label}`;
    x += width;
    return part;
  });
  const pourName = text(LEFT - LETTER, y + BAR / 2, "pour", "end", shortened(name(pour.pour)));
  const total = text(x + LETTER, y + BAR / 2, "total", "start", `${tonnes(pour.total)} t`);
  return `${pourName}${parts.join("")}${total}`;
}

/** Keys in a line, or in as many lines as they need. */
function legend(sizes: readonly string[], width: number): { svg: string; lines: number } {
  let x = 0;
  let lines = 1;
  const keys = sizes.map((size, series) => {
    const room = 24 + size.length * LETTER + LETTER;
    if (x > 0 && x + room > width) {
      x = 0;
      lines += 1;
    }
    const y = (lines - 1) * LEGEND;
    const key = `<rect class="${look(series)}" x="${x}" y="${y + 6}" width="12" height="12"/>${text(x + 16, y + 12, "key", "start", size)}`;
    x += room;
    return key;
  });
  return { svg: keys.join(""), lines };
}

function text(x: number, y: number, className: string, anchor: string, words: string): string {
  return `<text class="${className}" x="${x.toFixed(2)}" y="${y}" text-anchor="${anchor}" dominant-baseline="central">${encodeXml(words)}</text>`;
}

const other = (series: number): string => (series % SERIES < SERIES / 2 ? "" : " other");
const look = (series: number): string => `series-${series % SERIES}${other(series)}`;
const name = (pour: string): string => (pour === "" ? "no pour" : pour);
const shortened = (words: string): string =>
  words.length * LETTER > LEFT ? `${words.slice(0, Math.floor(LEFT / LETTER) - 2)}…` : words;
const tonnes = (mass: number): string => mass.toFixed(3);
