import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn } from "../recipe-columns";
import { allOf, headerEvery, withMistakes, worded } from "../untidy";
import { withBlankThousands } from "../written-length";

/**
 * AS 3600:2018 cl. 17.2.3.2 and 13.1.2.7, from memory: inside diameter 5d, of fitments 4d; the straight after a
 * right angle as long as the 180 hook's, 4d and at least 70. Masses per metre of AS/NZS 4671.
 */
const STEELS: readonly Steel[] = (
  [
    [10, 0.617],
    [12, 0.888],
    [16, 1.58],
    [20, 2.47],
    [24, 3.55],
    [28, 4.83],
  ] as const
).map(([diameter, mass]) => ({
  size: `N${diameter}`,
  diameter,
  mass,
  radius: 2.5 * diameter,
  linkRadius: 2 * diameter,
  end: 3.5 * diameter + Math.max(70, 4 * diameter),
  linkEnd: diameter > 16 ? null : 3 * diameter + Math.max(70, 4 * diameter),
}));
const REMARKS = [null, "TOP", "BOT", "T1", "B2"];
const bars = (seed: number, step: number, member: string) =>
  pathBars({ seed, count: 40, steels: STEELS, step, members: [[member, 2]], remarks: REMARKS });
const slab = bars(501, 10, "Slab SB1");
const wharf = bars(502, 5, "Wharf deck");
const silo = bars(503, 10, "Silo base");
const ramp = bars(504, 10, "Ramp RP1");
const SHAPES: Readonly<Record<string, string>> = {
  straight: "S",
  ell: "L",
  u: "U",
  zed: "Z",
  stool: "CH",
  link: "LIG",
};

/** Lists by the mark with letters for the shapes, or with paths. */
export const AUSTRALIA: readonly CorpusSchedule[] = [
  au("au-slab", "xlsx", { isClean: true, bars: slab, columns: columns(false) }),
  au("au-wharf-letters", "csv", { isClean: true, bars: wharf, columns: columns(true) }),
  au("au-silo-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(silo, { 6: { size: "N15" }, 13: { length: 800 }, 22: { size: "Q16" } }),
    columns: columns(false),
    untidy: headerEvery(12),
  }),
  au("au-ramp-untidy", "csv", {
    isClean: false,
    bars: withMistakes(ramp, { 1: { mass: 2 }, 18: { mark: "5" } }),
    columns: [
      ...columns(true).slice(0, 9),
      lengthColumn("Length", withBlankThousands),
      ...columns(true).slice(10),
    ],
    untidy: allOf(worded(1, " off")),
  }),
];

function au(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Australian", standard: "AS3600:2018", format, ...rest });
}

function columns(byLetter: boolean): readonly RecipeColumn[] {
  return [
    field("mark", "Mark"),
    field("total", "No. off"),
    field("size", "Size"),
    byLetter
      ? { key: "shape", head: "Shape", value: ({ kind }) => SHAPES[kind] ?? null }
      : field("shape", "Shape"),
    ...(byLetter ? dimColumns(["A", "B", "C", "D", "E"]) : []),
    lengthColumn("Length (mm)"),
    massColumn("Mass (kg)", 1),
    field("remark", "Comments"),
  ];
}
