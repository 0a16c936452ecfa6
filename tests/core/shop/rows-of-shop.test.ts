import { describe, expect, it } from "vitest";
import { cellAddress } from "../../../core/schedule/cell-address";
import type { Cell } from "../../../core/schedule/sheet";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { readShop, shopTemplate } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;

function shopOf(rows: Cell[][]) {
  const sheet = sheetFromRows("Shop", rows);
  const shop = readShop(sheet, standard);
  const told = shop.problems.map(
    ({ row, column, wanted }) => `${cellAddress(sheet, row, column)}: ${wanted}`,
  );
  return { ...shop, told };
}

/** Tables under one-word titles, with or without a blank row above each title. */
function yard(blank: boolean, ...limits: Cell[][]): Cell[][] {
  const rows: Cell[][] = [
    ["Benders"],
    ["machine", "largest angle", "pins mm", "formers"],
    ["Bender A", 190, "30", "24, 32"],
    ["Bender B", null, null, null],
    ["Plates"],
    ["machine", "work", "size", "grade mpa", "bars at once"],
    ["Bender A", "bend", "H16", 500, 2],
    ["Shear", "cut", "H16", 500, 4],
    ["Cutters"],
    ["machine", "kerf mm", "end crop mm"],
    ["Shear", 3, 10],
    ["Stock"],
    ["size", "stock length mm", "bars held", "kind"],
    ["H16", 12000, null, "stock"],
    ["Limits"],
    ["limit", "value"],
    ["hoist or crane kg", 1000],
    ...limits,
    ["Trial bends"],
    ["size", "former", "grade", "bent to", "released"],
    ["H16", 64, "H", 92, 90.1],
  ];
  return blank ? rows.flatMap((row) => (row.length === 1 ? [[], row] : [row])) : rows;
}

describe("a title directly under a table", () => {
  it("begins the next table as one under a blank row does", () => {
    const close = shopOf(yard(false));
    const apart = shopOf(yard(true));
    const held = ({ benders, cutters, limits }: typeof close) => ({ benders, cutters, limits });
    expect(close.benders.map(({ name }) => name)).toEqual(["Bender A", "Bender B"]);
    expect(close.cutters).toMatchObject([{ name: "Shear", kerf: 3, endCrop: 10 }]);
    expect(held(close)).toEqual(held(apart));
    expect([close.told, apart.told]).toEqual([[], []]);
  });

  it("is no bender that has a title's word for its name and facts beside it", () => {
    const { benders, told } = shopOf([
      ["machine", "largest angle"],
      ["Cutters", 180],
    ]);
    expect(benders.map(({ name }) => name)).toEqual(["Cutters"]);
    expect(told).toEqual([]);
  });
});

describe("a limit that is not understood", () => {
  it("is told at its cell with what was probably meant", () => {
    const { limits, told } = shopOf(
      yard(false, ["Temp", -8], ["Lorry lenght mm", 6000], ["max bundle", 200]),
    );
    expect(limits).toMatchObject({ temperature: null, lorryLength: null });
    expect(told).toEqual([
      'A18: nothing goes by it: did you mean "temperature c"?',
      'A19: nothing goes by it: did you mean "lorry length mm"?',
      expect.stringMatching(/^A20: nothing goes by it: it is no limit that is known: these are hoist/),
    ]);
  });

  it("is told where it is a head of another table", () => {
    expect(shopOf(yard(false, ["Kerf", 3])).told).toEqual([
      'A18: nothing goes by it: it is no limit but the head of a table, so write it under "kerf mm"',
    ]);
  });

  it("that another row contradicts is the lower of both until one is gone", () => {
    const { limits, told } = shopOf(yard(false, ["hoist or crane kg", 500], ["crane", 1000]));
    expect(limits.hoist).toBe(500);
    expect(told).toEqual([
      expect.stringMatching(/^B18: B17 holds another figure of the same limit; the lower is in force/),
      expect.stringMatching(/^B19: B17 holds another figure/),
    ]);
    expect(shopOf(yard(false, ["crane", 1000])).told).toEqual([]);
  });
});

describe("rows under no heads", () => {
  it("that name a limit are read all the same", () => {
    const { limits, told } = shopOf([
      ["Lorry load kg", 9000],
      ["Lorry length mm", 12000],
      ["Kerf mm", 3],
    ]);
    expect(limits).toMatchObject({ lorryLoad: 9000, lorryLength: 12000 });
    expect(told).toEqual([expect.stringMatching(/^A3: nothing goes by it: it is the head of a table/)]);
  });

  it("are told once a run, as after a blank row within a table", () => {
    const { told } = shopOf([
      ["size", "stock length mm", "bars held"],
      ["H16", 12000, 4],
      [],
      ["H20", 12000, 4],
      ["H25", 12000, 4],
      [],
      ["counted on a Friday"],
    ]);
    expect(told).toEqual([
      expect.stringMatching(
        /^A4: nothing goes by it: its row \(and the row below it\) stands under no row of heads/,
      ),
    ]);
  });
});

describe("a row of a table", () => {
  const CASES: [string, Cell[][], string][] = [
    [
      "a stock without a length",
      [
        ["size", "stock length mm"],
        ["H16", null],
      ],
      "A2: nothing goes by it, as its row holds no stock length mm",
    ],
    [
      "a plate without bars",
      [
        ["machine", "size", "bars"],
        ["M1", "H16", null],
      ],
      "A2: nothing goes by it, as its row holds no bars at once",
    ],
    [
      "a cutter without a name",
      [
        ["machine", "kerf"],
        [null, 3],
      ],
      "B2: nothing goes by it, as its row holds no machine",
    ],
    [
      "a machine written twice",
      [
        ["machine", "kerf"],
        ["S1", 3],
        ["S1", 4],
      ],
      "A3: a row above has the same machine, and this one is in force: write one row",
    ],
    [
      "a head with a slip",
      [
        ["machine", "lagest angle", "pins"],
        ["M1", 180, 30],
      ],
      'B1: nothing goes by this column: did you mean "largest angle"?',
    ],
    [
      "heads of no table",
      [
        ["size", "date"],
        ["H16", "2030-01-01"],
      ],
      "A1: this row looks like heads, but of no table that is known, so the rows below it are not read",
    ],
    [
      "a second trial log",
      [["bent to", "released"], [90, 88], [], ["bent to", "released"], [45, 43]],
      "A4: nothing goes by it: a table of this kind stands above, and this one is not read: put its rows there",
    ],
  ];
  for (const [what, rows, told] of CASES)
    it(`is told: ${what}`, () => expect(shopOf(rows).told).toEqual([told]));

  it("asks nothing of a new sheet's blanks", () => {
    const rows = shopTemplate().map(({ cells }) => [...cells]);
    expect(shopOf(rows).told).toEqual([]);
  });
});
