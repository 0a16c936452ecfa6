import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn, memberOnce } from "../recipe-columns";
import { withMistakes } from "../untidy";
import { centimetres, metres, metresWithComma } from "../written-length";

/**
 * EN 1992-1-1:2004 Table 8.1N a): former 4d to 16 mm, 7d above; the straight after the bend 5d, of links 10d
 * (figure 8.5). Masses per metre of EN 10080.
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
  const radius = (diameter <= 16 ? 2 : 3.5) * diameter;
  return {
    size: `HA${diameter}`,
    diameter,
    mass,
    radius,
    linkRadius: radius,
    end: radius + 6 * diameter,
    linkEnd: diameter > 12 ? null : radius + 11 * diameter,
  };
});
const bars = (seed: number, members: readonly (readonly [string, number])[]) =>
  pathBars({ seed, count: 40, steels: STEELS, step: 10, members });
const footings = bars(801, [
  ["Semelle S1", 6],
  ["Longrine L1", 4],
]);
const floor = bars(802, [["Plancher haut", 1]]);
const beams = bars(803, [["Poutre P1", 3]]);
const wall = bars(804, [["Voile V1", 2]]);

/** Nomenclatures: repère, nombre d'éléments, longueur développée. */
export const FRANCE: readonly CorpusSchedule[] = [
  fr("fr-semelles", "xlsx", { isClean: true, bars: footings, columns: columns(footings, false) }),
  fr("fr-plancher-croquis", "csv", {
    isClean: true,
    bars: floor,
    columns: columns(floor, true),
    delimiter: ";",
  }),
  fr("fr-poutres-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(beams, { 3: { size: "HA13" }, 12: { length: 12_000 }, 30: { total: 3 } }),
    columns: columns(beams, false),
  }),
  fr("fr-voile-untidy", "csv", {
    isClean: false,
    bars: withMistakes(wall, { 8: { size: "HA61" }, 16: { mark: "4" } }),
    columns: columns(wall, true),
    delimiter: ";",
  }),
];

function fr(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "French", standard: "EC2:2004", format, ...rest });
}

function columns(bars: CorpusSchedule["bars"], isDrawn: boolean): readonly RecipeColumn[] {
  return [
    memberOnce("Ouvrage", bars),
    field("mark", "Repère"),
    field("size", "Diamètre"),
    field("members", "Nb d'éléments"),
    field("each", "Nb par élément"),
    field("total", "Nombre total"),
    lengthColumn("Longueur développée (m)", isDrawn ? metresWithComma(2) : metres(2)),
    ...(isDrawn
      ? dimColumns(["a (cm)", "b (cm)", "c (cm)", "d (cm)"], centimetres)
      : [field("shape", "Façonnage")]),
    ...(isDrawn ? [] : [massColumn("Masse (kg)")]),
  ];
}
