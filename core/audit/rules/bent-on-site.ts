import { saying } from "../../bar/said-words";
import { SITE_REBENDING } from "../practice.data";
import { defineRule } from "../rule";

const saysBentAgain = saying(
  /\bre-?bend|\bre-?bent|\bben[dt] (?:out|back|on site|down on site)|\bsite ben[dt]|straighten/,
);

/** bent, and bent once more: a bar that is only bent in its place is bent once */
const saysAgain = saying(/\bre-?bend|\bre-?bent|\bben[dt] (?:out|back)|straighten/);

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
        standard: "NZS3109:1997",
        rows: [{ size: "HD20", shape: "1000 +90 500", length: 1430, remark: "rebend on site" }],
      },
      {
        rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "rebend on site" }],
      },
    ],
    passing: [{ rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "top" }] }],
  },
  messages: {
    size: "the remark has the bar bent again: {size} is over the {upTo} that may be; ask the designer",
    grade: "the remark has the bar bent again: {grade} is not, {only} is; ask the designer",
    again: "the remark has the bar bent on site: only as the specification allows, ask the designer",
  },
  ofWords: saysBentAgain,
  checkRow(facts, context, report) {
    if (facts.row.remark === null) return;
    if (!facts.inWords(saysBentAgain)) return;
    const limit = context.standard.rebendingLimit;
    const { diameter, grade } = facts;
    const isAgain = facts.inWords(saysAgain);
    if (isAgain && limit !== null && diameter !== null && diameter > limit.value.upTo) {
      const values = { size: facts.sizeName, upTo: { mm: limit.value.upTo } };
      report({ messageId: "size", severity: "unsafe", at: "remark", values, cite: limit.cite });
      return;
    }
    const only = limit?.value.grade ?? null;
    if (isAgain && limit !== null && only !== null && grade !== null && grade.name !== only) {
      const values = { grade: grade.name, only };
      report({ messageId: "grade", severity: "unsafe", at: "remark", values, cite: limit.cite });
      return;
    }
    report({ messageId: "again", at: "remark", cite: context.standard.rebending?.cite ?? SITE_REBENDING });
  },
});
