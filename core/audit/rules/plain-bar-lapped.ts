import { saying } from "../../bar/said-words";
import { PLAIN_BAR_PRACTICE } from "../practice.data";
import { defineRule } from "../rule";

const saysLapped = saying(/\blap|anchor/);

export default defineRule({
  code: "GRADE103",
  name: "plain-bar-lapped",
  severity: "unsafe",
  needs: "plain bar",
  docs: {
    summary:
      "A plain round bar has a lap or anchorage noted, which for ribbed bars would be shorter than it needs.",
    why: "A lap worked out for ribbed steel does not hold a smooth bar. Only the designer can say: ask the designer.",
    failing: [{ rows: [{ size: "R12", shape: "11", A: 2000, B: 200, length: 2200, remark: "lap 40d" }] }],
    passing: [{ rows: [{ size: "H12", shape: "11", A: 2000, B: 200, length: 2200, remark: "lap 40d" }] }],
  },
  messages: {
    lapped:
      "{size} is a plain bar with a lap or anchorage noted: ask the designer for the length a plain bar needs",
  },
  ofWords: saysLapped,
  checkRow(facts, _context, report) {
    if (!facts.isPlain || !facts.inWords(saysLapped)) return;
    report({
      messageId: "lapped",
      outcome: "unsure",
      at: "remark",
      values: { size: facts.sizeName },
      cite: PLAIN_BAR_PRACTICE,
    });
  },
});
