import { describe, expect, it } from "vitest";
import { exampleSettings } from "../../../core/audit/example-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { Example, ExampleRow } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { standardNamed } from "./rule-cases";

/** What a careful checker looks for by hand: a sheet that hears of it, and the same sheet put right. */
interface CheckByHand {
  readonly fact: string;
  /** code and severity, with `perhaps` where the source is not sure */
  readonly says: string;
  readonly wrong: Example;
  readonly right: Example;
}

const straight = (size: string, length: number, remark: string): ExampleRow => ({
  ...{ size, shape: "00", A: length, length, remark },
});
const one = (row: ExampleRow, more: Example = {}): Example => ({ ...more, rows: [row] });
const columnOf = (...bars: ExampleRow[]): Example => ({
  rows: bars.map((bar) => ({ member: "column C1", ...bar })),
});
const link8 = { size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 };
const HOOPS = "hook135 450 +90 200 +90 450 +90 200 hook135";
const project: Example = {
  own: [
    ["size", "grade", "case", "lap"],
    ["20", "", "", 850],
  ],
};
const crank = (C: number): ExampleRow => ({ size: "H20", shape: "26", A: 3000, B: 300, C, D: 60 });
const starter = (remark: string): ExampleRow => ({
  ...{ size: "H20", shape: "11", A: 1500, B: 300, length: 1750, remark },
});
const uBar = (B: number, length: number): ExampleRow => ({
  ...{ member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B, C: 600, length },
});
const closed = (A: number, B: number, length: number): ExampleRow => ({
  ...{ member: "B1 300x600 cover 40", size: "H10", shape: "51", A, B, C: 130, length },
});
const indian = (bar: string): Example => ({
  standard: "IS2502:1963",
  rows: [
    { member: "B1", size: bar, shape: "00", A: 6000, length: 6000 },
    { member: "B1", size: "T10", shape: HOOPS, length: 1500, former: 40 },
  ],
});
const canadian = (remark: string): Example =>
  one(
    { size: "20M", grade: "400R", shape: "00", A: 3000, length: 3000, remark },
    { standard: "CSA-A23.1:2019" },
  );
const american = (row: ExampleRow): Example => ({ standard: "ACI318:2019", rows: [row] });
const crankedUs = { size: "#8", shape: "120in +9 12in -9 30in" };
const pair = (remark: string): ExampleRow => ({
  ...{ size: "H12", shape: "98", A: 300, B: 300, C: 300, D: 300, length: 1450, remark },
});
const twoMarks = (member: string): Example => ({
  rows: [
    { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
    { member, mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
  ],
});
const helix = (pitch: number, turns: number, remark = ""): Example => ({
  standard: "BS8666:2005+ACI318:2019",
  rows: [{ size: "#3", shape: "77", A: 500, B: pitch, C: turns, remark }],
});

const slope = (length: number): Example =>
  one({ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length });

const CHECKS: readonly CheckByHand[] = [
  {
    // 1000 + 500 + 1000 less d at either bend = 2468; the centre line is 2483.3 (length-by-site-deduction.test.ts)
    fact: "a deduction of d a bend is a habit of sites, no standard's rule: common practice",
    says: "LEN106 perhaps doubtful",
    wrong: slope(2475),
    right: slope(2500),
  },
  {
    fact: "a lap is never below max(15 d, 200): EN 1992-1-1 8.7.3, from memory",
    says: "LEN110 perhaps unsafe",
    wrong: one(straight("H12", 6000, "lap 150")),
    right: one(straight("H12", 6000, "lap 200")),
  },
  {
    fact: "bars over 32 mm are as a rule not lapped: EN 1992-1-1 8.8, from memory",
    says: "LEN111 perhaps doubtful",
    wrong: one(straight("H40", 9000, "lap 1600")),
    right: one(straight("H32", 9000, "lap 1600")),
  },
  {
    fact: "class A is made up to 12 mm: BS 4449, from memory",
    says: "GRADE105 perhaps doubtful",
    wrong: one(straight("A16", 3000, "")),
    right: one(straight("A12", 3000, "")),
  },
  {
    fact: "a bar between two faces is given something off for deviations: BS 8110-1 Table 3.24, from memory",
    says: "MEMBER105 perhaps note",
    wrong: one(closed(520, 220, 1650)),
    right: one(closed(510, 210, 1600)),
  },
  {
    fact: "a U-bar goes into 200 mm less two covers of 25: geometry",
    says: "MEMBER106 perhaps off-standard",
    wrong: one(uBar(170, 1325)),
    right: one(uBar(150, 1325)),
  },
  {
    // 2 x 10 + 160 = 180 over 200 - 50 = 150; on the least former 2 x 10 + 40 = 60
    fact: "so does a bar with a half circle at its end: geometry",
    says: "MEMBER106 perhaps off-standard",
    wrong: one({
      ...{ member: "slab 200 cover 25", size: "H10", shape: "1000 +180 200", length: 1500, former: 160 },
    }),
    right: one({ member: "slab 200 cover 25", size: "H10", shape: "1000 +180 200", length: 1300 }),
  },
  {
    fact: "straight beyond a crank is the lap of the row, 40 x 20 = 800: common practice",
    says: "SHAPE119 perhaps doubtful",
    wrong: one({ ...crank(600), length: 3900, remark: "lap 40d" }),
    right: one({ ...crank(800), length: 4100, remark: "lap 40d" }),
  },
  {
    fact: "links stand within 6 in of a crank's bends: ACI 318 10.7.6.4, from memory",
    says: "SHAPE119 perhaps note",
    wrong: american(crankedUs),
    right: american({ size: "#8", shape: "120in +90 30in" }),
  },
  {
    fact: "starters project the lap of the bar above: the project's own table",
    says: "SITE105 unsafe",
    wrong: one(starter("starter, projects 600"), project),
    right: one(starter("starter, projects 850"), project),
  },
  {
    fact: "a link is bent round a bar of its own size at least: IS 456 26.2.2.4 b), civilsnapshot.com",
    says: "BEND108 perhaps doubtful",
    wrong: indian("T8"),
    right: indian("T10"),
  },
  {
    fact: "links of a column stand no wider than 20 x 16 = 320: EN 1992-1-1 9.5.3, from memory",
    says: "MEMBER107 perhaps off-standard",
    wrong: columnOf(straight("H16", 3000, ""), { ...link8, spacing: 350 }),
    right: columnOf(straight("H16", 3000, ""), { ...link8, spacing: 320 }),
  },
  {
    fact: "a link of a column has a quarter of its bar, 40 / 4 = 10: EN 1992-2 9.5.3, usingeurocodes.com",
    says: "MEMBER108 off-standard",
    wrong: columnOf(straight("H40", 3000, ""), link8),
    right: columnOf(straight("H32", 3000, ""), link8),
  },
  {
    fact: "regular steel is not welded: CSA G30.18, from memory",
    says: "GRADE106 perhaps doubtful",
    wrong: canadian("tack welded to plate"),
    right: canadian("do not weld"),
  },
  {
    fact: "starters bent out again are 16 mm at most in New Zealand: Practice Advisory 11",
    says: "SITE104 unsafe",
    wrong: one(
      { size: "D20", shape: "1000 +90 500", length: 1430, remark: "starter, bend out later" },
      { standard: "NZS3109:1997" },
    ),
    right: one(
      { size: "D20", shape: "1000 +90 500", length: 1430, remark: "starter" },
      { standard: "NZS3109:1997" },
    ),
  },
  {
    // 6.313 x 6 x 27 = 1022.7 kg, of 26 bars 984.8
    fact: "what is tied in one bundle is lifted at once: the yard's own hoist",
    says: "LIFT102 note",
    wrong: one({ size: "H32", shape: "00", A: 6000, length: 6000, total: 27 }, { limits: { hoist: 1000 } }),
    right: one({ size: "H32", shape: "00", A: 6000, length: 6000, total: 26 }, { limits: { hoist: 1000 } }),
  },
  {
    fact: "an ordinary lorry carries 13.5 m: common practice",
    says: "SUPPLY105 perhaps note",
    wrong: one(straight("H32", 15000, "")),
    right: one(straight("H32", 13500, "")),
  },
  {
    fact: "one bar of one member has one mark: common practice",
    says: "MARK106 perhaps note",
    wrong: twoMarks("B1"),
    right: twoMarks("B2"),
  },
  {
    fact: "of handed pairs it is said how many are of either hand: common practice",
    says: "MARK106 perhaps doubtful",
    wrong: one(pair("in pairs")),
    right: one(pair("pairs, 2 as drawn, 2 opposite hand")),
  },
  {
    // 150 - 9.5 = 140.5 clear, over 76; 75 - 9.5 = 65.5
    fact: "turns of a spiral stand 25 to 75 mm clear: ACI 318 25.7.3.1, from memory",
    says: "SHAPE120 perhaps doubtful",
    wrong: helix(150, 43),
    right: helix(75, 43),
  },
  {
    // 3000 / 75 = 40 turns, and 1.5 more at each end
    fact: "a spiral has one and a half turns more at each end: seaintarchive.org 1997c msg00887",
    says: "SHAPE118 doubtful",
    wrong: helix(75, 42, "length 3000"),
    right: helix(75, 43, "length 3000"),
  },
];

describe("what a careful checker looks for by hand", () => {
  it.each(CHECKS.map((check) => [check.fact, check] as const))("%s", (_, { says, wrong, right }) => {
    expect(told(wrong)).toContain(says);
    const code = says.split(" ")[0] ?? "";
    expect(told(right).filter((one) => one.startsWith(code))).toEqual([]);
  });
});

function told(example: Example): readonly string[] {
  const { findings } = runAudit({
    sheets: exampleSheets(example),
    standard: standardNamed(example.standard),
    settings: exampleSettings(example),
  });
  return findings.map(
    ({ code, outcome, severity }) => `${code} ${outcome === "unsure" ? "perhaps " : ""}${severity}`,
  );
}
