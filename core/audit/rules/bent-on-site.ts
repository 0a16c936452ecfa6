import { saying } from "../../bar/said-words";
import { SITE_REBENDING } from "../practice.data";
import { defineRule } from "../rule";

const saysBentAgain = saying(
  /\bre-?bend|\bre-?bent|\bben[dt] (?:out|back|on site|down on site)|\bsite ben[dt]|straighten/,
);

export default defineRule({
  code: "SITE104",
  name: "bent-on-site",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "The remark has a bar bent or straightened again on site.",
    why: "Steel that is bent twice, or in the cold, may crack; it needs the specification's leave. Ask the designer.",
    failing: [
      {
        rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "rebend on site" }],
      },
    ],
    passing: [{ rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "top" }] }],
  },
  messages: {
    again: "the remark has the bar bent on site: only as the specification allows, ask the designer",
  },
  checkRow(facts, context, report) {
    if (facts.row.remark === null) return;
    if (!facts.inWords(saysBentAgain)) return;
    report({ messageId: "again", at: "remark", cite: context.standard.rebending?.cite ?? SITE_REBENDING });
  },
});
