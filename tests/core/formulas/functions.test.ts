import { describe, expect, it } from "vitest";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import { call, one, refused } from "./call";

describe("arguments of the functions", () => {
  /** As workbooks hold them: they only gain optional arguments at the end. */
  it.each([
    ["DEVELOPED", "shape size [dims] [standard] [former] [use]"],
    ["CUTLENGTH", "shape size [dims] [standard] [former] [use]"],
    ["MASS", "size [standard] [unit]"],
    ["DIAMETER", "size [standard]"],
    ["AREA", "size [standard]"],
    ["FORMER", "size [standard] [use] [coating] [grade]"],
    ["MINLEG", "size [standard] [use]"],
    ["ROWMASS", "shape size dims count [standard] [unit] [former] [use]"],
    ["EXPLAIN", "shape size [dims] [standard] [former] [use]"],
  ])("%s takes %s", (name, args) => {
    const list = WORKSHEET_FUNCTIONS.get(name)?.args.map(({ name: arg, optional }) =>
      optional ? `[${arg}]` : arg,
    );
    expect(list?.join(" ")).toBe(args);
  });
});

describe("FORMER with a grade as the trade writes it", () => {
  it.each([
    // EN 1992-1-1 Table 8.1N, BS 8666 Table 2: 4 d up to 16 mm
    ["H16", "BS8666:2005", "B500B", 64],
    ["H16", "BS8666:2005", "b 500 b", 64],
    ["16", "DIN-EC2:2013", "BSt 500 S", 64],
    // NZS 3109 Table 3.1: main bars 5 d up to 20 mm
    ["16", "NZS3109:1997", "Grade 500E", 80],
    // common practice in India, and the bend test of IS 1786 up to 20 mm: 4 d
    ["16", "IS2502:1963", "Fe500D", 64],
    // ACI 318-19 Table 25.3.1: 6 d for #3 to #8
    ["#8", "ACI318:2019", "Gr 60", 6],
    ["#8", "ACI318:2019", "A615 Grade 60", 6],
    // CSA A23.1: 100 mm for 20M of 400W, 120 mm of 400R, and the usual 400W where only the yield is said
    ["20M", "CSA-A23.1:2019", "Gr. 400W", 100],
    ["20M", "CSA-A23.1:2019", "400", 100],
  ])("%s by %s, grade %s: %d", (size, standard, grade, former) => {
    expect(one("FORMER", size, standard, undefined, undefined, grade)).toBe(former);
  });

  it("is #N/A with what is held where the standard holds no such grade", () => {
    expect(one("FORMER", "16", "BS8666:2005", undefined, undefined, "Grade 500E")).toEqual({
      error: "#N/A",
      message: expect.stringMatching(/^grade "Grade 500E" is none of BS8666:2005: it holds B500A, B or C, /),
    });
    expect(one("FORMER", "16", "EC2:2004", undefined, undefined, "B600B")).toMatchObject({ error: "#N/A" });
  });
});

describe("CUTLENGTH and DEVELOPED", () => {
  it("give the printed formula rounded, and the centre line unrounded", () => {
    // 1000 + 400 + 500 - 32 - 2 x 16 = 1836; straights 952, 304, 452 and two arcs of 20 pi
    expect(one("CUTLENGTH", "21", "H16", [1000, 400, 500])).toBe(1850);
    expect(one("DEVELOPED", "21", "H16", [1000, 400, 500])).toBeCloseTo(1708 + 40 * Math.PI, 9);
  });

  it("take lengths as texts with units, numbers as texts and the free dim in brackets", () => {
    expect(one("CUTLENGTH", 21, 16, ["1 m", "40 cm", "(500)"])).toBe(1850);
    expect(one("CUTLENGTH", "21", "16", ["1000", "400 mm", 500])).toBe(1850);
  });

  it("take paths, without dims or with an empty range", () => {
    expect(one("CUTLENGTH", "600 +90 400", "H16")).toBe(975);
    expect(one("CUTLENGTH", "600 +90 400", "H16", [null, "", null])).toBe(975);
    expect(one("DEVELOPED", "600 +90 400", "H16", undefined, undefined, 64)).toBeCloseTo(966.83, 2);
  });

  it("answer for a diameter that is no bar of the table", () => {
    // EC2 Table 8.1N: 18 mm, 7 d, r 63: 1000 + 500 - 2 x 81 + pi / 2 x 72
    expect(one("DEVELOPED", "1000 +90 500", 18, undefined, "EC2:2004")).toBeCloseTo(1338 + 36 * Math.PI, 9);
  });

  it("answer in inches for ACI 318, up to the next quarter", () => {
    // #8 about 6 in: 70 - 2 x 4 + pi / 2 x 3.5 = 67.498
    expect(one("DEVELOPED", "40 +90 30", "#8", undefined, "ACI318")).toBeCloseTo(62 + 1.75 * Math.PI, 9);
    expect(one("CUTLENGTH", "40 +90 30", "#8", undefined, "ACI318")).toBe(67.5);
    expect(one("CUTLENGTH", "00", "#8", [`10'-0 1/8"`], "ACI318")).toBe(120.25);
    // former of 8 in: 70 - 2 x 5 + pi / 2 x 4.5
    expect(one("DEVELOPED", "40 +90 30", "#8", undefined, "ACI318", 8)).toBeCloseTo(60 + 2.25 * Math.PI, 9);
  });

  it("round up to 5 mm where a standard prints no step", () => {
    // EC2, 16 mm about 64: 800 - 96 + 20 pi = 766.8
    expect(one("CUTLENGTH", "500 +90 300", 16, undefined, "EC2:2004")).toBe(770);
  });

  it("take shapes of one document and formers of another", () => {
    // AS 3600: 5 db, 80 mm; r 40 in the formula of BS 8666: 1000 + 400 - 20 - 16 = 1364
    expect(one("CUTLENGTH", "11", "N16", [1000, 400], "BS8666:2005+AS3600:2018")).toBe(1375);
    expect(one("DEVELOPED", "11", "N16", [1000, 400], "BS8666:2005+AS3600:2018")).toBeCloseTo(
      1400 - 2 * 56 + 24 * Math.PI,
      9,
    );
  });

  it("refuse with the value, the limit and the remedy", () => {
    expect(refused("CUTLENGTH", "21", null, [1000, 400, 500])).toContain("#VALUE! size is blank");
    expect(refused("CUTLENGTH", null, "H16", [1000, 400, 500])).toContain("#VALUE! shape is blank");
    expect(refused("CUTLENGTH", "21", "#5", [1000, 400, 500])).toMatch(
      /^#N\/A size "#5" is no bar of BS8666:2005/,
    );
    expect(refused("CUTLENGTH", "21", "H16", [1000, "four", 500])).toContain(
      `"four" in column 2 of the dims is no length: give a number in mm`,
    );
    expect(refused("CUTLENGTH", "21", "H16", [1000, true, 500])).toContain(`"TRUE" in column 2`);
    expect(refused("CUTLENGTH", "21", "H16", [1000, 400, 500], "BS 9999")).toMatch(
      /^#N\/A standard "BS 9999"/,
    );
    expect(refused("CUTLENGTH", "21", "H16", [1000, 400, 500], 8666)).toContain(`standard is "8666"`);
    expect(refused("CUTLENGTH", "21", "H16", [1000, 400, 500], undefined, -1)).toMatch(/^#VALUE! .*-1/);
    expect(refused("CUTLENGTH", "21", "H16", [1000, 400, 500], undefined, undefined, "column")).toContain(
      `use "column" is none of BS8666:2005: it distinguishes main, link`,
    );
    expect(refused("CUTLENGTH", "99", "H16", [1000])).toMatch(/^#N\/A code 99 .* write the bar as a path/);
    expect(refused("DEVELOPED", "21", "H16", [1000, 50, 500])).toContain("bends 1 and 2 overlap");
    expect(one("CUTLENGTH", "21", "H16", [1000, 50, 500])).toBe(1500);
  });

  it("compute a former below the least without a word", () => {
    // r 10: 1000 + 400 - 5 - 16 = 1379
    expect(one("CUTLENGTH", "11", "H16", [1000, 400], undefined, 20)).toBe(1400);
  });
});

describe("sizes", () => {
  it("print the table's mass, area and diameter", () => {
    // UK three-decimal table; ASTM A615: #8 2.670 lb/ft, 3.973 kg/m, 510 mm2
    expect(one("MASS", "H16")).toBe(1.579);
    expect(one("MASS", "#8", "ACI318")).toBe(3.973);
    expect(one("MASS", "#8", "ACI318", "lb/ft")).toBe(2.67);
    // 1.579 kg/m x 0.3048 / 0.45359237
    expect(one("MASS", "H16", undefined, "lb/ft")).toBeCloseTo(1.06104, 5);
    expect(one("AREA", "H16")).toBe(201.1);
    expect(one("AREA", "#8", "ACI318")).toBe(510);
    expect(one("DIAMETER", "#8", "ACI318")).toBe(25.4);
    expect(one("DIAMETER", "15M", "CSA-A23.1")).toBe(16);
  });

  it("need a size of the table for mass and area", () => {
    expect(refused("MASS", 18)).toContain(
      '#N/A size "18" is no bar of BS8666:2005, whose table holds 6, 8, 10',
    );
    expect(refused("AREA", 18)).toContain("#N/A");
    expect(one("DIAMETER", 18)).toBe(18);
    expect(refused("MASS", "H16", undefined, "kg")).toContain(`unit "kg" is none`);
  });

  it("give the least former in the standard's unit, by use, coating and grade", () => {
    // BS 8666:2005 Table 2
    expect(one("FORMER", "H25")).toBe(175);
    // EC2 Table 8.1N takes any diameter: 18 > 16, 7 d
    expect(one("FORMER", 18, "EC2")).toBe(126);
    // ACI 318-19 Tables 25.3.1 and 25.3.2: #8 6 db; #4 stirrup 4 db
    expect(one("FORMER", "#8", "ACI318")).toBe(6);
    expect(one("FORMER", "#4", "ACI318", "link")).toBe(2);
    // NZS 3109 Table 3.1: stirrups of plain bar 2 db, deformed 4 db
    expect(one("FORMER", "R12", "NZS3109", "link")).toBe(24);
    expect(one("FORMER", "D12", "NZS3109", "link")).toBe(48);
    // AS 3600 17.2.3: galvanized bar above 16 mm 8 db
    expect(one("FORMER", "N20", "AS3600", "main", "galvanized")).toBe(160);
    expect(refused("FORMER", "H16", undefined, "column")).toContain("it distinguishes main, link");
  });

  it("give the least end leg overall to the outside", () => {
    // BS 8666:2005 Table 2: P 130 and, for links, 210; ACI 12 db + r + d of #8
    expect(one("MINLEG", "H16")).toBe(130);
    expect(one("MINLEG", "H16", undefined, "link")).toBe(210);
    expect(one("MINLEG", "#8", "ACI318")).toBe(16);
    // IS 2502 Table II, tail of 4d; outside = 4d + r + d about the former of 4d
    expect(one("MINLEG", "T12", "IS2502")).toBe(7 * 12);
    expect(one("MINLEG", "R12", "IS2502")).toBe(7 * 12);
  });
});

describe("ROWMASS", () => {
  it("is count x cut length x the table's mass", () => {
    // 10 x 1.850 m x 1.579 kg/m
    expect(one("ROWMASS", "21", "H16", [1000, 400, 500], 10)).toBeCloseTo(29.2115, 9);
    expect(one("ROWMASS", "21", "H16", [1000, 400, 500], 10, undefined, "t")).toBeCloseTo(0.0292115, 9);
    expect(one("ROWMASS", "21", "H16", [1000, 400, 500], 10, undefined, "lb")).toBeCloseTo(
      29.2115 / 0.45359237,
      6,
    );
    expect(one("ROWMASS", "21", "H16", [1000, 400, 500], 10, undefined, "ton")).toBeCloseTo(
      29.2115 / 907.18474,
      9,
    );
    // 10 x 0.975 m
    expect(one("ROWMASS", "600 +90 400", "H16", null, 10)).toBeCloseTo(15.39525, 9);
  });

  it("refuses a count that counts nothing, and a unit of no mass", () => {
    expect(refused("ROWMASS", "21", "H16", [1000, 400, 500], 2.5)).toContain(
      `count "2.5" is no whole number`,
    );
    expect(refused("ROWMASS", "21", "H16", [1000, 400, 500], -1)).toContain(`count "-1"`);
    expect(refused("ROWMASS", "21", "H16", [1000, 400, 500], null)).toContain("count");
    expect(refused("ROWMASS", "21", "H16", [1000, 400, 500], 2, undefined, "stone")).toContain(
      `unit "stone"`,
    );
    expect(refused("ROWMASS", "21", 18, [1000, 400, 500], 2)).toContain("#N/A");
  });
});

describe("EXPLAIN", () => {
  const lines = (...args: Parameters<typeof call> extends [string, ...infer Rest] ? Rest : never) =>
    call("EXPLAIN", ...args).map((row) => String(row[0]));

  it("prints the formula, its numbers, both lengths, clauses and trust", () => {
    const text = lines("21", "H25", [1000, 400, 500]).join("\n");
    expect(text).toContain("standard: BS8666:2005");
    expect(text).toContain("printed formula: A + B + (C) - r - 2d; BS 8666:2005, Table 3 (published)");
    expect(text).toContain("r of the formula: 87 mm as printed, where half the former is 87.5 mm");
    expect(text).toContain("with numbers: 1000 + 400 + (500) - 87 - 2 x 25");
    expect(text).toContain("unrounded: 1763 mm");
    expect(text).toContain("cut length: 1775 mm, rounded up to the next 25 mm");
    // straights 887.5, 175, 387.5 and two arcs of 50 pi
    expect(text).toContain("developed length: 1764.16 mm on the centre line (straights 887.5 + 175 + 387.5");
    expect(text).toContain("printed formula less geometry: -1.16 mm");
    expect(text).toContain(
      "least end leg for use main: 240 mm overall to the outside; straight 125 mm + radius 87.5 mm",
    );
  });

  it("says where printed and geometric length part by more than the rounding step", () => {
    const text = lines("22", "H16", [600, 500, 400, 600]).join("\n");
    expect(text).toContain("they differ by more than the rounding step of 25 mm: ask the designer");
    expect(text).toContain("doubtful: the printed formula takes the half circle as two right angles");
  });

  it("shows both readings of code 14", () => {
    const text = lines("14", "H16", [1000, 300, 500]).join("\n");
    expect(text).toContain("doubtful: read with legs to the meeting of the outside tangents it is");
  });

  it("shows a site deduction beside the geometry", () => {
    const text = lines("1000 +90 4000 +90 1000", 20, undefined, "INDIA-SITE").join("\n");
    expect(text).toContain("with numbers: 1000 + 4000 + 1000 - 40 - 40");
    expect(text).toContain("cut length: 5920 mm, not rounded");
    expect(text).toMatch(/site deductions less geometry: [+-][\d.]+ mm/);
  });

  it("speaks inches where the standard does", () => {
    const text = lines("hook180 60", "#8", undefined, "ACI318").join("\n");
    // ACI 318-19 Table 25.3.1: 6 db bend, max(4 db, 2.5 in) straight; overall 4 + 3 + 1
    expect(text).toContain(
      "hook180 at the first end: straight 4 in, 8 in overall; ACI 318:2019, Table 25.3.1",
    );
    expect(text).toContain("bar: diameter 1 in");
  });

  it("carries a refusal of one length beside the other", () => {
    const text = lines("21", "H16", [1000, 50, 500]).join("\n");
    expect(text).toContain("cut length: 1500 mm");
    expect(text).toContain("developed length: refused, bends 1 and 2 overlap");
  });
});
