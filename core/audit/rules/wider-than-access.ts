import { widthIfOver } from "../bar-envelope";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUPPLY104",
  name: "wider-than-access",
  severity: "doubtful",
  limits: ["accessWidth"],
  docs: {
    summary: "The bent bar does not pass the opening set for this workbook.",
    why: "A bar that cannot be brought to its place is bent again on site, or cut.",
    failing: [
      {
        rows: [{ size: "H25", shape: "21", A: 1500, B: 2000, C: 1500, length: 4875 }],
        limits: { accessWidth: 1200 },
      },
    ],
    passing: [{ rows: [{ size: "H25", shape: "21", A: 1500, B: 2000, C: 1500, length: 4875 }] }],
  },
  messages: { wide: "the bent bar is {width} across its shorter side, over the opening of {limit}" },
  checkRow(facts, context, report) {
    const { accessWidth } = context.limits;
    // most workbooks name none, and no shape is resolved for it
    if (accessWidth === null) return;
    const { shape } = facts;
    if (shape === null) return;
    const width = widthIfOver(shape, accessWidth.value);
    if (width === null) return;
    const values = { width: { mm: width }, limit: { mm: accessWidth.value } };
    report({ messageId: "wide", at: "shape", values, cite: accessWidth.cite });
  },
});
