import type { BarFacts } from "../../bar/bar-facts";
import { offLegConvention } from "../../bar/leg-convention";
import { type LengthHabit, offHabitOfCodes, offLengthHabit } from "../../bar/length-habits";
import { lengthsAsStated } from "../../bar/stated-sums";
import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import { hasLengthsElsewhere } from "../kept-elsewhere";
import { defineRule } from "../rule";

const bar = (A: number, B: number, length: number) => ({ size: "16", shape: "U1", A, B, C: 300, length });
// 300 + 1000 + 300 less 2.5 diameters of 16 mm
const BARS = [bar(300, 1000, 1560), bar(300, 1500, 2060), bar(400, 2000, 2660), bar(500, 900, 1660)];

export default defineRule({
  code: "LEN108",
  name: "length-off-habit",
  severity: "doubtful",
  docs: {
    summary:
      "A length does not follow from its legs as the other bars of the same shape on the sheet have it.",
    why: "Where the standard holds no such shape the sheet's own habit is the measure: a missing leg, a lost nought or a short hook shows as a length that the others would not give.",
    failing: [{ standard: "EC2:2004", rows: [...BARS, bar(300, 1200, 2760)] }],
    passing: [{ standard: "EC2:2004", rows: BARS }],
  },
  messages: {
    blank:
      "leg {letter} is blank: the length {length} leaves {leg} for it, as {kept} of {tested} bars make lengths of their legs",
    fits: "leg {letter} of {typed} does not fit the length {length}: {leg} would, as {kept} of {tested} bars make lengths of their legs",
    sum: "length {length} is not the {leg} that its legs make as {kept} of {tested} bars make lengths of theirs",
    shape:
      "shape {typedShape} has the legs that the bars of {shape} have, and not those of all others of {typedShape}: is it {shape}?",
    moved:
      "leg {letter} of {typed} stands where no other bar of {typedShape} has one: the {kept} others have {instead}, which is blank here",
    longer: "length {length} is shorter than leg {letter} of {leg} alone",
    missing:
      "length {length} is longer than its legs, {expected}, by just {letter}: is a leg missing? {kept} of {tested} bars are as long as their legs",
    differs:
      "length {length} is not the {expected} that {legs} make, as in {kept} of {tested} bars of this shape",
  },
  checkSheet(sheet, context, report) {
    const ofCodes = hasLengthsElsewhere(sheet.habits, context) ? offHabitOfCodes(sheet) : [];
    const isAsStated = lengthsAsStated(sheet);
    const byHabit = [...offLengthHabit(sheet), ...ofCodes].filter(({ facts }) => !isAsStated(facts));
    const ofLeg = new Set<BarFacts>();
    const told = new Set(byHabit.filter(({ likeLeg }) => likeLeg === undefined).map(({ facts }) => facts));
    for (const { facts, kind, leg, to, shape = "", instead = 0, kept, tested } of offLegConvention(sheet)) {
      if (isAsStated(facts) || (told.has(facts) && (kind === "longer" || kind === "sum"))) continue;
      told.add(facts);
      if (kind === "fits" || kind === "blank") ofLeg.add(facts);
      const letter = DIMENSION_LETTERS[leg] ?? "A";
      const length = { mm: facts.row.length ?? 0, typed: true } as const;
      const typedShape = String(facts.typed("shape") ?? "");
      const legs = { letter, typed: { mm: facts.dim(letter) ?? 0 }, leg: { mm: to } };
      const other = DIMENSION_LETTERS[instead] ?? "A";
      const values = { ...legs, length, kept, tested, shape, typedShape, instead: other };
      const at = kind === "shape" ? kind : kind === "longer" || kind === "sum" ? "length" : letter;
      report({ messageId: MESSAGE[kind], outcome: "unsure", row: facts, at, values });
    }
    for (const { facts, habit, expected, likeLeg } of byHabit) {
      if (ofLeg.has(facts) || (likeLeg !== undefined && told.has(facts))) continue;
      if (likeLeg !== undefined) {
        const length = { mm: facts.row.length ?? 0, typed: true } as const;
        const letter = DIMENSION_LETTERS[likeLeg] ?? "A";
        const { kept, tested } = habit;
        const values = { length, expected: { mm: expected }, letter, kept, tested };
        report({ messageId: "missing", outcome: "unsure", row: facts, at: "length", values });
        continue;
      }
      report({
        messageId: "differs",
        outcome: "unsure",
        row: facts,
        at: "length",
        values: {
          length: { mm: facts.row.length ?? 0, typed: true },
          expected: { mm: expected },
          legs: inWords(habit),
          kept: habit.kept,
          tested: habit.tested,
        },
      });
    }
  },
});

const MESSAGE = {
  ...({ blank: "blank", fits: "fits", moved: "moved" } as const),
  ...({ longer: "longer", sum: "sum", shape: "shape" } as const),
};

function inWords({ times, less }: LengthHabit): string {
  const legs = times
    .map((many, place) => `${many === 1 ? "" : many}${DIMENSION_LETTERS[place] ?? ""}`)
    .join(" + ");
  if (less === 0) return legs;
  return less > 0 ? `${legs} - ${less} d` : `${legs} + ${-less} d`;
}
