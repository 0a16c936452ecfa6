import { lacksFormer } from "../../standards/lacks-former";
import { isRefusal, refusalText } from "../../units/refusal";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE114",
  name: "path-unread",
  severity: "doubtful",
  needs: "refused shape",
  docs: {
    summary: "The shape is written as a path that could not be read.",
    why: "What is not read is not checked: no rule on bends or lengths speaks of this bar.",
    failing: [{ rows: [{ size: "H16", shape: "500 +90 +90 400", length: 875 }] }],
    passing: [{ rows: [{ size: "H16", shape: "500 +90 400", length: 875 }] }],
  },
  messages: { unread: "{reason}" },
  checkRow(facts, _context, report) {
    // a former that the standard lacks is said once for the sheet
    if (!facts.isPath || !isRefusal(facts.resolved) || lacksFormer(facts.resolved)) return;
    report({
      messageId: "unread",
      outcome: "unsure",
      // a sketch with signs, in a list that writes its shapes in its own way
      ...(facts.sheet.habits.shapesOwnWay ? { severity: "note" as const } : {}),
      at: "shape",
      values: { reason: refusalText(facts.resolved) },
    });
  },
});
