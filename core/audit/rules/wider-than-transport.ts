import { widthIfOver } from "../bar-envelope";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUPPLY102",
  name: "wider-than-transport",
  severity: "doubtful",
  limits: ["transportWidth"],
  docs: {
    summary: "The bent bar does not fit a rectangle whose shorter side is the transport width.",
    why: "A lorry carries it only as a wide load, or not at all.",
    failing: [{ rows: [{ size: "H25", shape: "21", A: 3000, B: 3000, C: 3000, length: 8875 }] }],
    passing: [{ rows: [{ size: "H25", shape: "21", A: 2500, B: 3000, C: 2500, length: 7875 }] }],
  },
  messages: {
    wide: "the bent bar is {width} across its shorter side, over the {limit} that transport takes",
  },
  // a straight bar is no wider than it is thick
  ofKind: ({ definition }) => definition?.path !== "A",
  checkRow(facts, context, report) {
    const { transportWidth } = context.limits;
    const { shape } = facts;
    if (transportWidth === null || shape === null) return;
    const width = widthIfOver(shape, transportWidth.value);
    if (width === null) return;
    report({
      messageId: "wide",
      at: "shape",
      values: { width: { mm: width }, limit: { mm: transportWidth.value } },
      cite: transportWidth.cite,
    });
  },
});
