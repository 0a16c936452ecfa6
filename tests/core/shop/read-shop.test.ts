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
      { size: null, length: 12000, count: null, remnant: false, row: 11 },
      { size: "H16", length: 6000, count: 4, remnant: false, row: 12 },
      { size: "H16", length: 3150, count: 1, remnant: true, row: 13 },
    ]);
  });

  it("should read limits by name, below zero only for the temperature", () => {
    expect(shop.limits).toEqual({
      hoist: 500,
      handLift: null,
      transportWidth: null,
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

  it("should read the empty sheet that it proposes as an empty shop", () => {
    const empty = shopOf(shopTemplate().map((row) => [...row.cells]));
    expect(empty).toMatchObject({ benders: [], cutters: [], stock: [], problems: [] });
    expect(empty.limits).toEqual({
      hoist: null,
      handLift: null,
      transportWidth: null,
      leastRemnant: null,
      temperature: null,
    });
    expect(empty.trials?.block).toHaveLength(1);
  });
});
