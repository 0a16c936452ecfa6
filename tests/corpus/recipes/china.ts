import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { pathBars, type Steel } from "../path-bars";
import { dimColumns, field, lengthColumn, massColumn } from "../recipe-columns";
import { blankRowEvery, withMistakes } from "../untidy";

/**
 * GB 50204-2015 cl. 5.3, from memory: former 4d for 400 MPa ribbed bars; the straight after a right angle 12d, of
 * stirrups 5d. Masses per metre of GB/T 1499.2.
 */
const STEELS: readonly Steel[] = (
  [
    [8, 0.395],
    [10, 0.617],
    [12, 0.888],
    [14, 1.21],
    [16, 1.58],
    [18, 2],
    [20, 2.47],
    [22, 2.98],
    [25, 3.85],
  ] as const
).map(([diameter, mass]) => ({
  size: `C${diameter}`,
  diameter,
  mass,
  radius: 2 * diameter,
  linkRadius: 2 * diameter,
  end: 15 * diameter,
  linkEnd: diameter > 12 ? null : 8 * diameter,
}));
const bars = (seed: number, member: string) =>
  pathBars({ seed, count: 40, steels: STEELS, step: 10, members: [[member, 2]] });
const beams = bars(951, "KL-1");
const raft = bars(952, "FB-1");
const column = bars(953, "KZ-3");
const wall = bars(954, "Q-2");

/** 钢筋下料单: sketch, length of one, number, total length, mass. */
export const CHINA: readonly CorpusSchedule[] = [
  cn("cn-beams", "xlsx", { isClean: true, bars: beams, columns: columns(false) }),
  cn("cn-raft-drawn", "csv", { isClean: true, bars: raft, columns: columns(true) }),
  cn("cn-columns-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(column, { 6: { size: "C15" }, 13: { length: 900 }, 22: { mass: 1 } }),
    columns: columns(false),
    untidy: blankRowEvery(11),
  }),
  cn("cn-wall-untidy", "csv", {
    isClean: false,
    bars: withMistakes(wall, { 2: { size: "C61" }, 17: { total: 0 } }),
    columns: columns(true),
  }),
];

function cn(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Chinese", standard: "GB50204:2015", format, ...rest });
}

function columns(isDrawn: boolean): readonly RecipeColumn[] {
  return [
    field("member", "构件名称"),
    field("mark", "编号"),
    field("size", "直径"),
    ...(isDrawn ? dimColumns(["A", "B", "C", "D"]) : [field("shape", "简图")]),
    lengthColumn("单根长度(mm)"),
    field("total", "根数"),
    {
      key: "other",
      head: "总长(m)",
      value: ({ length, total }) =>
        typeof length === "number" && total !== null ? Number(((length * total) / 1000).toFixed(2)) : null,
    },
    massColumn("重量(kg)"),
  ];
}
