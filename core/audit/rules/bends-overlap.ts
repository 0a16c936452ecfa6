import type { BarFacts } from "../../bar/bar-facts";
import { barLength } from "../../bar/bar-length";
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
      for (const leg of legsTooShort(facts)) {
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

/** Most legs, and of each the diameters that bends may take of it, of a length that is the sum of its legs. */
const MOST_LEGS = 3;
const LESS_A_BEND = 6;
const CLOSE = 1;
const SAYS_U = /^\s*u\b/i;

/**
 * Of a shape that is not held: legs that make the length in one go, of which the first, the last or, in a U, the
 * middle one has no room for its right angles about the least former that any use has.
 */
function legsTooShort(facts: BarFacts) {
  const { row, diameter } = facts;
  const { length } = row;
  const dims = row.dims.flatMap((leg, at) => (leg === null || leg === 0 ? [] : [{ leg, at }]));
  const formers = [facts.row.former, facts.leastFormer?.value, facts.leastFormerOfLink?.value];
  const former = Math.min(...formers.map((one) => one ?? Number.POSITIVE_INFINITY));
  if (diameter === null || length === null || dims.length < 2 || dims.length > MOST_LEGS) return [];
  if (!Number.isFinite(former)) return [];
  const less = dims.reduce((sum, { leg }) => sum + leg, 0) - length;
  if (less < -CLOSE || less > LESS_A_BEND * diameter * (dims.length - 1)) return [];
  const bend = former / 2 + diameter;
  const isU = dims.length === MOST_LEGS && SAYS_U.test(String(facts.typed("shape") ?? ""));
  return dims.flatMap(({ leg, at }, place) => {
    const isEnd = place === 0 || place === dims.length - 1;
    const needed = isEnd ? bend : isU ? 2 * bend : 0;
    const letter = DIMENSION_LETTERS[at];
    if (letter === undefined || leg >= needed - CLOSE) return [];
    return [{ leg: letter, length: { mm: leg }, needed: { mm: needed }, former: { mm: former } }];
  });
}
