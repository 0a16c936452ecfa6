import { barLength } from "../../bar/bar-length";
import { DIMENSION_LETTERS } from "../../bar/dimension-letters";
import { isRefusal, refusalText } from "../../units/refusal";
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
      "{bends} overlap: leg {leg} of {length} is {short} too short for {size} with a former of {former}",
    inside:
      "leg {leg} of {length} ends inside its bend: {short} too short for {size} with a former of {former}",
    contradict: "{reason}",
  },
  checkRow(facts, _context, report) {
    // nothing overlaps where the bar has a length
    const developed = facts.exactLength === null ? facts.developed : null;
    const code = isRefusal(developed) ? developed.code : null;
    const overlap = code === "bends-overlap";
    if (!isRefusal(developed) || (!overlap && code !== "leg-inside-bend")) {
      const length = code === "bend-has-no-inside" ? developed : barLength(facts, "to weigh");
      if (!isRefusal(length) || !CONTRADICTIONS.has(length.code)) return;
      report({ messageId: "contradict", at: "shape", values: { reason: refusalText(length) } });
      return;
    }
    const leg = String(developed.values["leg"] ?? "");
    report({
      messageId: overlap ? "overlap" : "inside",
      at: DIMENSION_LETTERS.find((letter) => letter === leg) ?? "shape",
      values: { ...developed.values, size: facts.sizeName },
      // with a former that is given nothing but geometry is asked
      cite: facts.row.former === null ? (facts.leastFormer?.cite ?? null) : null,
    });
  },
});

const CONTRADICTIONS: ReadonlySet<string> = new Set(["dimensions-contradict", "bend-has-no-inside"]);
