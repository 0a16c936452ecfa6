import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { readHeading } from "../../../core/schedule/rows/read-heading";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;

it.each([
  ["TEMELJNA TRAKA T1 (kom. 3)", "TEMELJNA TRAKA T1", 3],
  ["ZAPATA Z-1 – cantidad 14", "ZAPATA Z-1", 14],
  ["PILAR P3, qtde 6", "PILAR P3", 6],
  ["Ława Ł1 – szt. 3", "Ława Ł1", 3],
  ["柱C1 12箇所", "柱C1", 12],
  ["Trave T1 n. 2", "Trave T1", 2],
  ["Dầm D1 (SL: 5)", "Dầm D1", 5],
] as const)("reads how many members the heading %s gives", (text, member, members) => {
  expect(readHeading(text)).toEqual({ member, members });
});

it.each(["Stützen St 1 – St 6", "Zone N 3", "Unit 3", "Pilar Nº 4", "Level 3"])(
  "takes no number of members out of the name %s",
  (text) => {
    expect(readHeading(text).members).toBeNull();
  },
);

// of one: 4 x 5 m of 16, 40 x 1 m of 8, 6 x 3 m of 12; by hand 20 x 1.579 + 40 x 0.395 + 18 x 0.888 = 63.364 kg of one
const ROWS: Cell[][] = [
  ["Mark", "Size", "Pcs", "Length (m)", "Shape"],
  ["Beam B1 (6 nos)"],
  ["1", 16, 4, 5, null],
  ["2", 8, 40, 1, null],
  ["Beam B2 (1 no)"],
  ["3", 12, 6, 3, null],
];
const counts = (rows: Cell[][], extra: object = {}) =>
  readSchedule({ ...sheetFromRows("List", rows), ...extra }, standard).bars.map(({ each, total }) => ({
    each,
    total,
  }));
const OF_ONE = [
  { each: 4, total: null },
  { each: 40, total: null },
  { each: 6, total: null },
];
const OF_ALL = [
  { each: null, total: 4 },
  { each: null, total: 40 },
  { each: null, total: 6 },
];

describe("a bare count under headings that give several members", () => {
  it("asks whose it is where nothing tells", () => {
    expect(counts(ROWS)[0]).toEqual({ each: null, total: null });
  });
  it("is that of all where the sub-totals are those of the rows and the last sum is that of the sub-totals", () => {
    // kg by hand, number x length x kg/m: 20 x 1.579, 40 x 0.395, 18 x 0.888, 24 x 0.617 (the UK three-decimal table, 10 mm by EN 10080)
    const rows: Cell[][] = [
      [...(ROWS[0] as Cell[]), "kg"],
      ["Beam B1 (6 nos)"],
      ["1", 16, 4, 5, null, 31.58],
      ["2", 8, 40, 1, null, 15.8],
      ["Sub-total", null, null, null, null, 47.38],
      ["Beam B2 (4 nos)"],
      ["3", 12, 6, 3, null, 15.98],
      ["Sub-total", null, null, null, null, 15.98],
      ["Beam B3 (2 nos)"],
      // 14.81 is right: a slip in one row leaves the sub-totals what they are
      ["4", 10, 6, 4, null, 41.81],
      ["Sub-total", null, null, null, null, 14.81],
      ["Total", null, null, null, null, 78.17],
    ];
    expect(counts(rows).slice(0, 3)).toEqual(OF_ALL);
  });
  it("is that of all where most sizes of the summary say so, and one of them fits otherwise by chance", () => {
    // m by hand: 16: 20 of all; 8: 40; 12: 18 and 6 times as much 108; 10: 108
    const rows: Cell[][] = [
      ["Mark", "Size", "Pcs", "Length (m)", "Total m"],
      ["Beam B1 (6 nos)"],
      ["1", 16, 4, 5, 20],
      ["2", 8, 40, 1, 40],
      ["5", 12, 6, 3, 18],
      ["Beam B2 (1 no)"],
      ["3", 10, 36, 3, 108],
      ["Summary"],
      ["8", null, null, null, 40],
      ["10", null, null, null, 108],
      ["12", null, null, null, 18],
      ["16", null, null, null, 20],
    ];
    expect(counts(rows)[0]).toEqual({ each: null, total: 4 });
  });
  it("is one member's where a sentence over the list says so", () => {
    expect(counts([["Quantities are given per member"], [], ...ROWS])).toEqual(OF_ONE);
  });
  it("is one member's where another sheet has the mass of one and of all in a line", () => {
    // 20 x 1.579 + 40 x 0.395 = 47.38 kg of one beam, 284.28 of six
    const elsewhere = () => [["Beam B1", 6, 47.4, 284.3]];
    expect(
      counts(ROWS, { elsewhere: () => elsewhere().map((cells) => ({ cells, at: () => "Sums!A1" })) }),
    ).toEqual(OF_ONE);
  });
  it("is that of all where sums by size on another sheet are those of the rows as they stand", () => {
    const elsewhere = () => [
      ["8", 15.8],
      ["16", 31.6],
    ];
    expect(
      counts(ROWS, { elsewhere: () => elsewhere().map((cells) => ({ cells, at: () => "Sums!A1" })) }),
    ).toEqual(OF_ALL);
  });
});

// common practice: a member is said with where it stands
it.each([
  [
    "Beam B1 to B9 on gridline A between columns 1 and 12, second floor, north wing, stage two, west end bay, part",
    true,
  ],
  [
    "Slab 200 thick of concrete class C30 with a cover of 40 at the bottom and of 30 at the top, cast in two layers",
    false,
  ],
  [
    "Beam B1 bars are to be lapped away from the support, staggered, by no less than fifty diameters in each layer",
    false,
  ],
])("takes %s for a member's name only where its mark comes first", (text, isMember) => {
  const rows: Cell[][] = [
    ["Mark", "Size", "Pcs", "Length (m)", "Shape"],
    ["Beam B0"],
    ["1", 16, 4, 5, null],
    [text],
    ["2", 8, 40, 1, null],
  ];
  const { bars } = readSchedule(sheetFromRows("List", rows), standard);
  expect(bars.map(({ member }) => member)).toEqual(["Beam B0", isMember ? text : "Beam B0"]);
});

describe("a line of words under such a heading that names no member", () => {
  // kg of one, by hand: 9 x 2.29 + 4 x 3.95 = 36.41 and 12 x 3.71 = 44.52; times 6 and 2 they are 218.46 and 89.04
  const rows: Cell[][] = [
    ["Nr", "Opis", "Ø mm", "Długość [mm]", "Liczba", "Masa 1 szt. [kg]"],
    [null, "Stopa F-1 (szt. 6)"],
    [null, null, null, "Pręty i strzemiona"],
    ["1", "pręt", 16, 1450, 9, 2.29],
    ["2", "pręt", 20, 1600, 4, 3.95],
    [null, "Stopa F-2 (szt. 2)"],
    [null, null, null, "Pręty i strzemiona"],
    ["3", "pręt", 16, 2350, 12, 3.71],
    [],
    [null, "Stopa F-1", 6, null, null, 36.41, 218.46],
    [null, "Stopa F-2", 2, null, null, 44.52, 89.04],
  ];

  it("ends nothing: the sums tell of the members as they do without it", () => {
    const each = [9, 4, 12].map((count) => ({ each: count, total: null }));
    expect(counts(rows)).toEqual(each);
    expect(counts(rows.filter((cells) => cells[3] !== "Pręty i strzemiona"))).toEqual(each);
  });
});

it("is open where lines say again what one member weighs: they are no sum of all", () => {
  const rows: Cell[][] = [
    ["Nr", "Opis", "Ø mm", "Długość [mm]", "Liczba", "Masa 1 szt. [kg]"],
    [null, "Stopa F-1 (szt. 6)"],
    ["1", "pręt", 16, 1450, 9, 2.29],
    ["2", "pręt", 20, 1600, 4, 3.95],
    [null, "Stopa F-2 (szt. 2)"],
    ["3", "pręt", 16, 2350, 12, 3.71],
    [],
    [null, "Stopa F-1", 6, null, null, 36.41],
    [null, "Stopa F-2", 2, null, null, 44.52],
  ];
  expect(counts(rows)[0]).toEqual({ each: null, total: null });
});

describe("masses of each member and of all, beside a list that sums lengths", () => {
  // by hand with 1.578 and 0.395 kg/m: 9 x 1.45 x 1.578 + 5 x 1.3 x 0.395 = 23.16 of one, 138.96 of 6
  it("tell whose bars a bare count counts", () => {
    const rows: Cell[][] = [
      [
        "Pos",
        "Ø (mm)",
        "Cantidad",
        "Long. (m)",
        "Long. total (m)",
        null,
        "Elemento",
        "Cant.",
        "Ø8",
        "Ø12",
        "Ø16",
        "kg por elem.",
        "kg total",
      ],
      ["Zapata Z1 (6 uds)", null, null, null, null, null, "Zapata Z1", 6, 2.57, null, 20.59, 23.16, 138.96],
      ["1", 16, 9, 1.45, 13.05, null, "Viga V1", 1, null, 10.66, null, 10.66, 10.66],
      ["2", 8, 5, 1.3, 6.5],
      ["Viga V1 (1 ud)"],
      ["3", 12, 2, 6, 12],
    ];
    expect(counts(rows)).toEqual([9, 5, 2].map((count) => ({ each: count, total: null })));
  });
});

// four members of 3, 2, 2 and 4 bars: 12, 8, 8, 16
describe("a number of members that stands in the first row of a member alone, beside totals", () => {
  const list = (total: number): Cell[][] => [
    ["Member", "Mark", "Size", "No. of mbrs", "No. in each", "Total no.", "Length mm"],
    ["Beam GB1", "01", "H25", 4, 3, 12, 7000],
    [null, "02", "H20", null, 2, 8, 6580],
    [null, "03", "H16", null, 2, 8, 3525],
    [null, "04", "H16", null, 4, total, 2050],
    ["Base F1", "05", "H16", 6, 9, 54, 2450],
    [null, "06", "H16", null, 10, 60, 2250],
    [null, "07", "H16", null, 5, 30, 2250],
  ];

  it("counts for the rows below where their totals are so many times as many", () => {
    expect(counts(list(16)).map(({ total }) => total)).toEqual([12, 8, 8, 16, 54, 60, 30]);
    const { bars } = readSchedule(sheetFromRows("List", list(19)), standard);
    // the typed total stays, and does not fit 4 x 4
    expect(bars[3]).toMatchObject({ members: 4, each: 4, total: 19 });
  });
});

// "Off" counts all bars beside "No per", and beside a word that says as little the masses tell: kg/m of BS 4449
describe("two bare words for counts", () => {
  const list = (word: string): Cell[][] => [
    ["Mark", "Bar", word, "Off", "Length", "kg"],
    ["Wall base (1 off)"],
    ["WB1", "H16", 75, 75, 2500, 295.9],
    ["WB2", "H12", 75, 75, 2400, 159.8],
    ["Column C1 (8 off)"],
    ["C1", "H25", 8, 64, 4300, 1060.5],
    ["C2", "H10", 32, 256, 1520, 240.1],
    ["Beam GB2 (5 off)"],
    ["G1", "H20", 4, 20, 6650, 328],
    ["G2", "H16", 2, 10, 6450, 101.8],
    ["G3", "H10", 41, 205, 1700, 215],
  ];

  it.each(["No per", "Pcs"])("are one member's and all: %s", (word) => {
    const { bars, held } = readSchedule(sheetFromRows("List", list(word)), standard);
    expect(held).toBeNull();
    expect(bars.map(({ each, total }) => [each, total])).toEqual([
      [75, 75],
      [75, 75],
      [8, 64],
      [32, 256],
      [4, 20],
      [2, 10],
      [41, 205],
    ]);
  });
});
