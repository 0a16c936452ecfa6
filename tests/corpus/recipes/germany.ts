import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { field, lengthColumn, massColumn } from "../recipe-columns";
import { allOf, blankRowEvery, withMistakes } from "../untidy";
import { metres, metresWithComma } from "../written-length";

/**
 * DIN EN 1992-1-1/NA Table NA.8.1, from memory: former 4d below 20 mm and 7d from 20 mm; the straight after the
 * bend 5d, of links 10d. Masses per metre of DIN 488.
 */
const STEELS: readonly Steel[] = (
  [
    [8, 0.395],
    [10, 0.617],
    [12, 0.888],
    [14, 1.21],
    [16, 1.58],
    [20, 2.47],
    [25, 3.85],
  ] as const
).map(([diameter, mass]) => {
  const radius = (diameter < 20 ? 2 : 3.5) * diameter;
  return {
    size: diameter,
    diameter,
    mass,
    radius,
    linkRadius: radius,
    end: radius + 6 * diameter,
    linkEnd: diameter > 12 ? null : radius + 11 * diameter,
  };
});
const bars = (seed: number, member: string) =>
  pathBars({ seed, count: 40, steels: STEELS, step: 10, members: [[member, 1]], grade: "B500B" });
const plate = bars(601, "Bodenplatte");
const cellar = bars(602, "Kellerwand");
const hall = bars(603, "Unterzug U1");
const bridge = bars(604, "Widerlager");
const ramp = bars(605, "Rampe");

const DIAMETERS = STEELS.map(({ diameter }) => diameter);

/** Stahllisten: positions, metres with a comma, former beside the sketch. */
export const GERMANY: readonly CorpusSchedule[] = [
  de("de-bodenplatte", "xlsx", { isClean: true, bars: plate, columns: columns(false) }),
  de("de-kellerwand", "csv", { isClean: true, bars: cellar, columns: columns(true), delimiter: ";" }),
  // units in a row of their own, lengths under the sizes, sums at the foot
  de("de-rampe-einheiten", "csv", {
    isClean: true,
    bars: ramp,
    columns: bySize(),
    foot: footBySize(ramp),
    delimiter: ";",
  }),
  de("de-unterzug-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(hall, { 4: { size: 13 }, 11: { former: 30 }, 19: { length: 700 } }),
    columns: columns(false),
    untidy: blankRowEvery(10),
  }),
  de("de-widerlager-untidy", "csv", {
    isClean: false,
    bars: withMistakes(bridge, { 2: { mass: 1 }, 27: { mark: "3" } }),
    columns: columns(true),
    delimiter: ";",
    untidy: allOf(blankRowEvery(15)),
  }),
];

function de(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "German", standard: "DIN-EC2:2013", format, ...rest });
}

function columns(hasComma: boolean): readonly RecipeColumn[] {
  return [
    field("mark", "Pos."),
    field("total", "Anzahl"),
    { key: "size", head: "Ø [mm]", value: ({ size }) => size },
    field("grade", "Stahlsorte"),
    lengthColumn("Einzellänge [m]", hasComma ? metresWithComma(2) : metres(2)),
    {
      key: "other",
      head: "Gesamtlänge [m]",
      value: ({ length, total }) =>
        typeof length === "number" && total !== null
          ? hasComma
            ? ((length * total) / 1000).toFixed(2).replace(".", ",")
            : Number(((length * total) / 1000).toFixed(2))
          : null,
    },
    field("shape", "Biegeform"),
    {
      key: "former",
      head: "Biegerolle [mm]",
      value: ({ kind, former }) => (kind === "straight" ? null : former),
    },
    hasComma
      ? { key: "mass", head: "Masse [kg]", value: ({ mass }) => mass?.toFixed(2).replace(".", ",") ?? null }
      : massColumn("Masse [kg]"),
  ];
}

function bySize(): readonly RecipeColumn[] {
  return [
    field("mark", ["Pos.", null]),
    field("total", ["Anzahl", "Stck"]),
    field("size", ["Ø", "mm"]),
    lengthColumn(["Einzellänge", "m"], metresWithComma(2)),
    ...DIAMETERS.map(
      (diameter): RecipeColumn => ({
        key: "other",
        head: [`Ø ${diameter}`, "m"],
        value: (bar) => (bar.diameter === diameter ? withComma(metresIn([bar])) : null),
      }),
    ),
    field("remark", ["Bemerkung", null]),
  ];
}

function footBySize(bars: CorpusSchedule["bars"]): (string | null)[][] {
  const before = [null, null, null];
  const under = (diameter: number) => metresIn(bars.filter((bar) => bar.diameter === diameter));
  return [
    [...before, "Länge m", ...DIAMETERS.map((diameter) => withComma(under(diameter)))],
    [...before, "kg/m", ...STEELS.map(({ mass }) => withComma(mass, 3))],
    [...before, "Gewicht kg", ...STEELS.map(({ diameter, mass }) => withComma(under(diameter) * mass))],
  ];
}

function metresIn(bars: CorpusSchedule["bars"]): number {
  return bars.reduce(
    (sum, { length, total }) => sum + (typeof length === "number" ? (length * (total ?? 0)) / 1000 : 0),
    0,
  );
}

function withComma(number: number, decimals = 2): string {
  return number.toFixed(decimals).replace(".", ",");
}
