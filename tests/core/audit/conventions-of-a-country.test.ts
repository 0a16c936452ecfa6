import { describe, expect, it } from "vitest";
import { exampleSettings } from "../../../core/audit/example-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { Finding } from "../../../core/audit/finding";
import type { Example, ExampleRow } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { severityCounts, severityCountWords } from "../../../core/audit/severity-counts";
import { standardNamed } from "./rule-cases";

const rows = (standard: string, ...bars: ExampleRow[]): Example => ({ standard, rows: bars });
const bs = (...bars: ExampleRow[]): Example => rows("BS8666:2005", ...bars);

/** What is usual somewhere, and is heard of as a note at most. */
const SOUND: readonly (readonly [string, Example])[] = [
  [
    "Indian links of 8 mm on 32 mm, as yards bend them: common practice",
    rows("IS2502:1963", {
      ...{ size: "T8", shape: "hook135 450 +90 200 +90 450 +90 200 hook135", former: 32 },
      remark: "stirrup",
    }),
  ],
  [
    "Indian bars of 12 mm on 48 mm: common practice",
    rows("IS2502:1963", { size: "T12", shape: "300 +90 1000", length: 1275, former: 48 }),
  ],
  [
    "legs of the United States that are no standard hook, which ACI 318 25.3.1 forbids to nobody",
    rows(
      "ACI318:2019",
      { size: "#5", shape: "8in +90 40in +90 8in", length: "53in" },
      { size: "#8", shape: "12in +90 60in", length: "69.5in" },
      { size: "#6", shape: "6in +90 30in", length: "34.25in" },
    ),
  ],
  [
    "a leg of 150 mm on a Chinese top bar of 16 mm, from memory",
    rows("GB50204:2015", { size: "C16", shape: "150 +90 3000", length: 3115 }),
  ],
  [
    "a New Zealand tie of deformed bar with ends of 6 d: NZS 3101 8.4.2.1, from memory",
    // 6 x 10 + 5 x 10 of curve at 135 degrees, outside
    rows("NZS3109:1997", {
      ...{ size: "HD10", shape: "hook135 300 +90 300 +90 300 +90 300 hook135", length: 1340 },
      remark: "tie, 6d ends",
    }),
  ],
  [
    "lengths that are the sums of their legs, out to out: a published article on detailing names both",
    rows(
      "ACI318:2019",
      { size: "#5", shape: "12in +90 40in", length: "52in" },
      { size: "#6", shape: "16in +90 60in", length: "76in" },
      { size: "#8", shape: "20in +90 80in +90 20in", length: "120in" },
    ),
  ],
  [
    // 3100 / 150 = 20.7: 21 bars leave 155 between them, 22 leave 148
    "22 bars at 150 over 3100: one more than the gaps, rounded up",
    bs({
      ...{ size: "H12", shape: "00", A: 2000, length: 2000, members: 1, each: 22, total: 22, spacing: 150 },
      remark: "@150 over 3100",
    }),
  ],
  [
    // EN 1992-1-1 Table 8.1N b), from memory; B 200 leaves 200 - 70 - 20 = 110 of straight, 5.5 d
    "a bend 5.5 d from a weld",
    bs({ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "welded to plate" }),
  ],
  [
    // 75: pi (500 - 12) + 120 = 1653.1, up to 1675
    "a pile's ring that is welded at its lap of 10 d",
    bs({ size: "H12", shape: "75", A: 500, B: 120, length: 1675, remark: "ring, lap welded" }),
  ],
  [
    "a smooth dowel of 25 mm that says so: common practice",
    bs({ size: "R25", shape: "00", A: 600, length: 600, remark: "dowel" }),
  ],
  [
    "a bar anchored beyond the clear span: span is no length of formwork",
    bs({
      ...{ size: "H20", shape: "00", A: 7200, length: 7200 },
      remark: "clear span 6000, anchored into columns",
    }),
  ],
  [
    "a bar of 14 m: BS 8666 names 6 m and 12 m by way of example",
    bs({ size: "H32", shape: "00", A: 14000, length: 14000 }),
  ],
  [
    "bars for couplers and a weldable grade named in the title's way: common practice",
    rows("CSA-A23.1:2019", {
      ...{ size: "20M", grade: "400W", shape: "00", A: 3000, length: 3000 },
      remark: "coupler, threaded end",
    }),
  ],
];

/** What is told, and how sure, and whether a change is offered. */
interface Told {
  readonly fact: string;
  readonly example: Example;
  readonly says: string;
}

const TOLD: readonly Told[] = [
  {
    fact: "legs that make a US length are said once, with the cut length: 5 in two bends take off #8",
    example: SOUND[5]![1],
    says: "LEN109 note",
  },
  {
    // floor 20 + 1, ceil 21 + 1
    fact: "20 bars at 150 over 3100 are too few, and the number is the designer's",
    example: bs({
      ...{ size: "H12", shape: "00", A: 2000, length: 2000, members: 1, each: 20, total: 20, spacing: 150 },
      remark: "@150 over 3100",
    }),
    says: "SUM106 perhaps doubtful",
  },
  {
    fact: "H21 may be H12, 20 or 25",
    example: bs({ size: "H21", shape: "00", A: 2000, length: 2000 }),
    says: "SIZE102 off-standard",
  },
  {
    fact: "a leg below P up to 12 mm is not bent: BS 8666 Table 2, note",
    example: bs({ size: "H10", shape: "11", A: 100, B: 500, length: 575 }),
    says: "BEND102 unbendable",
  },
  {
    fact: "a link's end below P opens",
    example: bs({ size: "H10", shape: "51", A: 400, B: 300, C: 100, length: 1550 }),
    says: "BEND103 unsafe",
  },
  {
    fact: "a starter of 1100 mm is guarded like any: osha.gov interpretation 1994-03-23",
    example: rows("ACI318:2019", {
      ...{ size: "#5", shape: "60in +90 12in", length: "70.5in" },
      remark: "starter, projects 43 in",
    }),
    says: "SITE101 doubtful",
  },
  {
    // 3000 / 75 = 40, and 1.5 at each end make 43
    fact: "42 turns for 40 are short of one and a half at each end: seaintarchive.org 1997c msg00887",
    example: rows("BS8666:2005+ACI318:2019", {
      ...{ size: "#3", shape: "77", A: 500, B: 75, C: 42, length: 65125, remark: "length 3000" },
    }),
    says: "SHAPE118 doubtful",
  },
  {
    fact: "numbers of an edition whose text was not read are called so where they are used",
    example: rows("BS8666:2020", { size: "H16", shape: "21", A: 1000, B: 400, C: 500, length: 1850 }),
    says: "STANDARD101 perhaps note",
  },
  {
    // 29 in 16 mm: the printed A + B + (C) - r - 2d takes two right angles, the course a slope of its own
    fact: "a printed length that comes out short of the centre line is doubted, as far as its course is sure",
    example: bs({ size: "H16", shape: "29", A: 500, B: 400, C: 400, D: 250, length: 1250 }),
    says: "SHAPE105 perhaps doubtful",
  },
];

describe("what is usual in a country", () => {
  it.each(SOUND)("is no fault: %s", (_, example) => {
    const loud = findingsOf(example).filter(({ severity }) => severity !== "note");
    expect(loud.map(({ code, severity, message }) => `${code} ${severity}: ${message}`)).toEqual([]);
  });

  it.each(TOLD.map((one) => [one.fact, one] as const))("is told: %s", (_, { example, says }) => {
    const found = findingsOf(example);
    expect(found.map(shortly)).toContain(says);
    // none of these is for a sheet to mend: they are asked
    const [code] = says.split(" ");
    expect(found.filter((one) => one.code === code).map(({ fix }) => fix)).toEqual([null]);
  });

  it("is summed with what is perhaps so beside what is sure", () => {
    const spacing = bs({ size: "H32", shape: "00", A: 2000, length: 2000, spacing: 50 });
    const unsafe = findingsOf(spacing).filter(({ severity }) => severity === "unsafe");
    expect(severityCountWords(severityCounts(unsafe))).toBe(
      "0 unsafe, 1 perhaps unsafe, 0 unbendable, 0 off-standard, 0 doubtful",
    );
  });
});

function findingsOf(example: Example): readonly Finding[] {
  return runAudit({
    sheets: exampleSheets(example),
    standard: standardNamed(example.standard),
    settings: exampleSettings(example),
  }).findings;
}

function shortly({ code, outcome, severity }: Finding): string {
  return `${code} ${outcome === "unsure" ? "perhaps " : ""}${severity}`;
}
