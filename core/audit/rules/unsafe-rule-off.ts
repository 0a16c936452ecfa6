import { decidedWords } from "../decided-words";
import { defineRule } from "../rule";

export default defineRule({
  code: "SETTING103",
  name: "unsafe-rule-off",
  severity: "doubtful",
  docs: {
    summary: "The workbook turns off a rule that finds what may hurt somebody; that is not obeyed.",
    why: "One setting would hide every unsafe bar of a workbook from whoever it is passed on to. A single row can be waived, with a reason and a name.",
    failing: [
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }], kept: '{"rulesOff":["BEND101"]}' },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }], kept: '{"rulesOff":["LEN103"]}' },
    ],
  },
  messages: {
    unsafe:
      "the workbook turns off {rule} ({decided}), which finds what is unsafe: that is not obeyed; waive the rows that are accepted, and turn the rule on",
  },
  checkSettings({ notObeyed, firstSheet }, report) {
    for (const { words, decision } of notObeyed) {
      report({
        messageId: "unsafe",
        sheet: firstSheet,
        values: { rule: words, decided: decidedWords(decision) },
      });
    }
  },
});
