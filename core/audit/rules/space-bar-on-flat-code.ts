import { saying } from "../../bar/said-words";
import { defineRule } from "../rule";

const saysOutOfPlane = saying(/\b3-?d\b|isometric|\biso\b|out of plane|two planes|2 planes/);

export default defineRule({
  code: "SHAPE110",
  name: "space-bar-on-flat-code",
  severity: "off-standard",
  needs: "remark",
  docs: {
    summary: "The remark says that the bar bends in two planes, but the code is flat.",
    why: "The bender makes a flat bar; nothing on the schedule tells of the second plane.",
    failing: [
      { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350, remark: "out of plane" }] },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350, remark: "bottom" }] },
    ],
  },
  messages: {
    flat: "the remark says two planes, but shape {code} is flat: use a sketched shape with an isometric view",
  },
  ofWords: saysOutOfPlane,
  checkRow(facts, _context, report) {
    const { definition, row } = facts;
    if (row.remark === null || definition === null || (definition.kind ?? "planar") !== "planar") return;
    if (definition.path === null || !facts.inWords(saysOutOfPlane)) return;
    report({
      messageId: "flat",
      outcome: "unsure",
      at: "shape",
      values: { code: definition.code },
      cite: definition.cite,
    });
  },
});
