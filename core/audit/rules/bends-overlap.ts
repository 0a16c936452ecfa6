import type { BarFacts } from "../../bar/bar-facts";
import { barLength } from "../../bar/bar-length";
import { legsTooShort } from "../../bar/legs-too-short";
import type { ColumnKind } from "../../schedule/bar-row";
import { bendHasNoInside, bendsOverlap, legInsideBend } from "../../shapes/developed-length";
import { leastSure } from "../../standards/citation";
import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import { isRefusal, isRefusalOf, type RefusalWith, refusalText } from "../../units/refusal";
import { courseOf } from "../course-of";
import { defineRule } from "../rule";

export default defineRule({
  code: "BEND105",
  name: "bends-overlap",
  severity: "unbendable",
  docs: {
    summary: "Two bends need more bar than the leg between them has, or an end leg ends inside its bend.",
    why: "There is no straight left: the shape cannot be made with this former at all.",
    failing: [{ rows: [{ size: "H32", shape: "21", A: 500, B: 200, C: 500, length: 1025 }] }],
    passing: [{ rows: [{ size: "H32", shape: "21", A: 500, B: 450, C: 500, length: 1275 }] }],
  },
  messages: {
    overlap:
      "{bends} overlap: leg {leg} of {length} is {short} too short for {size} with a former of {former}: ask the designer for a longer one",
    inside:
      "leg {leg} of {length} ends inside its bend: {short} too short for {size} with a former of {former}: ask the designer for a longer one",
    unheld:
      "leg {leg} of {length} is too short for the right angles beside it, which take {needed} of {size} with a former of {former}: if it is bent so",
    contradict: "{reason}: correct the dimensions, or ask the designer",
  },
  checkRow(facts, _context, report) {
    if (facts.definition === null && !facts.isPath) {
      for (const leg of shortLegs(facts)) {
        const values = { ...leg, size: facts.sizeName };
        report({ messageId: "unheld", outcome: "unsure", at: leg.leg, values, cite: null });
      }
      return;
    }
    // nothing overlaps where the bar has a length
    const developed = facts.hasExactLength ? null : facts.developed;
    // most bars have both lengths, and then no dimension contradicts another
    if (developed === null && facts.computedLength !== null) return;
    // with a former that is given nothing but geometry is asked
    const former = facts.row.former === null ? (facts.leastFormer?.cite ?? null) : null;
    const [course] = courseOf(facts);
    const cite =
      former === null || course === undefined ? (former ?? course ?? null) : leastSure(former, course);
    if (isRefusalOf(developed, bendsOverlap)) {
      const values = { ...developed.values, size: facts.sizeName };
      report({ messageId: "overlap", at: columnOf(developed), values, cite });
    } else if (isRefusalOf(developed, legInsideBend)) {
      const values = { ...developed.values, size: facts.sizeName };
      report({ messageId: "inside", at: columnOf(developed), values, cite });
    } else {
      const length = isRefusalOf(developed, bendHasNoInside) ? developed : barLength(facts, "to weigh");
      if (!isRefusal(length) || !CONTRADICTIONS.has(length.code)) return;
      report({ messageId: "contradict", at: "shape", values: { reason: refusalText(length) } });
    }
  },
});

function columnOf({ values }: RefusalWith<"leg">): ColumnKind {
  return DIMENSION_LETTERS.find((letter) => letter === values.leg) ?? "shape";
}

const CONTRADICTIONS: ReadonlySet<string> = new Set(["dimensions-contradict", bendHasNoInside.code]);

/** Of a shape that is not held, about the least former that any use has. */
function shortLegs(facts: BarFacts) {
  const formers = [facts.row.former, facts.leastFormer?.value, facts.leastFormerOfLink?.value];
  const former = Math.min(...formers.map((one) => one ?? Number.POSITIVE_INFINITY));
  return legsTooShort(facts, former).map(({ leg, length, needed }) => ({
    leg,
    length: { mm: length },
    needed: { mm: needed },
    former: { mm: former },
  }));
}
