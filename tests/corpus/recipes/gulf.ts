import { codedBars } from "../coded-bars";
import { type CorpusSchedule, corpusSchedule, type RecipeColumn } from "../corpus-schedule";
import { dimColumns, field, lengthColumn, massColumn, memberOnce, serialColumn } from "../recipe-columns";
import { allOf, textsIn, withMistakes, worded } from "../untidy";
import { metres } from "../written-length";

const raft = codedBars({
  seed: 201,
  count: 40,
  prefix: "T",
  members: [
    ["Raft R1", 1],
    ["Raft edge", 2],
  ],
});
const villa = codedBars({
  seed: 202,
  count: 40,
  prefix: "T",
  members: [
    ["Footing F1", 12],
    ["Neck column", 12],
  ],
});
const annex = codedBars({
  seed: 205,
  count: 40,
  prefix: "T",
  members: [
    ["Tie beam", 6],
    ["Slab", 1],
  ],
});
const podium = codedBars({ seed: 203, count: 40, prefix: "T", members: [["Podium beam PB1", 4]] });
const basement = codedBars({ seed: 204, count: 40, prefix: "T", members: [["Basement wall", 3]] });

/** The UK form with the T of older drawings, or a list by the metre. */
export const GULF: readonly CorpusSchedule[] = [
  gulf("gulf-raft", "xlsx", { isClean: true, bars: raft, columns: form() }),
  gulf("gulf-villa", "csv", { isClean: true, bars: villa, columns: list(villa) }),
  gulf("gulf-annex-two-languages", "xlsx", {
    isClean: true,
    bars: annex,
    columns: twoLanguages(annex),
    title: [["جدول حديد التسليح", null, null, "BAR BENDING SCHEDULE"], []],
  }),
  gulf("gulf-podium-untidy", "xlsx", {
    isClean: false,
    bars: withMistakes(podium, { 4: { size: "T18" }, 11: { length: 975 }, 25: { total: 7 } }),
    columns: form(),
    untidy: allOf(worded(5, " Nos", 4), textsIn(8, 5)),
  }),
  gulf("gulf-basement-untidy", "csv", {
    isClean: false,
    bars: withMistakes(basement, { 6: { size: "T61" }, 17: { mark: "" }, 28: { mass: 3 } }),
    columns: list(basement),
  }),
];

function gulf(
  name: string,
  format: CorpusSchedule["format"],
  rest: Pick<CorpusSchedule, "isClean" | "bars" | "columns"> & Partial<CorpusSchedule>,
): CorpusSchedule {
  return corpusSchedule({ name, practice: "Gulf", standard: "BS8666:2005", format, ...rest });
}

function form(): readonly RecipeColumn[] {
  return [
    field("member", "Element"),
    field("mark", "Bar Mark"),
    field("size", "Bar Type & Size"),
    field("members", "No. of Members"),
    field("each", "No. of Bars in each"),
    field("total", "Total No. of Bars"),
    lengthColumn("Length of each bar (mm)"),
    field("shape", "Shape Code"),
    ...dimColumns(["A", "B", "C", "D", "E/R"]),
    field("remark", "Remarks"),
  ];
}

function twoLanguages(bars: CorpusSchedule["bars"]): readonly RecipeColumn[] {
  return [
    memberOnce("العنصر\nElement", bars),
    field("mark", "رقم السيخ\nBar Mark"),
    field("size", "القطر\nDia"),
    field("members", "عدد العناصر\nNo. of Elements"),
    field("each", "العدد في العنصر\nNo. in each"),
    field("total", "العدد الكلي\nTotal No."),
    lengthColumn("الطول\nLength (m)", metres(3)),
    field("shape", "الشكل\nShape"),
    ...dimColumns(["A", "B", "C", "D", "E/R"]),
    massColumn("الوزن\nWeight (kg)", 1),
  ];
}

function list(bars: CorpusSchedule["bars"]): readonly RecipeColumn[] {
  return [
    serialColumn("S.No"),
    memberOnce("Location / Description", bars),
    field("mark", "Bar Mark"),
    field("size", "Dia"),
    field("members", "No. of members"),
    field("each", "Bars per member"),
    field("total", "Total bars"),
    lengthColumn("Cutting length (m)", metres(3)),
    field("shape", "Shape"),
    ...dimColumns(["A", "B", "C", "D", "E/R"]),
    massColumn("Total weight (kg)"),
  ];
}
