import { describe, expect, it } from "vitest";
import { STANDARD_IDS } from "../../../core/standards/index";
import { answered, heldStandard } from "../../_support/held-standard";

const IN = 25.4;

describe("supply limits of BS 8666", () => {
  const { supply } = heldStandard("BS8666:2005");

  // tunleyrod.co.uk/barsizes.html; scribd 378246795, 126511147: Table 6, metres
  it.each([
    [6, 2.5],
    [8, 2.75],
    [10, 3.5],
    [12, 4.25],
    [16, 7.5],
    [20, 14],
    [25, 30],
    [32, 43],
    [40, 58],
  ])("d %i is supplied straight above a radius of %f m", (d, metres) => {
    expect(supply.straightSupplyRadius(d)?.value).toBe(metres * 1000);
    expect(supply.straightSupplyRadius(d)?.cite.provenance).toBe("published");
  });

  it("has no such radius for 50 mm", () => {
    expect(supply.straightSupplyRadius(50)).toBeNull();
  });

  // fendersteel.co.uk/codesbs2005notes.html: notes 2, 3 and 4, and 4d between two bends
  it("holds the notes to the shape table", () => {
    const standard = heldStandard("BS8666:2005");
    expect(standard.straightBetweenBends?.value).toBe(4);
    expect(standard.manyBends?.value).toBe(5);
    expect(supply.largestCurveFormer?.value).toBe(400);
    expect(supply.stockLength?.value).toBe(12_000);
  });

  // valbruna.co.uk, bs8666-2005-shape-code-limitations-page-4: least overall dimension over two bends;
  // 25 mm is printed 325, from the former of 175 and not from r = 87
  it.each([
    [6, 60],
    [8, 80],
    [10, 100],
    [12, 120],
    [16, 160],
    [20, 260],
    [25, 325],
    [32, 416],
    [40, 520],
  ])("d %i: 4d between two bends make %i mm over both", (d, overall) => {
    const standard = heldStandard("BS8666:2005");
    const former = answered(standard.former({ diameter: d, use: "main" })).value;
    expect(former + 2 * d + (standard.straightBetweenBends?.value ?? 0) * d).toBe(overall);
  });

  it("holds what is recalled as recalled", () => {
    const { lengthRounding, dimensionStep, tolerances } = heldStandard("BS8666:2005");
    expect(lengthRounding).toMatchObject({ step: 25, direction: "up", cite: { provenance: "memory" } });
    expect(dimensionStep).toMatchObject({ value: 5, cite: { provenance: "memory" } });
    expect(supply.transportWidth).toMatchObject({ value: 2750, cite: { provenance: "memory" } });
    expect(tolerances?.cite.provenance).toBe("memory");
    expect(tolerances?.value.find((row) => row.applies === "bent dimension")).toMatchObject({
      upTo: 1000,
      plus: 5,
    });
  });
});

describe("limits of other documents", () => {
  // concrete.org.uk fingertips id=1057: EN 13670, -5 C; scribd 137946991: micro-alloyed 500E, 5 C
  it.each([
    ["EC2:2004", -5],
    ["BS8666:2005", -5],
    ["NZS3109:1997", 5],
  ])("%s bends cold down to %i C", (id, celsius) => {
    expect(heldStandard(id).coldBending).toMatchObject({ value: celsius, cite: { provenance: "published" } });
  });

  // Site Fundi sheet, scribd 503953176
  it("SANS282:2011: 2.2 m wide, 13 m long", () => {
    const { supply } = heldStandard("SANS282:2011");
    expect([supply.transportWidth?.value, supply.stockLength?.value]).toEqual([2200, 13_000]);
  });

  // rms-sa.co.za/product/cutting-bending: critical radii 8 mm 2.5 m, 16 mm 5 m, 32 mm 43 m; tolerances
  it("SANS282:2011: radii sprung in on site, and what cutting and bending may differ by", () => {
    const { supply, tolerances, lengthRounding } = heldStandard("SANS282:2011");
    expect([8, 16, 32].map((d) => supply.straightSupplyRadius(d)?.value)).toEqual([2500, 5000, 43_000]);
    expect(tolerances?.value.map(({ plus, minus }) => [plus, minus])).toEqual([
      [25, 25],
      [5, 5],
      [5, 10],
      [5, 25],
    ]);
    // not read: the step of BS 4466, whose codes it shares
    expect([lengthRounding.step, lengthRounding.cite.provenance]).toEqual([25, "common practice"]);
  });

  // sankoseiko.co.jp: JIS G 3112, up to 7 m +40 -0
  it("JASS5:2018: delivered length", () => {
    const row = heldStandard("JASS5:2018").tolerances?.value[0];
    expect(row).toEqual({ applies: "delivered length", upTo: 7000, plus: 40, minus: 0 });
  });

  it("ACI318:2019 prints inches and answers in millimetres", () => {
    const { supply, tolerances, lengthRounding } = heldStandard("ACI318:2019");
    expect(supply.stockLength?.value).toBe(60 * 12 * IN);
    expect(tolerances?.value[0]).toEqual({ applies: "cut length", upTo: Infinity, plus: IN, minus: IN });
    expect(lengthRounding.step).toBe(6.35);
  });

  // most Indian teaching pages: 1d, 2d, 3d for 45, 90, 135; hook 9d or 10d, 75 mm at least
  it("INDIA-SITE alone takes deductions", () => {
    const { siteDeductions, lengthRounding } = heldStandard("INDIA-SITE");
    expect(siteDeductions?.value.bends.map((bend) => [bend.angle, bend.perDiameter])).toEqual([
      [45, 1],
      [90, 2],
      [135, 3],
      // common practice, not on those pages
      [180, 4],
    ]);
    // wecivilengineers, sketchup3dconstruction: 10d at 135; civilsnapshot: 9d or 75 mm
    expect(siteDeductions?.value.hooks.map(({ turn, perDiameter }) => [turn, perDiameter])).toEqual([
      [90, 9],
      [135, 10],
      [180, 9],
    ]);
    expect(siteDeductions?.value.leastHook).toBe(75);
    expect(lengthRounding.step).toBe(0);
    for (const id of STANDARD_IDS.filter((other) => other !== "INDIA-SITE")) {
      expect(heldStandard(id).siteDeductions).toBeNull();
    }
  });

  it("rounds up to 5 mm by common practice where no step is printed", () => {
    for (const id of [
      "EC2:2004",
      "DIN-EC2:2013",
      "AS3600:2018",
      "NZS3109:1997",
      "CSA-A23.1:2019",
      "GB50204:2015",
    ]) {
      expect(heldStandard(id).lengthRounding).toMatchObject({
        step: 5,
        direction: "up",
        cite: { provenance: "common practice" },
      });
    }
  });
});
