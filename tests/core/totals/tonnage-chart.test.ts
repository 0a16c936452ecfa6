import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { tonnageByPour } from "../../../core/totals/tonnage-by-pour";
import { tonnageChart } from "../../../core/totals/tonnage-chart";

interface Rect {
  "@_x": string;
  "@_width": string;
  "@_class": string;
  title?: string;
}

function rects(svg: string): Rect[] {
  const tree = new XMLParser({ ignoreAttributes: false, isArray: (name) => name === "rect" }).parse(svg) as {
    svg: { rect: Rect[] };
  };
  return tree.svg.rect.filter((rect) => rect.title !== undefined);
}

describe("tonnageChart", () => {
  const svg = tonnageChart(
    tonnageByPour([
      { pour: "P1", size: "H16", mass: 1000 },
      { pour: "P1", size: "H12", mass: 500 },
      { pour: "P2 & <east>", size: "H12", mass: 750 },
    ]),
  );

  it("should draw every pour and size to one scale", () => {
    const [first, second, third] = rects(svg);
    // the thin size first: 0.5 t, then 1 t
    const perTonne = Number(second?.["@_width"]);
    expect(Number(first?.["@_width"])).toBeCloseTo(0.5 * perTonne, 1);
    expect(Number(third?.["@_width"])).toBeCloseTo(0.75 * perTonne, 1);
    expect(Number(second?.["@_x"])).toBeCloseTo(Number(first?.["@_x"]) + 0.5 * perTonne, 1);
    expect(first?.["@_class"]).toBe(third?.["@_class"]);
  });

  it("should look otherwise for each of sixteen sizes", () => {
    const sizes = Array.from({ length: 16 }, (_, at) => ({ pour: "P1", size: `H${at + 1}`, mass: 100 }));
    const looks = rects(tonnageChart(tonnageByPour(sizes))).map((rect) => rect["@_class"]);
    expect(new Set(looks).size).toBe(16);
    expect(looks[8]).toBe("series-8 other");
  });

  it("should name itself and each part, with what the sheet says escaped", () => {
    expect(svg).toContain('aria-label="Tonnes by pour and size: 2.250 t in all"');
    expect(svg).toContain("P2 &amp; &lt;east&gt;, H12: 0.750 t");
    expect(svg).not.toContain("style=");
  });

  it("should stay a drawing where there is nothing to draw", () => {
    expect(rects(`${tonnageChart(tonnageByPour([])).replace("</svg>", "<rect/></svg>")}`)).toEqual([]);
  });
});
