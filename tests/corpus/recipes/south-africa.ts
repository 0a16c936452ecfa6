import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn } from "../recipe-columns";
import { allOf, dittoIn, textsIn, withMistakes } from "../untidy";

/**
 * SANS 282:2011, from memory: inside radius 3d of high-yield bars, and 4d of straight after the bend. Masses per
 * metre of SANS 920.
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
).map(([diameter, mass]) => ({
  size: `Y${diameter}`,
  diameter,
  mass,
  radius: 3 * diameter,
  linkRadius: 3 * diameter,
  end: 8 * diameter,
  linkEnd: diameter > 12 ? null : 8 * diameter,
}));
const bars = (seed: number, member: string, number: number) =>
  pathBars({
    seed,
    count: 40,
    steels: STEELS,
    step: 25,
    members: [
      [`${member} 1`, number],
      [`${member} 2`, 1],
    ],
    markOf: (index) => String(index + 1).padStart(2, "0"),
  });
const base = bars(701, "Base", 4);
const reservoir = bars(702, "Reservoir wall", 2);
const mine = bars(703, "Plinth", 3);
const depot = bars(704, "Beam", 2);
/** Two-figure codes of the South African list, from memory; 54 as BS 4466 has it on its pages, the rest drawn. */
const CODES: Readonly<Record<string, string>> = {
  straight: "20",
  ell: "37",
  u: "38",
  zed: "54",
  stool: "99",
  link: "99",
};

/** The older form, with codes of its own list or with paths. */
export const SOUTH_AFRICA: readonly CorpusSchedule[] = [
  za("za-bases", "xlsx", { isClean: true, bars: base, columns: columns(false) }),
  za("za-reservoir-codes", "csv", { isClean: true, bars: reservoir, columns: columns(true) }),
  za("za-plinths-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(mine, { 5: { size: "Y14" }, 14: { length: 1000 }, 26: { total: 5 } }),
    columns: columns(false),
    untidy: allOf(dittoIn(0, '"'), textsIn(6, 8)),
  }),
  za("za-depot-untidy", "csv", {
    isClean: false,
    bars: withMistakes(depot, { 9: { size: "Y52" }, 20: { mark: "" } }),
    columns: columns(true),
  }),
];

function za(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "South African", standard: "SANS282:2011", format, ...rest });
}

function columns(byCode: boolean): readonly RecipeColumn[] {
  return [
    field("member", "Member"),
    field("mark", "Bar mark"),
    field("size", "Type & size"),
    field("members", "No. of mbrs"),
    field("each", "No. in each"),
    field("total", "Total no."),
    lengthColumn("Length (mm)"),
    byCode
      ? { key: "shape", head: "Shape code", value: ({ kind }) => CODES[kind] ?? null }
      : field("shape", "Shape code"),
    ...(byCode ? dimColumns(["A", "B", "C", "D", "E"]) : []),
  ];
}
