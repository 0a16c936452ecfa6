import { defineRule } from "../rule";

export default defineRule({
  code: "LIFT101",
  name: "heavier-than-lift",
  severity: "note",
  limits: ["handLift", "hoist"],
  docs: {
    summary: "One bar weighs more than is lifted by hand alone, or more than the hoist may lift.",
    why: "No weight is safe for everybody: the figure only says when to plan a second person or a machine.",
    failing: [
      { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000 }] },
      { rows: [{ size: "H40", shape: "00", A: 12000, length: 12000 }], limits: { hoist: 100 } },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 12000, length: 12000 }] }],
  },
  messages: {
    hand: "one bar weighs {mass}, above the {limit} at which lifting by hand is to be planned",
    hoist:
      "one bar weighs {mass}, above the {limit} that the hoist may lift: lift it with what is rated for it",
  },
  checkRow(facts, context, report) {
    const { massEach } = facts;
    const { handLift, hoist } = context.limits;
    if (massEach === null) return;
    const tooHeavy = hoist !== null && massEach > hoist.value ? hoist : null;
    if (tooHeavy === null && massEach <= handLift.value) return;
    if (facts.lengthJudgement.kind === "slip" || facts.pathKind === "helix") return;
    const limit = tooHeavy ?? handLift;
    report({
      messageId: tooHeavy === null ? "hand" : "hoist",
      ...(tooHeavy === null ? {} : { severity: "unsafe" as const }),
      at: "length",
      values: { mass: { kg: massEach }, limit: { kg: limit.value } },
      cite: limit.cite,
    });
  },
});
