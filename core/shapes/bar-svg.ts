import type { Point } from "../geometry/point";
import { encodeXml } from "../units/encode-xml";
import type { BarDrawing } from "./bar-drawing";

export interface BarSvgOptions {
  /** in the unit of the page; the drawing keeps its proportions inside */
  readonly width: number;
  readonly height: number;
  /** read out in place of the drawing */
  readonly title: string;
}

/**
 * A drawing as one `<svg>` element. Colours come from the page's `currentColor`, and looks from the
 * classes `bar-drawing-bar`, `-text`, `-note`, `-leader` and `-break`; no style stands in the element,
 * so it may be put into a page with a strict content policy.
 */
export function barSvg(drawing: BarDrawing, options: BarSvgOptions): string {
  const title = encodeXml(options.title);
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="bar-drawing" role="img" aria-label="${title}" ` +
      `width="${number(options.width)}" height="${number(options.height)}" ` +
      `viewBox="0 0 ${number(drawing.width)} ${number(drawing.height)}">`,
    `<title>${title}</title>`,
    ...drawing.strokes.map(
      (stroke) =>
        `<path class="bar-drawing-bar" d="${pathData(stroke)}" fill="none" stroke="currentColor" ` +
        `stroke-width="${number(drawing.barWidth)}" stroke-linejoin="round"/>`,
    ),
    ...drawing.breaks.flatMap(({ at, heading }) => breakMark(at, heading, drawing.barWidth)),
    ...drawing.labels.flatMap(({ text, box, leader }) => [
      leader === null ? "" : thinLine("bar-drawing-leader", leader.from, leader.to),
      textElement("bar-drawing-text", text, box.x + box.width / 2, box.y + box.height / 2, "middle", drawing),
    ]),
    ...drawing.notes.map(({ text, box }) =>
      textElement("bar-drawing-note", text, box.x, box.y + box.height / 2, "start", drawing),
    ),
    "</svg>",
  ];
  return parts.filter((part) => part !== "").join("");
}

function breakMark(at: Point, heading: number, barWidth: number): string[] {
  const half = barWidth / 2 + 4;
  // a stroke leaning by 60 degrees on each side of the gap
  const lean = { x: Math.cos(heading + Math.PI / 3) * half, y: Math.sin(heading + Math.PI / 3) * half };
  return [-3, 3].map((off) => {
    const middle = { x: at.x + Math.cos(heading) * off, y: at.y + Math.sin(heading) * off };
    const from = { x: middle.x - lean.x, y: middle.y - lean.y };
    return thinLine("bar-drawing-break", from, { x: middle.x + lean.x, y: middle.y + lean.y });
  });
}

function thinLine(name: string, from: Point, to: Point): string {
  return `<path class="${name}" d="${pathData([from, to])}" fill="none" stroke="currentColor" stroke-width="0.8"/>`;
}

function textElement(
  name: string,
  text: string,
  x: number,
  y: number,
  anchor: "start" | "middle",
  drawing: BarDrawing,
): string {
  const size = (drawing.textHeight * 11) / 14;
  return (
    `<text class="${name}" x="${number(x)}" y="${number(y + size * 0.35)}" fill="currentColor" ` +
    `font-size="${number(size)}" text-anchor="${anchor}">${encodeXml(text)}</text>`
  );
}

function pathData(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${number(x)} ${number(y)}`).join("");
}

function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}
