import { describe, expect, it } from "vitest";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const read = (rows: Cell[][], extra: object = {}) =>
  readSchedule({ ...sheetFromRows("List", rows), ...extra }, standard);

it.each(["Massa kg/m", "Berat/m kg/m", "น้ำหนัก กก./ม.", "Poids (kg/ml)", "Weight kg/m"])(
  "takes %s for the mass of a metre",
  (text) => {
    expect(recogniseHeader(text)?.kind).toBe("unitMass");
  },
);

it.each([
  ["Spacing mm c/c", "mm"],
  ["Spacing\nmm c/c", "mm"],
  ["Spacing (mm) c/c", "mm"],
  ["c/c", null],
])("takes %j for the spacing, and no letter C of it for a dimension", (text, unit) => {
  expect(recogniseHeader(text)).toMatchObject({ kind: "spacing", unit });
});

// "Dimensions" over letters: the letter heads its column, whatever stands between
it("takes legs under a head of dimensions for legs", () => {
  const { tables } = read([
    ["Mark", "Dia.", "Total Qty", "Cut length (m)", "Dimensions, mm", null, null],
    [null, null, null, null, "A", "B", "C"],
    ["G1", "20 mm", 16, 6.56, 320, 5920, 320],
    ["G4", "16 mm", 16, 1.94, 260, 1680, null],
  ]);
  expect(["A", "B", "C"].map((letter) => tables[0]?.columns.get(letter as "A")?.column)).toEqual([4, 5, 6]);
});

// the same under a head that also names the shape, and where a hook stands behind the legs
it("takes legs under a head of shape and dimensions for legs", () => {
  const { tables } = read([
    ["Sl.", "Dia", "Nos.", "Shape, outside dimensions (mm)", null, null, "Cutting length", "Weight"],
    [null, "mm", null, "a", "b", "c", "m", "kg"],
    ["1", 12, 117, 150, 2100, 150, 2.352, 244.36],
    ["2", 12, 135, 150, 1700, 150, 1.952, 234.01],
  ]);
  expect(["A", "B", "C"].map((letter) => tables[0]?.columns.get(letter as "A")?.column)).toEqual([3, 4, 5]);
});

// b / s + 1 bars: the letter of a width beside that of a spacing is no leg
it("takes no lone letter but A for a leg", () => {
  const { tables } = read([
    ["Pos.", "St\u00fcck", "\u00d8 mm", "L\u00e4nge m", "Rolle dbr mm", "s cm", "b cm"],
    ["5", 150, 10, 1.78, 40, 15, 730],
    ["8", 152, 8, 1.44, 32, 15, 550],
  ]);
  expect(tables[0]?.columns.has("B")).toBe(false);
  expect(tables[0]?.columns.get("former")?.column).toBe(4);
});

it("takes Zone in a unit of length for no pour", () => {
  expect(recogniseHeader("Zone")?.kind).toBe("pour");
  expect(recogniseHeader("Zone mm")).toBeNull();
});

// three rows: the words, what goes on of them, and the units
it("reads a header whose row of units stands below words that go on", () => {
  const { tables, rowClasses, bars } = read([
    ["Merk", "Onderdeel", "Aantal", "Per", "Totaal", "\u00d8", "Buig-", "a", "b", "c", "Lengte", "kg"],
    [null, null, "ond.", "ond.", null, null, "doorn"],
    [null, null, "st", "st", "st", "mm", "mm", "mm", "mm", "mm", "mm", "kg"],
    ["101", "Balk B2", 4, 4, 16, 20, 140, 320, 5340, 320, 5980, 235.9],
    ["102", "Balk B2", 4, 3, 12, 16, 64, 260, 5340, 260, 5860, 111],
  ]);
  expect(rowClasses.slice(0, 3)).toEqual(["heading", "heading", "heading"]);
  expect(tables[0]?.columns.get("former")).toMatchObject({ column: 6, unit: "mm" });
  expect(bars.map(({ members, each, total }) => [members, each, total])).toEqual([
    [4, 4, 16],
    [4, 3, 12],
  ]);
});

// words of a Serbian list, from memory: lg is a bar's length, lgn that of all
it.each([
  ["ozn.", "mark"],
  ["oblik i mere [cm]", "shape"],
  ["lg [m]", "length"],
  ["n po elem.", "each"],
  ["n [kom]", "total"],
])("takes %s for the %s", (text, kind) => {
  expect(recogniseHeader(text)?.kind).toBe(kind);
});

// a stroke inside a word of Spanish: c/u is cada uno, of each (common practice)
it("takes the c of c/u for no dimension", () => {
  expect(recogniseHeader("Cantidad c/u")?.kind).toBe("each");
  expect(recogniseHeader("Cant. c/u")?.kind).toBe("each");
  expect(recogniseHeader("Peso c/u")?.kind).toBe("pieceMass");
});

// what the former is bent round is named by its roll or drum too
it.each([
  ["buig-\nrol \u00d8 mm", "mm"],
  ["buigrol \u00d8", null],
  ["\u03a4\u03a5\u039c\u03a0\u0391\u039d\u039f D (mm)", "mm"],
  ["Bend pin (in)", "in"],
  ["Mandril (mm)", "mm"],
  ["Diametro mandrino (mm)", "mm"],
  ["Pino de dobramento (mm)", "mm"],
  ["Dor \u00d8", null],
  ["B\u00f8yedor \u00d8 mm", "mm"],
  ["Doorn \u00d8", null],
  ["\u00d8 mandrino mm", "mm"],
  ["\u015arednica trzpienia [mm]", "mm"],
  ["Pr\u016fm\u011br trnu (mm)", "mm"],
  ["Bend dia", null],
])("takes %j for the former", (text, unit) => {
  expect(recogniseHeader(text)).toMatchObject({ kind: "former", unit });
});

// legs are lettered in the list's own script: from memory
it.each([
  ["\u03b1", "A"],
  ["\u03b2 (cm)", "B"],
  ["\u05d0", "A"],
  ["\u05d1", "B"],
  ["\u05d2", "C"],
  ["\u0623", "A"],
  ["\u0628", "B"],
  ["\u062c", "C"],
])("takes %j for a leg", (text, kind) => {
  expect(recogniseHeader(text)).toMatchObject({ kind });
});

// a total of lengths says so by its unit, in the words of the country
it.each([
  ["Total (pies)", "ft"],
  ["Total (pieds)", "ft"],
  ["Total (p\u00e9s)", "ft"],
  ["Total metros", "m"],
])("takes %s for the total length", (text, unit) => {
  expect(recogniseHeader(text)).toMatchObject({ kind: "totalLength", unit });
});

it("lets a total of something that nobody knows give way to the column that counts", () => {
  expect(recogniseHeader("Total (varas)")).toMatchObject({ kind: "total", weak: true });
  expect(recogniseHeader("Total (nos)")).toMatchObject({ kind: "total", weak: false });
});

// metres and feet of the same bars beside each other; 1 ft = 0.3048 m (international foot)
it("takes nothing for contradicted where total lengths stand in two units", () => {
  const { tables, guesses } = read([
    ["Marca", "\u00d8 mm", "Cantidad", "Largo (m)", "Total (m)", "Total (pies)", "kg/m", "Peso kg"],
    ["A1", 12, 10, 2, 20, 65.62, 0.888, 17.76],
    ["A2", 16, 8, 2.5, 20, 65.62, 1.578, 31.56],
    ["A3", 12, 30, 1, 30, 98.43, 0.888, 26.64],
    ["A4", 20, 4, 5, 20, 65.62, 2.466, 49.32],
    ["A5", 10, 50, 1.2, 60, 196.85, 0.617, 37.02],
  ]);
  expect(tables[0]?.columns.get("total")?.column).toBe(2);
  expect(guesses?.filter(({ guess }) => guess === "words-contradicted")).toEqual([]);
});

it("takes a letter before every size for a column a size, also where no standard has it before one", () => {
  const { tables } = read([
    [
      "\u041f\u043e\u0437.",
      "\u041a\u043e\u043b.",
      "\u0414\u043b\u0438\u043d\u0430, \u043c",
      "\u041e\u0431\u0449\u0430\u044f \u0434\u043b\u0438\u043d\u0430, \u043c",
    ],
    [null, null, null, "N8", "N10", "N12", "N16"],
    ["1", 10, 2, 20],
    ["2", 12, 3, null, 36],
    ["3", 4, 5, null, null, 20],
  ]);
  expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(["N8", "N10", "N12", "N16"]);
});

describe("a row that letters or numbers the columns", () => {
  const rows = (letters: Cell[]): Cell[][] => [
    ["S.No", "Description", "Dia (mm)", "Nos", "Cut length (m)", "Total length (m)"],
    letters,
    [1, "Main", 16, 10, 4, 40],
    [2, "Links", 8, 20, 1.2, 24],
    [3, "Top", 12, 5, 3, 15],
  ];
  it.each([
    [["A", "B", "C", "D", "E", "F"]],
    [["(a)", "(b)", "(c)", "(d)", "(e)", "(f)=(d)x(e)"]],
    [[1, 2, 3, 4, 5, 6]],
  ])("is no header of dimensions: %j", (letters) => {
    const { bars, tables } = read(rows(letters));
    expect(tables).toHaveLength(1);
    expect(bars.map(({ size, total, length }) => [size?.diameter, total, length])).toEqual([
      [16, 10, 4000],
      [8, 20, 1200],
      [12, 5, 3000],
    ]);
  });
});

it("joins sizes that are written in mm under the head of the lengths, beside a further word", () => {
  const { tables, bars } = read([
    [
      "Mark",
      "Dia",
      "No. of members",
      "Bars per member",
      "Total nos",
      "Cutting length (m)",
      "Total length in metre",
    ],
    [null, null, null, null, null, null, "8 mm", "10 mm", "12 mm", "16 mm", "Remarks"],
    ["a", 12, 2, 5, 10, 2, null, null, 20, null, "B1"],
    ["b", 16, 2, 4, 8, 3, null, null, null, 24, null],
  ]);
  expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(["8", "10", "12", "16"]);
  expect(bars.map(({ total, length }) => [total, length])).toEqual([
    [10, 2000],
    [8, 3000],
  ]);
});

it("takes a short column in mm of nothing but diameters for the sizes, whatever its word", () => {
  const { bars } = read([
    ["Mark", "Xyz (mm)", "No. of bars", "Length (cm)", "Shape"],
    ["N1", 10, 6, 552, null],
    ["N2", 12.5, 6, 562, null],
    ["N3", 5, 66, 136, null],
    ["N4", 8, 8, 500, null],
    ["N5", 16, 4, 670, null],
  ]);
  expect(bars.map(({ size }) => size?.diameter)).toEqual([10, 12.5, 5, 8, 16]);
});

it("reads the second half of a list that stands beside the first under the same heads", () => {
  const heads = ["Mark", "Xyz (mm)", "Quant", "Shape", "Length (cm)"];
  const { bars } = read([
    [...heads, null, ...heads],
    ["N1", 10, 6, "a", 552, null, "N6", 12.5, 24, "a", 365],
    ["N2", 12.5, 6, "a", 562, null, "N7", 5, 156, "a", 96],
    ["N3", 5, 66, "a", 136, null, "N8", 16, 24, "a", 380],
    ["N4", 6.3, 8, "a", 500, null, "N9", 6.3, 84, "a", 128],
    ["N5", 16, 4, "a", 670, null, "N10", 10, 110, "a", 160],
  ]);
  expect(bars.map(({ mark }) => mark).sort()).toEqual(
    ["N1", "N10", "N2", "N3", "N4", "N5", "N6", "N7", "N8", "N9"].sort(),
  );
});

it("takes a count out of a size cell of another standard: 48 - #5", () => {
  const { bars } = read([
    ["Mark", "Bar size", "Length", "Shape", "Remarks"],
    ["A1", "48 - #5", "6'-6\"", null, "mat"],
    ["A2", "32 - #6", "5'-0\"", null, "dowels"],
    ["A3", "10-25M", "20'-0\"", null, "edge"],
  ]);
  expect(bars.map(({ total, size }) => [total, size?.diameter])).toEqual([
    [48, 15.875],
    [32, 19.05],
    [10, 25.2],
  ]);
});

describe("lines that sum by size below a list", () => {
  const list: Cell[][] = [
    ["Mark", "Size", "No. of bars", "Shape", "Length (mm)", "Total length (m)", "Mass (kg)"],
    ["1", "T12", 40, null, 3000, 120, 106.6],
    ["2", "T16", 20, null, 4000, 80, 126.3],
    ["3", "T8", 100, null, 1000, 100, 39.5],
    [],
  ];
  it.each([
    [
      [
        ["T8", 100, "jm", 39.5, "kg"],
        ["T12", 120, "jm", 106.6, "kg"],
        ["T16", 80, "jm", 126.3, "kg"],
      ],
    ],
    [
      [
        ["Ø8", 39.5, 'ק"ג'],
        ["Ø12", 106.6, 'ק"ג'],
        ["Ø16", 126.3, 'ק"ג'],
      ],
    ],
    [
      [
        ["d ≤ 10", null, null, null, 39.5, "kg"],
        ["10 < d ≤ 18", null, null, null, 232.9, "kg"],
      ],
    ],
    [
      [
        ["SUMMARY", null, "PCS", "kg"],
        ["10M", null, 100, 39.5],
        ["15M", null, 40, 106.6],
        ["20M", null, 20, 126.3],
      ],
    ],
  ] as Cell[][][][])("are no bars: %j", (lines) => {
    expect(read([...list, ...lines]).bars).toHaveLength(3);
  });
});

it("takes a row of diameters for heads where one of them is of another standard", () => {
  // BS 8666 has no 14 mm bar (table 3), most of Europe has
  const { tables } = read([
    ["Pos.", "Stück", "Ø", "Einzellänge", "Gesamtlänge in m für Ø (mm)", null, null, null],
    [null, null, "mm", "m", 10, 12, 14, 16],
    ["1", 54, 16, 2.5, null, null, null, 135],
    ["2", 24, 12, 2.05, null, 49.2, null, null],
    ["3", 26, 14, 10.4, null, null, 270.4, null],
    ["4", 18, 10, 1.68, 30.24, null, null, null],
  ]);
  expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(["10", "12", "14", "16"]);
  expect(tables[0]?.bySizeUnit).toBe("m");
});

it("takes a line that says SUB alone, under any column, for a sub-total", () => {
  const { totals, rowClasses } = read([
    ["MK", "SIZE", "PCS", "SHAPE", "CUT LGTH MM", "KG", "WHERE"],
    ["401", "H12", 6, "STR", 3000, 16, "flange"],
    ["402", "H12", 4, "STR", 5000, 17.8, null],
    [null, null, null, null, "SUB", 33.8, null],
  ]);
  expect(rowClasses[3]).toBe("total");
  expect(totals.map(({ kind }) => kind)).toEqual(["subtotal"]);
});

// pins of ACI practice are given in inches and fractions beside lengths in feet and inches
it("takes bare numbers under a head in inches for inches, where none is in feet", () => {
  const pins = (head: string) =>
    readSchedule(
      sheetFromRows("R-1", [
        ["MARK", "QTY", "SIZE", "LENGTH", "TYPE", "A", "B", head],
        ["F701", 50, "#7", "10'-8\"", "L", "1'-2\"", "9'-6\"", "5 1/4"],
        ["F801", 12, "#8", "22'-4\"", "L", "1'-4\"", "21'-0\"", 6],
        ["F901", 9, "#9", "27'-2\"", "L", "1'-7\"", "25'-7\"", "9 1/2"],
      ]),
      resolveStandard("ACI318:2019") as Standard,
    ).bars.map(({ former }) => former);
  // 25.4 mm an inch
  expect(pins("PIN (IN)")).toEqual([133.35, 152.4, 241.3]);
});

it.each([
  ["Comprimentos", "length"],
  ["Longitudes (cm)", "length"],
  ["Longitudes unitarias (cm)", "length"],
  ["Lunghezze unitarie (cm)", "length"],
  ["Längen (m)", "length"],
  ["Длины, мм", "length"],
  ["Lunghezze totali (m)", "totalLength"],
  ["Comprimentos totais (m)", "totalLength"],
])("takes lengths of which several are meant, %s, for the same as one", (text, kind) => {
  expect(recogniseHeader(text)?.kind).toBe(kind);
});

// a cut size of stock is its length, in the timber and steel trades alike: common practice
it.each(["Cut size", "Cutting size (m)", "Cut sizes"])("takes %s for the length", (text) => {
  expect(recogniseHeader(text)?.kind).toBe("length");
});

it("says nothing of a cut size in metres that the masses agree with", () => {
  const { tables, guesses } = read([
    ["S/N", "Rod", "Cut size", "All pcs", "Kg"],
    [1, "Y12", 1.35, 168, 201.4],
    [2, "Y16", 1.7, 56, 150.3],
    [3, "Y8", 0.84, 42, 13.9],
    [4, "Y16", 3.7, 56, 327.2],
    [5, "Y12", 5.5, 12, 58.6],
  ]);
  expect(tables[0]?.columns.get("length")?.column).toBe(2);
  expect(guesses?.map(({ guess }) => guess)).not.toContain("words-contradicted");
});

// from centre to centre, whatever the word for the gap means elsewhere: "bil" counts in Malay
it.each(["Bil c/c mm", "Nº c/c mm"])("takes %s for the spacing in mm", (text) => {
  expect(recogniseHeader(text)).toMatchObject({ kind: "spacing", unit: "mm" });
});

it.each([
  ["Icelandic", ["Staður", "Nr.", "Stærð", "Fjöldi", "Lengd\nmm", "Þyngd\nkg"]],
  ["German", ["Wo", "Nr.", "Ø", "Anzahl", "Länge\nmm", "Gewicht\nkg"]],
  ["Turkish", ["Nerede", "No", "Çap", "Adet", "Boy\nmm", "Ağırlık\nkg"]],
])("takes the number behind a column of places for the mark in a %s list", (_, heads) => {
  const { bars } = read([
    heads,
    ["A", 1, 12, 10, 2000, 17.8],
    [null, 2, 16, 10, 4000, 63.2],
    ["B", 3, 10, 20, 3000, 37],
    [null, 3, 10, 20, 3000, 37],
    [null, 4, 8, 40, 1000, 15.8],
  ]);
  expect(bars.map(({ mark }) => mark)).toEqual(["1", "2", "3", "3", "4"]);
});

// what stands over sizes, counts and lengths in lists of Mexico, Brazil and Greece: common practice
it.each([
  ["No. Var", "size"],
  ["UNIT (cm)", "length"],
  ["Q", "total"],
  ["Περιγραφή", "member"],
  ["Μήκος ράβδου", "length"],
])("takes %s for the %s", (text, kind) => {
  expect(recogniseHeader(text)?.kind).toBe(kind);
});

it("counts the bars of a Brazilian list under Q, not under N", () => {
  const { bars, held } = read([
    ["ELEM.", "N", "AÇO", "DIÂM (mm)", "Q", "UNIT (cm)", "TOTAL (cm)"],
    ["V1", 1, "CA-60", 5, 31, 154, 4774],
    [null, 2, "CA-50", 10, 2, 530, 1060],
    [null, 3, "CA-50", 8, 3, 548, 1644],
    ["V2", 4, "CA-50", 16, 4, 470, 1880],
  ]);
  expect(held ?? null).toBeNull();
  expect(bars.map(({ total, length }) => [total, length])).toEqual([
    [31, 1540],
    [2, 5300],
    [3, 5480],
    [4, 4700],
  ]);
});

it("takes a row of units under some of the columns into a head of two rows", () => {
  const { rowClasses, tables } = read([
    ["Pos.", "Stück", "Ø", "Biegemaße", null, "Länge", "Gewicht"],
    [null, "Stk", "mm", "a", "b", "m", "kg/m", "kg"],
    [null, null, null, "cm", "cm"],
    [1, 24, 14, 30, 190, 2.2, 1.21, 63.9],
    [2, 48, 20, 45, 185, 2.3, 2.47, 272.7],
    [3, 30, 8, 34, 120, 1.54, 0.395, 18.2],
  ]);
  expect(rowClasses.slice(0, 4)).toEqual(["heading", "heading", "heading", "bar"]);
  expect(tables[0]?.columns.get("A")?.unit).toBe("cm");
  expect(tables[0]?.columns.get("mass")?.column).toBe(7);
});

describe("words that nobody knows over steels that everybody knows", () => {
  const list = (head: string, ...steels: Cell[]): Cell[][] => [
    ["Mark", "Size", head, "No.", "Length mm"],
    ...steels.map((steel, at) => [at + 1, 12, steel, 10, 2000 + 100 * at]),
  ];
  const gradesOf = (rows: Cell[][]) => read(rows).bars.map(({ grade }) => grade);

  it("should head grades", () => {
    expect(gradesOf(list("Kv. xyz", "B500B", "B500B", "B500C", "B500B"))).toEqual([
      "B500B",
      "B500B",
      "B500C",
      "B500B",
    ]);
  });

  it("should head none where few of them are steels", () => {
    expect(gradesOf(list("Kv. xyz", "B500B", "east", "B500B", "west"))).toEqual([null, null, null, null]);
    expect(gradesOf(list("Kv. xyz", "A400", 5, "A400", "A400"))).toEqual([null, null, null, null]);
  });
});

// the length before bending, in words of many languages (from memory)
it.each([
  ["LONG. DESARR. m", "m"],
  ["Long. desarrollada", null],
  ["Lungh. sviluppata (cm)", "cm"],
  ["Compr. desenv.", null],
  ["Long. d\u00e9velop. (m)", "m"],
  ["Gestr. L\u00e4nge", null],
  ["Rozvinut\u00e1 d\u013a\u017eka", null],
  ["D\u0142ugo\u015b\u0107 rozw.", null],
  ["Razv. du\u017eina", null],
  ["Lungime desf\u0103\u0219urat\u0103", null],
  ["Kiter\u00edtett hossz", null],
  ["A\u00e7\u0131n\u0131m boyu", null],
  ["\u0391\u03bd\u03b1\u03c0\u03c4. \u03bc\u03ae\u03ba\u03bf\u03c2", null],
  ["\u0420\u0430\u0437\u0432\u0451\u0440\u043d\u0443\u0442\u0430\u044f \u0434\u043b\u0438\u043d\u0430", null],
])("takes %s for the length of a bar", (text, unit) => {
  expect(recogniseHeader(text)).toMatchObject({ kind: "length", unit, weak: false });
});
