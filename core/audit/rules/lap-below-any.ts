import { lapSaid } from "../lap-said";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN110",
  name: "lap-below-any",
  severity: "unsafe",
  docs: {
    summary: "A lap is shorter than the least that the design code takes for any lap at all.",
    why: "A lap is worked out by the designer; whatever comes out, codes allow none below a few hundred millimetres. A shorter one pulls out: ask the designer.",
    failing: [
      { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 150" }] },
      {
        standard: "IS2502:1963",
        rows: [{ size: "T12", shape: "00", A: 6000, length: 6000, remark: "lap 150" }],
      },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 500" }] },
      { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 10d welded" }] },
    ],
  },
  messages: { short: "a lap of {lap} is below {least}, the least of any lap: ask the designer" },
  checkRow(facts, { standard }, report) {
    const { diameter } = facts;
    // the lap of a ring is another rule's
    if (diameter === null || facts.pathKind === "circle" || facts.pathKind === "helix") return;
    const said = lapSaid(facts);
    const lap = facts.row.lap || said;
    if (lap === null) return;
    const rule = standard.detailing("least lap", diameter);
    if (rule === null) return;
    const least = Math.max((rule.value.perDiameter ?? 0) * diameter, rule.value.atLeast ?? 0);
    if (lap >= least - 1e-6) return;
    report({
      messageId: "short",
      at: facts.row.lap ? "length" : facts.row.remark === null ? "size" : "remark",
      values: { lap: { mm: lap }, least: { mm: least } },
      cite: rule.cite,
    });
  },
});
