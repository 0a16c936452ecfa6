import { saying } from "../../bar/said-words";
import { PLAIN_BAR_PRACTICE } from "../practice.data";
import { defineRule } from "../rule";

const saysDowel = saying(/dowel|tie bar|spacer|chair/);

export default defineRule({
  code: "GRADE102",
  name: "plain-bar-without-hook",
  severity: "doubtful",
  needs: "plain bar",
  docs: {
    summary: "A plain round bar is scheduled straight, without hooks.",
    why: "A smooth bar hardly bonds: in tension it is anchored by its hooks. Only the designer knows where it pulls: ask the designer.",
    failing: [{ rows: [{ size: "R10", shape: "00", A: 3000, length: 3000 }] }],
    passing: [{ rows: [{ size: "R10", shape: "21", A: 300, B: 300, C: 300, length: 875 }] }],
  },
  messages: {
    straight: "{size} is a plain bar scheduled straight, without hooks: ask the designer how it is anchored",
  },
  checkRow(facts, _context, report) {
    if (!facts.isStraight || !facts.isPlain || facts.inWords(saysDowel)) return;
    report({
      messageId: "straight",
      at: "shape",
      values: { size: facts.sizeName },
      cite: PLAIN_BAR_PRACTICE,
    });
  },
});
