import { codedBars } from "../coded-bars";
import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { dimColumns, field, lengthColumn, massColumn } from "../recipe-columns";
import {
  allOf,
  blankRowEvery,
  dittoIn,
  headerEvery,
  membersAsHeadings,
  remarkRowEvery,
  textsIn,
  withMistakes,
} from "../untidy";

/** The body of the UK form, in its order. */
const UK_COLUMNS: readonly RecipeColumn[] = [
  field("member", "Member"),
  field("mark", "Bar mark"),
  field("size", "Type and size"),
  field("members", "No. of mbrs"),
  field("each", "No. in each"),
  field("total", "Total no."),
  lengthColumn("Length of each bar mm"),
  field("shape", "Shape code"),
  ...dimColumns(["A mm", "B mm", "C mm", "D mm", "E/R mm"]),
  field("revision", "Rev letter"),
];

/** The form with what a yard writes beside it. */
const UK_LONG_COLUMNS: readonly RecipeColumn[] = [
  ...UK_COLUMNS,
  field("grade", "Grade"),
  field("former", "Former mm"),
  field("coating", "Coating"),
  field("spacing", "Spacing mm"),
  massColumn("Mass kg"),
  field("remark", "Remarks"),
];

const STACKED: readonly RecipeColumn[] = UK_COLUMNS.map((column) => ({
  ...column,
  head: String(column.head)
    .replace(" mm", "")
    .split(/ (?=\S+$)/),
}));

const TITLE = [
  ["Bar schedule", null, null, "Job no.", "TW-114", null, "Schedule ref.", "07"],
  ["Tern Wharf, invented job", null, null, "Date prepared", "3 March", null, "Rev letter", "A"],
] as const;

/** What a good schedule says too, though a word of it also stands in bad ones. */
const QUIET_REMARKS = [
  null,
  "lap 650",
  "see dwg 12",
  "stagger laps",
  "bend 90 deg",
  "starters, project 900",
  "starters, project 1300, caps on",
  "closed",
  "NF",
  "fixed before casting",
  "2 layers",
  "beside the capping beam",
  "cover 40",
  "open area",
];

const footings = codedBars({
  seed: 101,
  count: 40,
  prefix: "H",
  members: [
    ["Pad footing F1", 6],
    ["Pad footing F2", 4],
    ["Ground beam GB1", 3],
    ["Ground beam GB2", 2],
  ],
});
const wall = codedBars({
  seed: 102,
  count: 40,
  prefix: "H",
  shapes: ["00", "11", "21", "23", "31", "26"],
  diameters: [10, 12, 16, 20],
  members: [
    ["Retaining wall W1", 2],
    ["Retaining wall W2", 1],
  ],
}).map((bar) => ({ ...bar, revision: "A" }));
const culvert = codedBars({
  seed: 103,
  count: 44,
  prefix: "B",
  members: [
    ["Culvert base", 1],
    ["Culvert wall", 2],
    ["Culvert roof", 1],
  ],
});
const stair = codedBars({
  seed: 104,
  count: 40,
  prefix: "H",
  diameters: [10, 12, 16],
  members: [
    ["Stair flight 1", 4],
    ["Stair landing", 4],
  ],
  remarks: QUIET_REMARKS,
}).map((bar, index) => ({ ...bar, spacing: [150, 200, null, 125][index % 4] ?? null }));
const beams = codedBars({
  seed: 105,
  count: 40,
  prefix: "H",
  diameters: [16, 20, 25, 12],
  members: [
    ["Beam B1 300x600 cover 40", 5],
    ["Beam B2 350x700 cover 40", 3],
  ],
}).map((bar) => {
  if (bar.kind !== "link") return bar;
  // outside of the link = section less both covers; printed formula of code 51 by hand for H10: r 20
  const [a, b, c] = bar.member.includes("300x600") ? [520, 220, 130] : [620, 270, 130];
  const length = Math.ceil((2 * (a + b + c) - 2.5 * 20 - 5 * 10) / 25) * 25;
  const mass = Math.round(((bar.total ?? 0) * length * 0.616) / 10) / 100;
  return {
    ...bar,
    size: "H10",
    diameter: 10,
    massPerMetre: 0.616,
    dims: [a, b, c],
    length,
    mass,
    former: 40,
  };
});
const tank = codedBars({
  seed: 106,
  count: 40,
  prefix: "H",
  members: [
    ["Tank base", 1],
    ["Tank wall", 4],
  ],
});
const piles = codedBars({
  seed: 107,
  count: 40,
  prefix: "H",
  members: [
    ["Pile cap PC1", 8],
    ["Pile cap PC2", 2],
  ],
});

export const UK_FORM: readonly CorpusSchedule[] = [
  uk("uk-footings", "xlsx", { isClean: true, bars: footings, title: TITLE, columns: STACKED }),
  uk("uk-retaining-wall", "csv", { isClean: true, bars: wall }),
  uk("uk-culvert", "csv", { isClean: true, bars: culvert, columns: UK_LONG_COLUMNS, title: TITLE }),
  uk("uk-stair-2020", "xlsx", {
    isClean: true,
    bars: stair,
    standard: "BS8666:2020",
    columns: UK_LONG_COLUMNS,
  }),
  uk("uk-beams", "xlsx", { isClean: true, bars: beams, columns: UK_LONG_COLUMNS, title: TITLE }),
  uk("uk-tank-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(tank, {
      3: { length: 2990 },
      8: { total: (tank[8]?.total ?? 0) + 2 },
      13: { size: "H13" },
      21: { shape: "38" },
      30: { mark: tank[2]?.mark ?? "" },
    }),
    title: TITLE,
    untidy: allOf(headerEvery(16), blankRowEvery(9), textsIn(6, 7)),
  }),
  uk("uk-piles-untidy", "csv", {
    isClean: false,
    bars: withMistakes(piles, { 1: { dims: [95, 400] }, 5: { dims: ["(300)", 300, 250, 300] } }),
    columns: UK_LONG_COLUMNS,
    untidy: allOf(dittoIn(0), remarkRowEvery(13, 0, "2 layers, stagger 50 %"), membersAsHeadings(0)),
  }),
];

function uk(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({
    name,
    practice: "UK form",
    standard: "BS8666:2005",
    format,
    columns: UK_COLUMNS,
    ...rest,
  });
}
