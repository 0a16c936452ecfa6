import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { barDrawing } from "../../../core/shapes/bar-drawing";
import { barSvg } from "../../../core/shapes/bar-svg";
import type { PlanarPath } from "../../../core/shapes/path";

const path: PlanarPath = {
  kind: "planar",
  legs: [
    { length: 12000, free: false, letter: "A" },
    { length: 150, free: true, letter: "B" },
  ],
  turns: [{ angle: 180, radius: null }],
  inOnePlane: true,
};
const drawing = barDrawing({ path, diameter: 12, radius: 24 });

describe("barSvg", () => {
  const svg = barSvg(drawing, { width: 300, height: 120, title: 'mark "01" & <others>' });

  it("is well-formed, with its title and role", () => {
    expect(XMLValidator.validate(svg)).toBe(true);
    const root = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "" }).parse(svg).svg;
    expect(root.title).toBe('mark "01" & <others>');
    expect(root.role).toBe("img");
    expect(root.width).toBe("300");
    expect(root.viewBox).toBe(`0 0 ${drawing.width} ${Math.round(drawing.height * 100) / 100}`);
  });

  it("takes its colour from the page and brings no style of its own", () => {
    expect(svg).not.toMatch(/style=|<style|#[0-9a-f]{3}/i);
    expect(svg).toContain('stroke="currentColor"');
  });

  it("paints the bar, the break and every text", () => {
    for (const label of drawing.labels) expect(svg).toContain(`>${label.text}</text>`);
    expect(svg.match(/bar-drawing-bar/g)).toHaveLength(2);
    expect(svg.match(/bar-drawing-break/g)).toHaveLength(2);
  });
});
