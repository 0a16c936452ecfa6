import { describe, expect, it } from "vitest";
import type { Cell } from "../../../core/schedule/sheet";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { readShop, shopTemplate } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const shopOf = (rows: Cell[][]) => readShop(sheetFromRows("Shop", rows), standard);

const SHEET: Cell[][] = [
  ["Benders of the yard"],
  [
    "Machine",
    "Largest angle",
    "Guard radius (mm)",
    "Orbit radius",
    "Back-rest distance",
    "Pins",
    "Formers in the rack",
  ],
  ["Bench 2", 190, "2.5 m", 160, 120, "50, 60", "32, 48; 64 and 140"],
  ["Old one", null, null, null, null, null, null],
  [],
  ["Machine", "Work", "Size", "Grade MPa", "Bars at once"],
  ["bench 2", "bend", "H16", 500, 2],
  ["Bench 2", "bend", "H32", 500, 1],
  ["Shear 1", "cut", "H16", null, 3],
  [],
  ["Size", "Stock length", "Bars held", "Kind"],
  [null, 12000, null, null],
  ["H16", "6 m", 4, "stock"],
  ["H16", 3150, null, "Remnant"],
  [],
  ["Limit", "Value"],
  ["Hoist or crane kg", 500],
  ["Temperature C", -7],
  [],
  ["Date", "Machine", "Size", "Former", "Grade", "Form", "Heat", "Bent to", "Released"],
  ["2031-02-03", "Bench 2", "H16", 64, "H", "bar", "A7", 90, 86.5],
];

describe("readShop", () => {
  const shop = shopOf(SHEET);

  it("should read benders with what the plate allows, blank as not known", () => {
    expect(shop.benders).toEqual([
      {
        name: "Bench 2",
        largestAngle: 190,
        guardRadius: 2500,
        orbitRadius: 160,
        backRestDistance: 120,
        pins: [50, 60],
        formers: [32, 48, 64, 140],
        rated: [
          { diameter: 16, yield: 500, bars: 2 },
          { diameter: 32, yield: 500, bars: 1 },
        ],
      },
      expect.objectContaining({
        name: "Old one",
        rated: [],
        formers: null,
        largestAngle: null,
        guardRadius: null,
      }),
    ]);
  });

  it("should keep what is cut apart from what is bent", () => {
    expect(shop.cutters).toEqual([
      { name: "Shear 1", rated: [{ diameter: 16, yield: null, bars: 3 }], kerf: null, endCrop: null },
    ]);
  });

  it("should read stock by size, remnants one each unless counted", () => {
    expect(shop.stock).toEqual([
      { size: null, length: 12000, count: null, remnant: false, heat: null, row: 11 },
      { size: "H16", length: 6000, count: 4, remnant: false, heat: null, row: 12 },
      { size: "H16", length: 3150, count: 1, remnant: true, heat: null, row: 13 },
    ]);
  });

  it("should read limits by name, below zero only for the temperature", () => {
    expect(shop.limits).toEqual({
      hoist: 500,
      handLift: null,
      transportWidth: null,
      lorryLoad: null,
      lorryLength: null,
      leastRemnant: null,
      temperature: -7,
    });
    expect(
      shopOf([
        ["Limit", "Value"],
        ["Hoist", -5],
      ]).problems,
    ).toEqual([{ row: 1, column: 1, typed: "-5", wanted: "a number" }]);
  });

  it("should hand the trial log on with its header and place", () => {
    expect(shop.trials?.block).toHaveLength(2);
    expect(shop.trials).toMatchObject({ top: 19, left: 0 });
  });

  it("should tell a cell that cannot be read and take it as not known", () => {
    const bad = shopOf([
      ["Machine", "Largest angle", "Orbit radius", "Formers"],
      ["M1", "wide", { error: "#REF!" }, "32, ?"],
    ]);
    expect(bad.benders[0]).toMatchObject({ largestAngle: null, orbitRadius: null, formers: null });
    expect(bad.problems.map(({ typed }) => typed).sort()).toEqual(["#REF!", "32, ?", "wide"]);
  });

  describe("in inches", () => {
    const american = resolveStandard("ACI318:2019") as Standard;
    const inches = (rows: Cell[][]) => readShop(sheetFromRows("Shop", rows), american);
    const bender = (...cells: Cell[]) => [["Machine", "Orbit radius", "Formers", "Pins mm"], cells];

    it("should take a length in the standard's unit where neither cell nor head names one", () => {
      // 1 in is 25.4 mm exactly
      const { benders } = inches(bender("B1", 4, '2, 3 3/4"', 30));
      expect(benders[0]).toMatchObject({ orbitRadius: 101.6, formers: [50.8, 95.25], pins: [30] });
      const { stock } = inches([
        ["Size", "Stock length"],
        [null, 480],
        [null, "40 ft"],
      ]);
      expect(stock.map(({ length }) => length)).toEqual([12_192, 12_192]);
    });

    it("should go by the unit of the head or of the limit's name", () => {
      const shop = shopOf([
        ["Machine", "Orbit radius in", "Guard radius (inches)"],
        ["B1", 4, 40],
        [],
        ["Limit", "Value"],
        ["Hoist or crane lb", 1000],
        ["Transport width in", 96],
        ["Temperature F", 41],
      ]);
      expect(shop.benders[0]).toMatchObject({ orbitRadius: 101.6, guardRadius: 1016 });
      expect(shop.limits).toMatchObject({ hoist: 453.59237, transportWidth: 2438.4 });
      expect(shop.limits.temperature).toBeCloseTo(5, 10);
    });

    it("should take a mass without a unit for pounds, and a grade by its name", () => {
      const shop = inches([
        ["Limit", "Value"],
        ["Hoist", 1000],
        [],
        ["Machine", "Work", "Size", "Grade", "Bars at once"],
        ["B1", "bend", "#5", 60, 2],
        ["B1", "bend", "#5", 420, 2],
        ["B1", "bend", "#5", "tough", 2],
      ]);
      expect(shop.limits.hoist).toBeCloseTo(453.59237, 6);
      // ASTM A615 grade 60: 420 MPa
      expect(shop.benders[0]?.rated.map((rated) => rated.yield)).toEqual([420, 420, null]);
      expect(shop.problems).toMatchObject([
        { typed: "tough", wanted: expect.stringContaining("a grade of ACI") },
      ]);
    });

    it("should propose a sheet whose heads are in inches and pounds", () => {
      const heads = shopTemplate("in").flatMap((row) => row.cells);
      expect(heads).toEqual(
        expect.arrayContaining(["orbit radius in", "hoist or crane lb", "temperature f"]),
      );
      expect(heads.filter((cell) => /\b(mm|kg|mpa)\b/.test(String(cell)))).toEqual([]);
      const filled = shopTemplate("in").map((row) => [...row.cells]);
      filled[2] = ["B1", 190, 48, 4];
      expect(inches(filled).benders[0]).toMatchObject({ guardRadius: 1219.2, orbitRadius: 101.6 });
    });
  });

  it("should read the empty sheet that it proposes as an empty shop", () => {
    const empty = shopOf(shopTemplate().map((row) => [...row.cells]));
    expect(empty).toMatchObject({ benders: [], cutters: [], stock: [], problems: [] });
    expect(empty.limits).toEqual({
      hoist: null,
      handLift: null,
      transportWidth: null,
      lorryLoad: null,
      lorryLength: null,
      leastRemnant: null,
      temperature: null,
    });
    expect(empty.trials?.block).toHaveLength(1);
  });
});
