import { exampleShop } from "../example-shop";
import { LEGS_OF_TOOLING } from "../practice.data";
import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE111",
  name: "not-checked-on-machines",
  severity: "note",
  docs: {
    summary:
      "For some bars no order of bends was searched: bends in several planes, round several formers, or too many of them.",
    why: "A search in one plane is no proof for such bars: try one bar slowly. One note a sheet for each reason.",
    failing: [
      {
        rows: [{ size: "H12", shape: "98", A: 600, B: 600, C: 600, D: 600, length: 1800 }],
        shop: exampleShop(),
      },
    ],
    passing: [{ rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }], shop: exampleShop() }],
  },
  messages: {
    planes:
      "bends in more than one plane, so no order of bends was searched (such rows: {rows}): try one bar slowly",
    bends: "more bends than are searched for an order (such rows: {rows}): try one bar slowly",
    formers:
      "bent round several formers, so no order of bends was searched (such rows: {rows}): try one bar slowly",
  },
  checkSheet(sheet, { shop }, report) {
    if (shop === null) return;
    const found = new Map<"planes" | "bends" | "formers", { readonly first: RowFacts; rows: number }>();
    for (const facts of sheet.bars) {
      const reason = shop.judge(facts)?.notSearched ?? null;
      if (reason === null) continue;
      const held = found.get(reason);
      if (held === undefined) found.set(reason, { first: facts, rows: 1 });
      else held.rows += 1;
    }
    for (const [messageId, { first, rows }] of found) {
      report({
        messageId,
        outcome: "unsure",
        row: first,
        at: "shape",
        values: { rows },
        cite: LEGS_OF_TOOLING,
      });
    }
  },
});
