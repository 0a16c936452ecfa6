import { isFromCoil } from "../../bar/is-from-coil";
import { LORRY_LENGTH } from "../practice.data";
import { reachOf } from "../reach-of";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUPPLY105",
  name: "longer-than-lorry",
  severity: "note",
  docs: {
    summary:
      "A bar is longer than the yard's own lorry takes, or a straight one than an ordinary lorry carries.",
    why: "It needs a long load with leave to travel, or a lap or coupler: to be planned before it is cut.",
    failing: [{ rows: [{ size: "H32", shape: "00", A: 15000, length: 15000 }] }],
    passing: [{ rows: [{ size: "H32", shape: "00", A: 12000, length: 12000 }] }],
  },
  messages: {
    long: "a bar of {length} is longer than the {limit} that an ordinary lorry carries",
    own: "a bar of {length} is longer than the {limit} that the yard's lorry takes, by the Shop sheet: it goes on no load",
    ownBent:
      "the bent bar is {length} from end to end, longer than the {limit} that the yard's lorry takes, by the Shop sheet: it goes on no load",
  },
  checkRow(facts, { limits: { lorryLength: own } }, report) {
    if (own !== null) {
      const reach = facts.lengthJudgement.kind === "slip" ? null : reachOf(facts);
      if (reach === null || reach <= own.value) return;
      report({
        messageId: facts.isStraight ? "own" : "ownBent",
        severity: "doubtful",
        at: "length",
        values: { length: { mm: reach }, limit: { mm: own.value } },
        cite: own.cite,
      });
      return;
    }
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
