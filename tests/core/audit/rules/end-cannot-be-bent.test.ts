import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/end-cannot-be-bent";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import { isRefusal } from "../../../../core/units/refusal";
import { ruleCases } from "../rule-cases";

const EC2 = "EC2:2004";
const says = (cell: string, message: string, severity: "unbendable" | "doubtful" = "unbendable") => [
  { cell, outcome: "unsure" as const, severity, message },
];
/** 2 (a + b) and two hooks */
const link = (size: string, A: number, B: number, C: number) => ({
  ...{ size, shape: "Bügel", A, B, C, length: 2 * (A + B + C) },
});
// hooks of 15 d: 120 for 8, 150 for 10, 180 for 12
const LINKS = [link("8", 300, 400, 120), link("12", 300, 500, 180), link("10", 250, 450, 150)];
/** legs in words, out to out, that the length is the sum of */
const worded = (size: string, remark: string, length: number) => ({ size, shape: "-", length, remark });
const WORDS = [
  worded("12", "150-1300-150", 1600),
  worded("16", "250-4800-250", 5300),
  worded("16", "300-3300", 3600),
];
// Australian bars under a European document: N20 is bent about 5 d = 100 (AS 3600, 17.2.3.2: from memory)
const AUSTRALIAN = ["N12", "N16", "N16", "N24", "N12", "N16"].map((size) => ({
  ...{ size, shape: "Cog", A: 600, B: 1500, length: 2100 },
}));

ruleCases(rule, {
  silent: [
    { standard: EC2, rows: LINKS },
    { standard: EC2, rows: WORDS },
    { rows: AUSTRALIAN },
    // 16 mm about 64 takes 32 + 16 = 48 of an end
    { standard: EC2, rows: [...WORDS, worded("16", "48-5600-250", 5898)] },
    // one other hook is no habit, and hooks of 8 d among those of 10 d are near enough
    { standard: EC2, rows: [link("10", 250, 450, 150), link("10", 200, 350, 50)] },
    { standard: EC2, rows: [...LINKS, link("10", 200, 350, 110)] },
    // legs of more than 20 d are no hooks
    {
      standard: EC2,
      rows: [900, 800, 850, 200].map((C) => ({ size: "12", shape: "Z", A: 300, B: 200, C, length: 500 + C })),
    },
  ],
  speaks: [
    {
      // 50 for 10 mm is 5 d, and the length follows: 2 (200 + 350 + 50) = 1200
      standard: EC2,
      rows: [...LINKS, link("10", 200, 350, 50)],
      says: says(
        "K5",
        "hook C of 50 mm is 5 d, and those of the other 3 bars of this shape are 15 d: is it a slip?",
        "doubtful",
      ),
    },
    {
      // a nought lost in a hook of 10 d
      standard: EC2,
      rows: [link("8", 300, 400, 80), link("10", 300, 500, 100), link("10", 250, 450, 10)],
      says: says(
        "K4",
        "hook C of 10 mm is 1 d, and those of the other 2 bars of this shape are 10 d: is it a slip?",
        "doubtful",
      ),
    },
    {
      // 4 for 40 in a text: 16 mm about 64 takes 48
      standard: EC2,
      rows: [...WORDS, worded("16", "40-5600-250", 5890)],
      says: says(
        "G5",
        "leg 40-5600-250 of 40 mm is too short for the right angle beside it, which takes 48 mm of 16 with a former of 64 mm: if it is bent so, ask the designer",
      ),
    },
    {
      // with plus signs and in metres; 20 mm about 140 takes 70 + 20 = 90
      standard: EC2,
      rows: [
        worded("12", "0,15+1,30+0,15", 1600),
        worded("16", "0,25+4,80+0,25", 5300),
        worded("20", "0,40+3,20", 3600),
        worded("20", "3,20+0,06", 3260),
      ],
      says: says(
        "G5",
        "leg 3,20+0,06 of 60 mm is too short for the right angle beside it, which takes 90 mm of 20 with a former of 140 mm: if it is bent so, ask the designer",
      ),
    },
    {
      // 5 x 20 / 2 + 20 = 70
      rows: [...AUSTRALIAN, { size: "N20", shape: "Cog", A: 60, B: 1800, length: 1860 }],
      says: says(
        "I8",
        "leg A of 60 mm is too short for the right angle beside it, which takes 70 mm of N20 with a former of 100 mm: if it is bent so, ask the designer",
      ),
    },
  ],
});

// a hook stands in a column of its own, in the words of the country; EN 1992-1-1, 8.5 asks for 5 d (from memory)
it.each(["Hook", "Haak", "crochet", "kait", "\u0386\u03b3\u03ba."])("reads the hooks under %j", (hook) => {
  const rows = [
    ["Mark", "Size", "Shape", "A mm", "B mm", hook, "Length mm", "Total"],
    ["1", "10", "stirrup", 140, 440, 110, 1380, 72],
    ["2", "10", "stirrup", 140, 540, 30, 1580, 224],
    ["3", "12", "L", 300, 1900, null, 2200, 54],
  ];
  const standard = resolveStandard(EC2);
  if (isRefusal(standard)) throw standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Links", rows)], standard });
  expect(findings.filter(({ code }) => code === rule.code)).toMatchObject([
    {
      row: 3,
      severity: "unbendable",
      outcome: "unsure",
      message: "hook 30 mm of 10 is below 5 d: is it a slip?",
    },
  ]);
});

it("takes two under hooks for their number, and no length", () => {
  const rows = [
    ["Mark", "Size", "Shape", "A mm", "B mm", "Hooks", "Length mm", "Total"],
    ["1", "10", "stirrup", 140, 440, 2, 1380, 72],
    ["2", "10", "stirrup", 140, 540, 2, 1580, 224],
  ];
  const standard = resolveStandard(EC2);
  if (isRefusal(standard)) throw standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Links", rows)], standard });
  expect(findings.filter(({ code }) => code === rule.code)).toEqual([]);
});

// 1 in is 25.4 mm (exact): 5 in are 10 d of a #4 of 12.7 mm, and 1 in is 2 d
it.each([
  ["1'-2\"", "1'-6\"", '5"', '1"'],
  ["1-02", "1-06", "0-05", "0-01"],
  ["1 ft 2 in", "1 ft 6 in", "5 in", "1 in"],
])("reads hooks in feet and inches beside legs of %s", (a, b, sound, slip) => {
  const rows = [
    ["Mark", "Size", "Shape", "A", "B", "Hook", "Length", "Total"],
    ["T1", "#4", "tie", a, b, sound, "6'-2\"", 72],
    ["T2", "#4", "tie", a, b, slip, "6'-2\"", 24],
    // neither inches nor feet for sure
    ["T3", "#4", "tie", a, b, 5, "6'-2\"", 30],
    ["B1", "#5", "bend", a, b, null, "2'-8\"", 54],
  ];
  const standard = resolveStandard("ACI318:2019");
  if (isRefusal(standard)) throw standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Ties", rows)], standard });
  expect(findings.filter(({ code }) => code === rule.code)).toMatchObject([
    { row: 3, message: 'hook 1" of #4 is below 5 d: is it a slip?' },
  ]);
});

it("takes the unit that a hook is written in, whatever the legs are in", () => {
  const rows = [
    ["Mark", "Size", "Shape", "A mm", "B mm", "Hook", "Length mm", "Total"],
    ["1", "10", "stirrup", 140, 440, "11 cm", 1380, 72],
    ["2", "10", "stirrup", 140, 540, "3 cm", 1580, 224],
  ];
  const standard = resolveStandard(EC2);
  if (isRefusal(standard)) throw standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Links", rows)], standard });
  expect(findings.filter(({ code }) => code === rule.code)).toMatchObject([
    { row: 3, message: "hook 30 mm of 10 is below 5 d: is it a slip?" },
  ]);
});
