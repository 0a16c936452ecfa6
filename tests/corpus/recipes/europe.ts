import type { Cell } from "../../../core/schedule/sheet";
import type { CorpusBar } from "../corpus-bar";
import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn, memberOnce, serialColumn } from "../recipe-columns";
import { allOf, blankRowEvery, withMistakes } from "../untidy";
import { centimetres, metres } from "../written-length";

/**
 * EN 1992-1-1:2004 Table 8.1N a): former 4d to 16 mm, 7d above; the straight after the bend 5d, of links 10d
 * (figure 8.5). Masses per metre of EN 10080.
 */
const STEELS: readonly Steel[] = (
  [
    [8, 0.395],
    [10, 0.617],
    [12, 0.888],
    [16, 1.58],
    [20, 2.47],
    [25, 3.85],
  ] as const
).map(([diameter, mass]) => {
  const radius = (diameter <= 16 ? 2 : 3.5) * diameter;
  const linkEnd = diameter > 12 ? null : radius + 11 * diameter;
  return { size: diameter, diameter, mass, radius, linkRadius: radius, end: radius + 6 * diameter, linkEnd };
});
const DIAMETERS = STEELS.map(({ diameter }) => diameter);
const bars = (seed: number, members: readonly (readonly [string, number])[]) =>
  pathBars({ seed, count: 30, steels: STEELS, step: 10, members });
const pile = bars(1101, [["Poer P1", 4]]);
const plate = bars(1102, [["Platea", 1]]);
const strop = bars(1103, [
  ["Płyta P1", 1],
  ["Belka B1", 3],
]);
const temel = bars(1104, [
  ["S101", 4],
  ["K101", 2],
]);
const losa = bars(1105, [
  ["Zapata Z1", 6],
  ["Viga V1", 3],
]);
const wand = bars(1106, [["Wand W2", 2]]);
const rampa = bars(1107, [["Rampa", 1]]);
const perde = bars(1108, [["Perde", 3]]);

/** Lists of further countries: words and column orders are common practice. */
export const EUROPE: readonly CorpusSchedule[] = [
  list("nl-buigstaat", "xlsx", {
    isClean: true,
    bars: pile,
    columns: dutch(pile),
    title: [["BUIGSTAAT", null, "Blad 1"]],
    foot: [["Alle maten in mm, buitenwerks"]],
  }),
  list("it-distinta", "csv", { isClean: true, bars: plate, columns: italian(), delimiter: ";" }),
  list("pl-zestawienie", "csv", {
    isClean: true,
    bars: strop,
    columns: polish(),
    foot: polishFoot(strop),
    delimiter: ";",
  }),
  list("tr-metraj", "xlsx", { isClean: true, bars: temel, columns: turkish(), foot: turkishFoot(temel) }),
  list("es-despiece", "xlsx", {
    isClean: true,
    bars: losa,
    columns: spanish(losa),
    foot: [[...Array<null>(7).fill(null), "TOTAL kg", massOf(losa)]],
  }),
  list("nl-wand-untidy", "csv", {
    isClean: false,
    bars: withMistakes(wand, { 4: { size: 13 }, 9: { length: 11_990 }, 20: { mark: "3" } }),
    columns: dutch(wand),
    untidy: blankRowEvery(10),
    delimiter: ";",
  }),
  // a total length that is not count times length, and a length under the next size
  list("pl-rampa-untidy", "xlsx", {
    isClean: false,
    bars: rampa,
    columns: polish(),
    foot: polishFoot(rampa),
    untidy: allOf(movedRight(7), movedRight(16)),
  }),
  list("tr-perde-untidy", "csv", {
    isClean: false,
    bars: withMistakes(perde, { 2: { size: 21 }, 12: { length: 14_000 } }),
    columns: turkish(),
  }),
];

function list(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Other European", standard: "EC2:2004", format, ...rest });
}

/** The shape in a word, as lists write it whose sketches stand on the drawing. */
function inWords(head: string, straight: string, bent: string): RecipeColumn {
  return { key: "shape", head, value: ({ kind }) => (kind === "straight" ? straight : bent) };
}

function dutch(bars: readonly CorpusBar[]): readonly RecipeColumn[] {
  return [
    memberOnce("Onderdeel", bars),
    field("mark", "Merk"),
    field("total", "Aantal"),
    field("size", "Ø [mm]"),
    lengthColumn("Lengte [mm]"),
    inWords("Vorm", "recht", "gebogen"),
    ...dimColumns(["a", "b", "c", "d"]),
    massColumn("Gewicht [kg]", 1),
    field("remark", "Opmerking"),
  ];
}

function italian(): readonly RecipeColumn[] {
  return [
    field("mark", "Pos."),
    field("total", "N. ferri"),
    field("size", "Ø mm"),
    lengthColumn("Lunghezza cm", centimetres),
    totalLength("Lungh. tot. m"),
    { key: "mass", head: "Peso kg", value: ({ mass }) => mass?.toFixed(2).replace(".", ",") ?? null },
    inWords("Sagoma", "diritto", "sagomato"),
  ];
}

function polish(): readonly RecipeColumn[] {
  return [
    field("mark", ["Nr pręta", null]),
    field("size", ["Średnica", "[mm]"]),
    lengthColumn(["Długość", "[m]"], metres(2)),
    field("each", ["Liczba w 1 elemencie", "[szt.]"]),
    field("members", ["Liczba elementów", "[szt.]"]),
    field("total", ["Liczba ogółem", "[szt.]"]),
    ...DIAMETERS.map((diameter, place) =>
      ofSize([place === 0 ? "Długość ogólna [m]" : null, `A-IIIN Ø${diameter}`], diameter),
    ),
  ];
}

function polishFoot(bars: readonly CorpusBar[]): Cell[][] {
  const before = Array<null>(5).fill(null);
  return [
    ["Długość ogólna wg średnic [m]", ...before, ...DIAMETERS.map((one) => metresOf(bars, one))],
    ["Masa 1 m pręta [kg/m]", ...before, ...STEELS.map(({ mass }) => mass)],
    ["Masa całkowita [kg]", ...before, massOf(bars)],
  ];
}

function turkish(): readonly RecipeColumn[] {
  return [
    serialColumn("Sıra No"),
    field("mark", "Poz No"),
    field("member", "Açıklama"),
    field("size", "Çap (mm)"),
    field("members", "Benzer"),
    field("each", "Adet"),
    lengthColumn("Boy (m)", metres(2)),
    ...DIAMETERS.map((diameter) => ofSize(`Φ${diameter}`, diameter)),
  ];
}

function turkishFoot(bars: readonly CorpusBar[]): Cell[][] {
  const before = Array<null>(4).fill(null);
  return [
    [null, null, "Toplam boy (m)", ...before, ...DIAMETERS.map((one) => metresOf(bars, one))],
    [null, null, "Birim ağırlık (kg/m)", ...before, ...STEELS.map(({ mass }) => mass)],
    [null, null, "GENEL TOPLAM (kg)", ...before, massOf(bars)],
  ];
}

function spanish(bars: readonly CorpusBar[]): readonly RecipeColumn[] {
  return [
    memberOnce("Elemento", bars),
    field("mark", "Posición"),
    { key: "size", head: "Diámetro (mm)", value: ({ size }) => `Ø${size}` },
    field("members", "Nº piezas"),
    field("each", "Nº por pieza"),
    field("total", "Nº total"),
    lengthColumn("Longitud (m)", metres(2)),
    totalLength("Long. total (m)"),
    massColumn("Peso (kg)"),
  ];
}

function totalLength(head: string): RecipeColumn {
  return { key: "other", head, value: (bar) => Number((wholeLength(bar) / 1000).toFixed(2)) };
}

function ofSize(head: RecipeColumn["head"], diameter: number): RecipeColumn {
  return {
    key: "other",
    head,
    value: (bar) => (bar.diameter === diameter ? Number((wholeLength(bar) / 1000).toFixed(2)) : null),
  };
}

function wholeLength({ length, total }: CorpusBar): number {
  return typeof length === "number" ? length * (total ?? 0) : 0;
}

function metresOf(bars: readonly CorpusBar[], diameter: number): number {
  const sum = bars.filter((bar) => bar.diameter === diameter).reduce((so, bar) => so + wholeLength(bar), 0);
  return Number((sum / 1000).toFixed(2));
}

function massOf(bars: readonly CorpusBar[]): number {
  return Number(bars.reduce((sum, { mass }) => sum + (mass ?? 0), 0).toFixed(1));
}

/** The last filled cell of a bar's row slips one column to the right, or to the left where there is none. */
function movedRight(bar: number): NonNullable<CorpusSchedule["untidy"]> {
  return (rows, headerRows) =>
    rows.map((row, at) => {
      if (at !== headerRows + bar) return row;
      const moved = [...row];
      const from = Math.max(...moved.map((cell, column) => (cell === null ? -1 : column)));
      const to = from + 1 < moved.length ? from + 1 : from - 1;
      [moved[from], moved[to]] = [moved[to] ?? null, moved[from] ?? null];
      return moved;
    });
}
