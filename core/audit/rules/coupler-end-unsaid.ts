import { saying } from "../../bar/said-words";
import { COUPLER_ENDS } from "../practice.data";
import { defineRule } from "../rule";

const saysCoupler = saying(/\bcoupl/);
const saysEnds = saying(/\bsaw|thread|upset|forged|swag|end prep/);

export default defineRule({
  code: "SITE103",
  name: "coupler-end-unsaid",
  severity: "note",
  needs: "remark",
  docs: {
    summary: "A bar for couplers names no end preparation.",
    why: "A sheared end is crushed and burred and does not go into a coupler.",
    failing: [{ rows: [{ size: "H25", shape: "00", A: 6000, length: 6000, remark: "coupler one end" }] }],
    passing: [
      {
        rows: [
          {
            size: "H25",
            shape: "00",
            A: 6000,
            length: 6000,
            remark: "coupler one end, saw cut and threaded",
          },
        ],
      },
    ],
  },
  messages: {
    unsaid:
      "the bar takes a coupler, but no end preparation is named: sawn, threaded or as the coupler's maker says",
  },
  ofWords: saysCoupler,
  checkRow(facts, _context, report) {
    if (facts.row.remark === null || !facts.inWords(saysCoupler)) return;
    if (facts.inWords(saysEnds)) return;
    report({ messageId: "unsaid", outcome: "unsure", at: "remark", cite: COUPLER_ENDS });
  },
});
