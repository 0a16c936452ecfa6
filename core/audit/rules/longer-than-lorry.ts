import { isFromCoil } from "../../bar/is-from-coil";
import { LORRY_LENGTH } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUPPLY105",
  name: "longer-than-lorry",
  severity: "note",
  docs: {
    summary: "A straight bar is longer than an ordinary lorry carries.",
    why: "It needs a long load with leave to travel, or a lap or coupler: to be planned before it is cut.",
    failing: [{ rows: [{ size: "H32", shape: "00", A: 15000, length: 15000 }] }],
    passing: [{ rows: [{ size: "H32", shape: "00", A: 12000, length: 12000 }] }],
  },
  messages: { long: "a bar of {length} is longer than the {limit} that an ordinary lorry carries" },
  ofKind: ({ isStraight, diameter }) => isStraight && (diameter ?? 0) > FOLDED_UP_TO,
  checkRow(facts, _context, report) {
    const length = facts.lengthInForce;
    if (!facts.isStraight || isFromCoil(facts) || length === null || length <= LORRY_LENGTH.value) return;
    // thin bars come in coil or folded in two
    if (facts.lengthJudgement.kind === "slip" || (facts.diameter ?? 0) <= FOLDED_UP_TO) return;
    report({
      messageId: "long",
      outcome: "unsure",
      at: "length",
      values: { length: { mm: length }, limit: { mm: LORRY_LENGTH.value } },
      cite: LORRY_LENGTH.cite,
    });
  },
});

/** mm */
const FOLDED_UP_TO = 16;
