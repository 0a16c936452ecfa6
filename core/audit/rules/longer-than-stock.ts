import { saying } from "../../bar/said-words";
import { defineRule } from "../rule";

const CLOSE = 1e-6;

const saysJoined = saying(/\blap|coupl|splic/);

export default defineRule({
  code: "SUPPLY101",
  name: "longer-than-stock",
  severity: "off-standard",
  limits: ["stockLength"],
  docs: {
    summary: "The bar is longer than the stock length and no lap or coupler is named.",
    why: "It must be split and lapped, where and by how much only the designer can say: ask the designer.",
    failing: [{ rows: [{ size: "H20", shape: "00", A: 14000, length: 14000 }] }],
    passing: [{ rows: [{ size: "H20", shape: "00", A: 12000, length: 12000 }] }],
  },
  messages: {
    longer:
      "length {length} is over the stock length {stock}, and no lap is named: ask the designer where to lap",
  },
  checkRow(facts, context, report) {
    const { lengthInForce: length, diameter } = facts;
    if (length === null || diameter === null) return;
    const stockLength = context.limits.stockLengthOf(diameter);
    if (stockLength === null || length <= stockLength.value + CLOSE) return;
    if (facts.pathKind === "helix" || facts.lengthJudgement.kind === "slip") return;
    if (facts.row.lap || facts.inWords(saysJoined)) return;
    report({
      messageId: "longer",
      at: "length",
      values: { length: { mm: length }, stock: { mm: stockLength.value } },
      cite: stockLength.cite,
    });
  },
});
