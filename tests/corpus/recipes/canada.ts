import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn } from "../recipe-columns";
import { textsIn, withMistakes } from "../untidy";

/**
 * CSA A23.1, bend diameters, from memory: 60, 90, 100, 150 mm for 10M to 25M of 400W, of ties 45 and 65 mm
 * for 10M and 15M; the straight after a right angle 12d, of ties 6d and at least 60. Areas and masses of CSA G30.18.
 */
const STEELS: readonly Steel[] = (
  [
    ["10M", 11.3, 0.785, 60, 45],
    ["15M", 16, 1.57, 90, 65],
    ["20M", 19.5, 2.355, 100, null],
    ["25M", 25.2, 3.925, 150, null],
  ] as const
).map(([size, diameter, mass, former, tie]) => ({
  size,
  diameter,
  mass,
  radius: former / 2,
  linkRadius: (tie ?? former) / 2,
  end: former / 2 + 13 * diameter,
  linkEnd: tie === null ? null : tie / 2 + diameter + Math.max(60, 6 * diameter),
}));
const bars = (seed: number, member: string) =>
  pathBars({
    seed,
    count: 40,
    steels: STEELS,
    step: 5,
    members: [[member, 1]],
    grade: "400W",
    stock: 18_000,
    markOf: (index) => `B${String(index + 1).padStart(3, "0")}`,
  });
const mat = bars(901, "Mat M1");
const core = bars(902, "Core wall");
const pier = bars(903, "Pier P2");
const weir = bars(904, "Weir");
const bridge = bars(905, "Tablier");
const TYPES: Readonly<Record<string, string>> = { ell: "17", u: "17", zed: "3", stool: "25", link: "T1" };

/** Placing lists in millimetres with M sizes. */
export const CANADA: readonly CorpusSchedule[] = [
  ca("ca-mat", "xlsx", { isClean: true, bars: mat, columns: columns(false) }),
  ca("ca-core-types", "csv", { isClean: true, bars: core, columns: columns(true) }),
  ca("ca-tablier-bilingual", "xlsx", { isClean: true, bars: bridge, columns: bilingual() }),
  ca("ca-pier-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(pier, { 3: { size: "16M" }, 10: { length: 660 }, 21: { grade: "399Q" } }),
    columns: columns(false),
    untidy: textsIn(3, 5),
  }),
  ca("ca-weir-untidy", "csv", {
    isClean: false,
    bars: withMistakes(weir, { 5: { size: "12M" }, 15: { mass: 4 } }),
    columns: columns(true),
  }),
];

function ca(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Canadian", standard: "CSA-A23.1:2019", format, ...rest });
}

function columns(byType: boolean): readonly RecipeColumn[] {
  return [
    field("mark", "Mark"),
    field("total", "Qty"),
    field("size", "Size"),
    lengthColumn("Length (mm)"),
    byType
      ? { key: "shape", head: "Type", value: ({ kind }) => TYPES[kind] ?? null }
      : field("shape", "Type"),
    ...(byType ? dimColumns(["A", "B", "C", "D", "E"]) : []),
    field("grade", "Grade"),
    massColumn("Mass (kg)"),
  ];
}

function bilingual(): readonly RecipeColumn[] {
  return [
    field("mark", "Repère / Mark"),
    field("total", "Qté / Qty"),
    field("size", "Dia. / Size"),
    lengthColumn("Long. (mm)"),
    field("shape", "Façonnage / Bend type"),
    field("grade", "Nuance / Grade"),
    massColumn("Masse (kg)", 1),
    field("remark", "Remarques"),
  ];
}
