import { describe, expect, it } from "vitest";
import { LIGHT_SERIES_COLOURS, SERIES_COLOURS, seriesLook } from "../../../addin/workbook/series-colours";

/** Contrast ratio of WCAG 2.2, 1.4.3 (from memory): relative luminances of two sRGB colours. */
function contrast(one: string, other: string): number {
  const luminance = (rgb: string): number => {
    const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => {
      const share = Number.parseInt(rgb.slice(at, at + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe("colours of a chart's series", () => {
  it("measures black on white as the guidelines do", () => {
    expect(contrast("000000", "ffffff")).toBeCloseTo(21, 5);
    // the grey that the guidelines name as just enough
    expect(contrast("767676", "ffffff")).toBeCloseTo(4.54, 2);
  });

  it("carry the words on them, and stand out from a white page by fill or by line", () => {
    for (let series = 0; series < 16; series += 1) {
      const { fill, line, words } = seriesLook(series);
      expect(contrast(fill, words), fill).toBeGreaterThanOrEqual(4.5);
      expect(Math.max(contrast(fill, "ffffff"), contrast(line, "ffffff")), fill).toBeGreaterThanOrEqual(3);
    }
  });

  it("differ sixteen times", () => {
    expect(new Set([...SERIES_COLOURS, ...LIGHT_SERIES_COLOURS]).size).toBe(16);
    expect(seriesLook(16)).toEqual(seriesLook(0));
  });
});
