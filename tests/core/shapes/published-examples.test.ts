import { describe, expect, it } from "vitest";
import { cutLength } from "../../../core/shapes/cut-length";
import { developedLength } from "../../../core/shapes/developed-length";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { resolved, standardNamed } from "./resolved";

function siteLength(shape: string, diameter: number, dims: number[] = []): number {
  const cut = cutLength(resolved({ standard: "INDIA-SITE", shape, diameter, dims }));
  if (isRefusal(cut)) throw new Error(refusalText(cut));
  return cut.length;
}

describe("published worked examples of Indian site practice", () => {
  // each page's own legs, to the centre line or inside as it takes them; hooks of 10d written as legs
  it.each([
    [
      "wecivilengineers.wordpress.com 2018/09/07, link 300 x 450",
      "80 +135 242 +90 392 +90 242 +90 392 +135 80",
      8,
      1332,
    ],
    [
      "sketchup3dconstruction.com, rectangular stirrup 300 x 450",
      "80 +90 244 +90 394 +90 244 +90 394 +90 80",
      8,
      1356,
    ],
    [
      "onlinecivilforum.com, beam, 20 mm bars 4000 + 2 x 50 x 20 - 2 x 2 x 20",
      "1000 +90 4000 +90 1000",
      20,
      5920,
    ],
    ["onlinecivilforum.com, beam, 16 mm bars 4000 + 1600 - 64", "800 +90 4000 +90 800", 16, 5536],
  ])("%s", (_, shape, diameter, expected) => {
    expect(siteLength(shape, diameter)).toBe(expected);
  });

  it("adds 9d for each end hook and never less than 75 mm", () => {
    // civilconstructionguide.com ?p=774: 2(250 + 200) + 18d of an 8 mm link is 1044; there 9d = 72 < 75
    expect(siteLength("hook180 900 hook180", 8)).toBe(900 + 2 * 75);
    expect(siteLength("hook180 900 hook180", 12)).toBe(900 + 18 * 12);
  });

  it("catches the source that gives 16.47 kg for two 16 mm bars of 5.536 m: it is 17.5", () => {
    // onlinecivilforum.com bar-bending-schedule-of-beam, IS 1786 mass 1.58 kg/m
    const mass = standardNamed("INDIA-SITE").bars.find((bar) => bar.diameter === 16)!.massPerMetre;
    const total = (2 * siteLength("800 +90 4000 +90 800", 16) * mass) / 1000;
    expect(total).toBeCloseTo(17.5, 1);
    expect(Math.abs(total - 16.47)).toBeGreaterThan(1);
  });

  it("catches the source whose bent-up bar is 500 mm too long", () => {
    // civilmdc.com structural-system-ii, M-2: 4376 + 2 x 0.414 x 260, printed as 5091. A crank of 45
    // degrees over a rise of 260 has a slope of 260 / sin 45 and runs 260 along the bar.
    const slope = 260 / Math.sin(Math.PI / 4);
    const straight = 4376 - 2 * 260;
    const bar = `1000 +45 ${slope} -45 ${straight - 2000} -45 ${slope} +45 1000`;
    const length = siteLength(bar, 12) + 4 * 12;
    expect(length).toBeCloseTo(4376 + 2 * 0.414 * 260, 0);
    expect(Math.abs(length - 5091)).toBeGreaterThan(499);
  });

  it("catches the source whose footing bar does not follow from its own formula", () => {
    // sketchup3dconstruction.com column footing: 2 m footing, d 12, covers 50, thickness 250 less 75 and 50,
    // each end turned up: printed 2.059 m, where its own formula gives 2.126; two bends of 2d each give 2.102
    const length = siteLength("125 +90 1900 +90 125", 12);
    expect(length).toBe(2102);
    expect(Math.abs(length - 2059)).toBeGreaterThan(40);
  });

  it("refuses an angle that the practice has no deduction for", () => {
    const cut = cutLength(resolved({ standard: "INDIA-SITE", shape: "500 +60 400", diameter: 12, dims: [] }));
    expect(isRefusal(cut) && cut.kind).toBe("not-held");
    expect(isRefusal(cut) && refusalText(cut)).toContain(
      "bend 1 turns 60 degrees, and INDIA-SITE holds deductions for 45",
    );
  });

  it("leaves a straight bar and the length unrounded", () => {
    expect(siteLength("00", 12, [1234.5])).toBe(1234.5);
    expect(siteLength("500.5 +90 300", 10)).toBe(780.5);
  });
});

describe("published curves", () => {
  it.each([
    // civilsir.com: 20 turns of outside diameter 520 on pitch 200, 8 mm bar: 32.9 m by the outside
    // diameter; a centre line of 512 gives 32.42 m (derived)
    ["civilsir.com spiral, to the centre line", [520, 200, 20], 8, 32_420],
    // the page's 32.9 m takes the outside diameter for the centre line: a ring that is one bar larger
    ["civilsir.com spiral, as printed", [528, 200, 20], 8, 32_904],
    // paramvisions.com 2021/01: 18 m pile, 750 less 2 x 50 cover, pitch 150, 8 mm, 122 turns of 2.017 m
    ["paramvisions.com spiral", [650, 150, 122], 8, 246_760],
  ])("%s", (_, dims, diameter, expected) => {
    const developed = developedLength(resolved({ shape: "77", diameter, dims }));
    if (isRefusal(developed)) throw new Error(refusalText(developed));
    expect(Math.abs(developed.length - expected)).toBeLessThan(expected * 0.0005);
  });

  it("rings of two pages, tail by tail", () => {
    // tutorialstipscivil.com: ring of radius 206 to the centre line, hooks 10d x 2, less 2 x 3d, 8 mm: 1405.6;
    // civil4m.com 7413: radius 155, 10 mm: 1113.4; the ring of code 75 with the remaining 14d as lap
    for (const [radius, diameter, expected] of [
      [206, 8, 1405.68],
      [155, 10, 1113.4],
    ] as const) {
      const lap = 14 * diameter;
      const ring = resolved({ shape: "75", diameter, dims: [2 * radius + diameter, lap] });
      const developed = developedLength(ring);
      if (isRefusal(developed)) throw new Error(refusalText(developed));
      // the pages take pi as 3.14
      expect(developed.length).toBeCloseTo(expected + (Math.PI - 3.14) * 2 * radius, 1);
    }
  });
});
