import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE109",
  name: "angle-not-of-code",
  severity: "off-standard",
  needs: "remark",
  docs: {
    summary: "The remark names a bend angle that the shape code does not have.",
    why: "The bender goes by the code: a right angle is what comes out.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, remark: "bend 120 deg" }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, remark: "bend 90 deg" }] }],
  },
  messages: { other: "the remark names {angle} degrees, but every bend of shape {code} is 90" },
  checkRow(facts, _context, report) {
    const { remark } = facts.row;
    const said = remark === null ? null : /\b(\d{2,3})\s*(?:°|deg\b|degrees?\b)/i.exec(remark);
    if (said === null) return;
    const { planarPath, definition } = facts;
    if (planarPath === null || definition === null || planarPath.turns.length === 0) return;
    const angle = Number(said[1]);
    if (angle === 90 || angle > 180 || planarPath.turns.some((turn) => Math.abs(turn.angle) !== 90)) return;
    report({
      messageId: "other",
      outcome: "unsure",
      at: "shape",
      values: { angle, code: definition.code },
      cite: definition.cite,
    });
  },
});
