import { describe, expect, it } from "vitest";
import type { HookTurn } from "../../../core/standards/index";
import { answered, heldStandard, refused } from "../../_support/held-standard";
import { printedTable } from "../../_support/printed-table";

const IN = 25.4;

function bar(id: string, size: string | number) {
  const standard = heldStandard(id);
  return { standard, d: answered(standard.readSize(size)).diameter };
}

function hook(id: string, turn: HookTurn, size: string | number, use = "main") {
  const { standard, d } = bar(id, size);
  return answered(standard.hook(turn, d, use));
}

function endLeg(id: string, size: string | number, use = "main") {
  const { standard, d } = bar(id, size);
  return answered(standard.endLeg(d, use)).value;
}

/** What the hook adds beyond the outside of the leg: arc + straight - (r + d). */
function allowance(id: string, turn: HookTurn, size: string | number, use = "main"): number {
  const { former, extension } = hook(id, turn, size, use).value;
  const { d } = bar(id, size);
  return (turn / 180) * Math.PI * (former / 2 + d / 2) + extension - (former / 2 + d);
}

describe("end projections of BS 8666", () => {
  // tunleyrod.co.uk/barsizes.html; scribd 126511147, 378246795, 526661066: Table 2, general and links below 150
  const P = printedTable(`
    6 110 110
    8 115 115
    10 120 130
    12 125 160
    16 130 210
    20 190 290
    25 240 365
    32 305 465
    40 380 580
    50 475 725`).map((row) => row.map(Number));

  it.each(P)("d %i: P is %i, for links %i", (d, general, link) => {
    for (const id of ["BS8666:2005", "BS8666:2020"]) {
      expect(endLeg(id, d!).outside).toBe(general);
      expect(endLeg(id, d!, "link").outside).toBe(link);
    }
  });

  // un-starred figures are 5d + r + d and 10d + r + d up to the next 5 (derived); r = M/2
  it("keeps 5d and 10d of straight", () => {
    for (const [d, general, link] of P as [number, number, number][]) {
      const r = answered(heldStandard("BS8666:2005").former({ diameter: d, use: "main" })).value / 2;
      if (d > 12) expect(general).toBe(Math.ceil((5 * d + r + d) / 5) * 5);
      if (d > 8) expect(link).toBe(Math.ceil((10 * d + r + d) / 5) * 5);
      expect(endLeg("BS8666:2005", d).straight).toBe(5 * d);
      expect(endLeg("BS8666:2005", d, "link").straight).toBe(10 * d);
    }
  });

  it("follows the rule where the table has no line", () => {
    expect(endLeg("BS8666:2005", 14)).toEqual({ outside: 115, straight: 70 });
  });

  it.each(P)("d %i: an end hook reaches P", (d, general, link) => {
    const r = answered(heldStandard("BS8666:2005").former({ diameter: d!, use: "main" })).value / 2;
    expect(hook("BS8666:2005", 90, d!).value.extension + r + d!).toBe(general);
    expect(hook("BS8666:2005", 135, d!, "link").value.extension + r + d!).toBe(link);
    // links bent 150 degrees or more stand in the general column
    expect(hook("BS8666:2005", 180, d!, "link").value.extension + r + d!).toBe(general);
  });
});

describe("hooks of ACI 318-19", () => {
  // PCI Design Handbook 7th ed., Design Aid 15.4.1: A or G of 90 and 180 hooks, and of 90 stirrup hooks, in,
  // out to out. The page rounds to the inch (stirrups to the half); beyond #8 with larger finished diameters.
  const MAIN = printedTable(`
    #3 6 5
    #4 8 6
    #5 10 7
    #6 12 8
    #7 14 10
    #8 16 11
    #9 19 15
    #10 22 17
    #11 24 19
    #14 31 27
    #18 41 36`);
  const outside = (turn: HookTurn, size: string, use: string) => {
    const { former, extension } = hook("ACI318:2019", turn, size, use).value;
    return (former / 2 + bar("ACI318:2019", size).d + extension) / IN;
  };

  it.each(MAIN)("%s: a 90 hook measures %s in", (size, inches) => {
    expect(Math.abs(outside(90, size!, "main") - Number(inches))).toBeLessThan(0.6);
  });

  it.each(MAIN.slice(0, 6))(
    "%s: a 180 hook adds the length that makes up A %s / G %s in",
    (size, _, inches) => {
      expect(Math.abs(allowance("ACI318:2019", 180, size!) / IN - Number(inches))).toBeLessThan(0.6);
    },
  );

  it.each([
    ["#3", 4],
    ["#4", 4.5],
    ["#5", 6],
    ["#6", 12],
    ["#7", 14],
    ["#8", 16],
  ])("%s: a 90 stirrup hook measures %f in", (size, inches) => {
    expect(Math.abs(outside(90, size, "link") - inches)).toBeLessThan(0.5);
  });

  // muhaz.org, ACI 315-99 Table 1 (cont.): A or G of the 135 degree seismic hook, which the page rounds to a quarter or half
  it.each([
    ["#3", 4.25],
    ["#4", 4.5],
    ["#5", 5.5],
    ["#6", 8],
    ["#7", 9],
    ["#8", 10.5],
  ])("%s: a 135 stirrup hook adds %f in", (size, inches) => {
    expect(Math.abs(allowance("ACI318:2019", 135, size, "link") / IN - inches)).toBeLessThan(0.5);
  });

  it("holds the 3 in floor of stirrup hooks and the 2.5 in floor of 180 hooks", () => {
    expect(hook("ACI318:2019", 135, "#3", "link").value.extension).toBeCloseTo(3 * IN, 9);
    expect(hook("ACI318:2019", 135, "#5", "link").value.extension).toBeCloseTo(6 * 0.625 * IN, 9);
    expect(hook("ACI318:2019", 180, "#4").value.extension).toBeCloseTo(2.5 * IN, 9);
    expect(hook("ACI318:2019", 180, "#8").value.extension).toBeCloseTo(4 * IN, 9);
  });

  it("has no 135 hook for main bars and says what to write", () => {
    const { standard, d } = bar("ACI318:2019", "#5");
    const { kind, text } = refused(standard.hook(135, d, "main"));
    expect(kind).toBe("not-held");
    expect(text).toContain("a turn and a leg");
  });
});

describe("hooks of AS 3600", () => {
  // from memory: 13.1.2.7; lengths of bar in the hook, pi (pin + d)/2 + max(4d, 70), derived by hand
  it.each([
    ["N10", 164],
    ["N12", 183],
    ["N16", 221],
    ["N20", 269],
    ["N24", 322],
    ["N28", 376],
    ["N32", 430],
    ["N36", 483],
    ["N40", 537],
  ])("%s: %i mm of bar in the 180 hook, the 135 hook and the cog", (size, length) => {
    for (const turn of [90, 135, 180] as const) {
      const { former, extension } = hook("AS3600:2018", turn, size).value;
      const arc = (turn / 180) * Math.PI * ((former + bar("AS3600:2018", size).d) / 2);
      expect(Math.abs(arc + extension - length)).toBeLessThan(0.6);
    }
  });
});

describe("allowances of IS 2502 Table II", () => {
  // lecture set CE 402, scribd 104139938: H and B in diameters for high-yield bars below and from 25 mm
  it.each([
    [16, 13, 6],
    [20, 13, 6],
    [28, 17, 7],
    [32, 17, 7],
  ])("%i mm: the hook adds %id, the bend %id, to the half diameter", (d, h, b) => {
    expect(Math.abs(allowance("IS2502:1963", 180, d) / d - h)).toBeLessThan(0.5);
    expect(Math.abs(allowance("IS2502:1963", 90, d) / d - b)).toBeLessThan(0.5);
  });

  it("adds 75 mm at least", () => {
    expect(allowance("IS2502:1963", 90, 8)).toBeCloseTo(75, 9);
    expect(allowance("IS2502:1963", 180, 4)).toBeCloseTo(75, 9);
    expect(allowance("IS2502:1963", 180, 8)).toBeGreaterThan(75);
  });
});

describe("hooks and end legs from memory", () => {
  it.each<[string, HookTurn, string | number, string, number]>([
    ["EC2:2004", 90, 8, "link", 80],
    ["EC2:2004", 90, 6, "link", 70],
    ["EC2:2004", 135, 8, "link", 50],
    ["EC2:2004", 180, 20, "main", 100],
    ["CSA-A23.1:2019", 180, "10M", "main", 60],
    ["CSA-A23.1:2019", 90, "15M", "main", 192],
    ["CSA-A23.1:2019", 135, "15M", "link", 96],
    ["CSA-A23.1:2019", 180, "10M", "link", 60],
    // from memory: BS 8110-1 3.12.8.6, a link 8d past its bend; 4d and 5d of straight as at 90 and 180
    ["BS4466:1989", 135, 10, "link", 80],
    ["BS4466:1989", 135, 10, "main", 40],
    ["SANS282:2011", 135, 10, "link", 80],
    ["SANS282:2011", 135, 16, "main", 80],
    // NZS 3101 8.4.2.1: 6d for deformed bars, 8d for plain ones
    ["NZS3109:1997", 135, 10, "link", 60],
    ["NZS3109:1997", 180, 12, "main", 65],
    ["NZS3109:1997", 90, 12, "main", 144],
    ["JASS5:2018", 180, "D16", "main", 64],
    ["JASS5:2018", 135, "D13", "link", 78],
    ["JASS5:2018", 90, "D10", "main", 80],
    ["GB50204:2015", 135, 8, "link", 80],
    ["GB50204:2015", 135, 6, "link", 75],
    ["GB50204:2015", 180, 10, "main", 30],
    ["IS2502:1963", 135, 8, "link", 65],
    ["IS2502:1963", 135, 12, "link", 72],
  ])("%s: hook%i of %s, %s, has %f mm of straight", (id, turn, size, use, straight) => {
    expect(hook(id, turn, size, use).value.extension).toBeCloseTo(straight, 9);
  });

  it("adds r + d to a printed straight", () => {
    // EC2 link, 8 mm: 10 x 8 = 80, former 32: 80 + 16 + 8
    expect(endLeg("EC2:2004", 8, "link")).toEqual({ outside: 104, straight: 80 });
    // ACI main #8: 12 in + 3 in + 1 in
    expect(endLeg("ACI318:2019", "#8").outside).toBeCloseTo(16 * IN, 9);
    expect(endLeg("ACI318:2019", "#8").straight).toBeCloseTo(12 * IN, 9);
  });

  it("NZS3109:1997: a link of plain bar has 8d, of deformed bar 6d", () => {
    const standard = heldStandard("NZS3109:1997");
    expect(answered(standard.hook(135, 10, "link", "R")).value.extension).toBe(80);
    expect(answered(standard.hook(135, 10, "link", "HD")).value.extension).toBe(60);
    expect(answered(standard.endLeg(10, "link", "D")).value.straight).toBe(60);
  });

  it("takes a former that is given where the document holds none", () => {
    // 25 mm of Fe 500 about 100 mm: an 8d link hook needs no other figure
    const given = answered(heldStandard("IS2502:1963").hook(90, 25, "link", "Fe 500", 100));
    expect(given.value).toEqual({ turn: 90, former: 100, extension: 200 });
    expect(refused(heldStandard("IS2502:1963").hook(90, 25, "link", "Fe 500")).kind).toBe("not-held");
  });

  // rms-sa.co.za/product/cutting-bending: h and n of high yield bars, in steps of 20 mm
  it.each([
    [10, 120, 100],
    [12, 160, 100],
    [16, 200, 120],
    [20, 240, 140],
    [25, 300, 180],
    [32, 400, 220],
    [40, 480, 260],
  ])("SANS282:2011: 5d of straight make the printed h and n of %i mm, up to the next 20", (d, h, n) => {
    for (const [turn, printed] of [
      [180, h],
      [90, n],
    ] as const) {
      const exact = Math.max(100, allowance("SANS282:2011", turn, d));
      expect(Math.ceil((exact - 0.5) / 20) * 20).toBe(printed);
    }
  });

  // SANS 282: mild steel bends round 4d with 4d of straight, from memory; high yield round 6d with 5d
  it("follows the grade where one is said", () => {
    const standard = heldStandard("SANS282:2011");
    expect(answered(standard.endLeg(10, "main", "R")).value).toEqual({ outside: 40 + 20 + 10, straight: 40 });
    expect(answered(standard.endLeg(10, "main")).value).toEqual({ outside: 50 + 30 + 10, straight: 50 });
    expect(answered(standard.hook(180, 10, "main", "mild steel")).value.former).toBe(40);
    expect(answered(standard.formulaRadius(10, "main", "R")).value).toBe(20);
    expect(refused(standard.endLeg(10, "main", "Z")).kind).toBe("not-held");
  });

  it("refuses the end leg of a use or a bar that the standard does not hold", () => {
    expect(refused(heldStandard("BS8666:2005").endLeg(16, "beam")).kind).toBe("not-held");
    expect(refused(heldStandard("ACI318:2019").endLeg(2.257 * IN, "link")).kind).toBe("not-held");
    expect(refused(heldStandard("ISO3766:2003").endLeg(16, "main")).kind).toBe("not-held");
  });
});
