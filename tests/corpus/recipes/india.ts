import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn, memberOnce, serialColumn } from "../recipe-columns";
import { allOf, dittoIn, membersAsHeadings, withMistakes, worded } from "../untidy";
import { metres } from "../written-length";

/**
 * Formers of 4d, common practice in Indian yards; the straight after a bend 4d (IS 2502:1963 Table II, from
 * memory), of a link 8d (IS 456 26.2.2.4); unit masses d squared / 162.
 */
const STEELS: readonly Steel[] = [8, 10, 12, 16, 20, 25].map((diameter) => {
  const radius = 2 * diameter;
  return {
    size: diameter,
    diameter,
    mass: Number(((diameter * diameter) / 162).toFixed(3)),
    radius,
    linkRadius: radius,
    end: radius + diameter + 4 * diameter,
    linkEnd: diameter > 12 ? null : radius + diameter + 8 * diameter,
  };
});

const MEMBERS = [
  ["Footing F1", 8],
  ["Column C1", 8],
  ["Plinth beam PB1", 5],
] as const;
const raft = pathBars({ seed: 301, count: 40, steels: STEELS, step: 5, members: MEMBERS });
/** The site's rule: two bar diameters off the sum of the legs for each right angle; common practice. */
const bySite = pathBars({
  seed: 302,
  count: 40,
  steels: STEELS,
  step: 5,
  members: MEMBERS,
  kinds: ["straight", "ell", "u", "zed", "stool"],
  lengthOf: (_, { legs, diameter }) =>
    legs.reduce((sum, leg) => sum + leg, 0) - 2 * diameter * (legs.length - 1),
});
const sketched = pathBars({ seed: 303, count: 40, steels: STEELS, step: 10, members: MEMBERS });
const hall = pathBars({
  seed: 304,
  count: 40,
  steels: STEELS,
  step: 5,
  members: [
    ["Lintel L1", 6],
    ["Slab S1", 1],
  ],
});
const shed = pathBars({
  seed: 305,
  count: 40,
  steels: STEELS,
  step: 5,
  members: [
    ["Tie beam TB1", 4],
    ["Slab S2", 1],
  ],
});

/** Lists in metres with a length column for each diameter, or with a drawn shape. */
export const INDIA: readonly CorpusSchedule[] = [
  india("india-footings", "xlsx", { isClean: true, bars: raft, columns: columns(raft) }),
  india("india-site-deductions", "csv", {
    isClean: true,
    bars: bySite,
    columns: columns(bySite),
    standard: "INDIA-SITE",
  }),
  india("india-drawn-shapes", "xlsx", { isClean: true, bars: sketched, columns: drawn(sketched) }),
  india("india-hall-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(hall, { 7: { size: 13 }, 12: { length: 12_345 }, 20: { total: 1 } }),
    columns: columns(hall),
    untidy: allOf(worded(7, " nos", 3), dittoIn(3), membersAsHeadings(1)),
  }),
  india("india-shed-untidy", "csv", {
    isClean: false,
    bars: withMistakes(shed, {
      3: { shape: "300+1200+300" },
      9: { mass: 1 },
      15: { size: "12mm dia c/c 150" },
    }),
    columns: columns(shed),
  }),
];

function india(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Indian", standard: "IS2502:1963", format, ...rest });
}

function columns(bars: CorpusSchedule["bars"]): readonly RecipeColumn[] {
  return [
    serialColumn("S.No."),
    memberOnce("Description / Location", bars),
    field("mark", "Bar mark"),
    field("size", "Dia of bar (mm)"),
    field("shape", "Shape of bar"),
    field("members", "No. of members"),
    field("each", "Bars per member"),
    field("total", "Total no. of bars"),
    lengthColumn("Cutting length (m)", metres(3)),
    ...[8, 10, 12, 16, 20, 25].map(
      (diameter): RecipeColumn => ({
        key: "other",
        head: `${diameter} mm`,
        value: (bar) =>
          bar.diameter === diameter && typeof bar.length === "number"
            ? Number((((bar.total ?? 0) * bar.length) / 1000).toFixed(3))
            : null,
      }),
    ),
    massColumn("Total weight (kg)"),
    field("remark", "Remarks"),
  ];
}

/** Shape and legs as in a list whose shape is a picture: the cell holds no text. */
function drawn(bars: CorpusSchedule["bars"]): readonly RecipeColumn[] {
  return [
    serialColumn("Sl. No."),
    memberOnce("Description", bars),
    field("mark", "Bar mark"),
    field("size", "Dia (mm)"),
    { key: "shape", head: "Shape", value: () => null },
    ...dimColumns(["a", "b", "c", "d"], metres(2)),
    field("members", "No. of members"),
    field("each", "Nos per member"),
    field("total", "Total nos"),
    lengthColumn("Cutting length (m)", metres(2)),
    massColumn("Weight (MT)", 4, 1000),
  ];
}
