import { defineRule } from "../rule";

export default defineRule({
  code: "SUPPLY103",
  name: "radius-supplied-straight",
  severity: "note",
  docs: {
    summary: "The radius is so large that the bar is supplied straight and sprung in on site.",
    why: "Nobody bends it; the yard and the site should know before the bar arrives straight.",
    failing: [{ rows: [{ size: "H16", shape: "67", A: 5000, B: 4900, C: 350, R: 8000, length: 5000 }] }],
    passing: [{ rows: [{ size: "H16", shape: "67", A: 5000, B: 4800, C: 500, R: 6000, length: 5000 }] }],
  },
  messages: { straight: "radius {radius} is above {limit}, from which {size} is supplied straight" },
  checkRow(facts, context, report) {
    const { radius } = facts.row;
    const { diameter } = facts;
    if (radius === null || diameter === null) return;
    const limit = context.standard.supply.straightSupplyRadius(diameter);
    if (limit === null || radius <= limit.value) return;
    report({
      messageId: "straight",
      at: "R",
      values: { radius: { mm: radius }, limit: { mm: limit.value }, size: facts.sizeName },
      cite: limit.cite,
    });
  },
});
