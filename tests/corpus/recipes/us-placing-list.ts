import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn, serialColumn } from "../recipe-columns";
import { allOf, blankRowEvery, textsIn, withMistakes } from "../untidy";
import { feetAndInches } from "../written-length";

const INCH = 25.4;

/**
 * ACI 318-19 Tables 25.3.1 and 25.3.2, from memory: inside diameter 6d for #3 to #8, 4d in stirrups to #5; the
 * straight after a right angle 12d, in stirrups to #5 6d and at least 3 in. Masses of ASTM A615 in lb/ft.
 */
const STEELS: readonly Steel[] = [
  ["#3", 0.375, 0.376],
  ["#4", 0.5, 0.668],
  ["#5", 0.625, 1.043],
  ["#6", 0.75, 1.502],
  ["#7", 0.875, 2.044],
  ["#8", 1, 2.67],
].map(([size, inches, pounds]) => {
  const diameter = (inches as number) * INCH;
  return {
    size: size as string,
    diameter,
    mass: ((pounds as number) * 0.45359237) / 0.3048,
    radius: 3 * diameter,
    linkRadius: 2 * diameter,
    end: 16 * diameter,
    linkEnd: (inches as number) > 0.625 ? null : 3 * diameter + Math.max(6 * diameter, 3 * INCH),
  };
});
const STEP = INCH / 2;
const POUND = 0.45359237;
const MEMBERS = [
  ["Footing F-1", 6],
  ["Grade beam GB-1", 2],
] as const;
const bars = (seed: number) =>
  pathBars({
    seed,
    count: 40,
    steels: STEELS,
    step: STEP,
    unit: INCH,
    members: MEMBERS,
    grade: "60",
    stock: 60 * 12 * INCH,
    markOf: (index) => `${4 + (index % 5)}A${String(index + 1).padStart(2, "0")}`,
  });
const byPath = bars(401);
const byType = bars(402);
const pit = bars(403);
const dock = bars(404);
const culvert = bars(405);
const TYPES: Readonly<Record<string, string>> = { ell: "17", u: "17", zed: "3", stool: "25", link: "T1" };

/** Lists in feet and inches with bend types or our paths. */
export const US_PLACING_LIST: readonly CorpusSchedule[] = [
  us("us-footings-by-path", "xlsx", { isClean: true, bars: byPath, columns: pathColumns() }),
  us("us-beams-by-type", "csv", { isClean: true, bars: byType, columns: typeColumns() }),
  us("us-culvert-feet-inches", "csv", {
    isClean: true,
    bars: culvert,
    columns: apartColumns(),
    delimiter: "\t",
    title: [["BAR LIST BOX CULVERT"]],
  }),
  us("us-pit-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(pit, {
      2: { size: "#12" },
      7: { total: null },
      15: { length: 40 * INCH },
      24: { grade: "61" },
    }),
    columns: pathColumns(),
    untidy: blankRowEvery(7),
  }),
  us("us-dock-untidy", "csv", {
    isClean: false,
    bars: withMistakes(dock, { 4: { mark: "" }, 10: { size: "No.5" }, 16: { mass: 9 } }),
    columns: typeColumns(),
    untidy: allOf(textsIn(1, 6)),
  }),
];

function us(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "US placing list", standard: "ACI318:2019", format, ...rest });
}

/** Feet in one column and inches in the next, sizes without their sign. */
function apartColumns(): readonly RecipeColumn[] {
  return [
    field("mark", "MARK"),
    field("total", "NO."),
    { key: "size", head: "SIZE", value: ({ size }) => Number(String(size).slice(1)) },
    lengthColumn("FT", (mm) => Math.floor(Math.round((mm / INCH) * 2) / 24)),
    {
      key: "other",
      head: "IN",
      value: ({ length }) => (typeof length === "number" ? (Math.round((length / INCH) * 2) % 24) / 2 : null),
    },
    field("grade", "GRADE"),
    massColumn("WEIGHT (LB)", 0, POUND),
    field("member", "LOCATION"),
  ];
}

function pathColumns(): readonly RecipeColumn[] {
  return [
    serialColumn("Item"),
    field("total", "Qty"),
    field("size", "Size"),
    lengthColumn("Length ft-in", feetAndInches),
    field("mark", "Mark"),
    field("shape", "Bend type"),
    field("grade", "Grade"),
    massColumn("Weight lb", 1, POUND),
  ];
}

/** Straight bars carry no mark and no type. */
function typeColumns(): readonly RecipeColumn[] {
  return [
    serialColumn("Item"),
    field("total", "Qty"),
    field("size", "Size"),
    lengthColumn("Length ft-in", feetAndInches),
    { key: "mark", head: "Mark", value: ({ kind, mark }) => (kind === "straight" ? null : mark) },
    { key: "shape", head: "Type", value: ({ kind }) => TYPES[kind] ?? null },
    ...dimColumns(["A", "B", "C", "D", "E"], feetAndInches).map((column) => ({
      ...column,
      value: (...asked: Parameters<RecipeColumn["value"]>) =>
        asked[0].kind === "straight" ? null : column.value(...asked),
    })),
    field("grade", "Grade"),
    field("coating", "Coating"),
    massColumn("Weight lb", 0, POUND),
  ];
}
