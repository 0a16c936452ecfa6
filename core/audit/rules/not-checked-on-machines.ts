import type { BarFacts } from "../../bar/bar-facts";
import { machinesFor } from "../../bar/bar-on-machines";
import type { NotSearched } from "../../shop/machine-fault";
import type { Workshop } from "../../shop/workshop";
import { exampleShop } from "../example-shop";
import { LEGS_OF_TOOLING } from "../practice.data";
import { defineRule } from "../rule";

const REASONS: readonly NotSearched[] = ["planes", "bends", "rolled", "shapes"];

export default defineRule({
  code: "MACHINE111",
  name: "not-checked-on-machines",
  severity: "note",
  docs: {
    summary: "For some bars no order of bends was searched: bends in several planes, or too many of them.",
    why: "A search in one plane is no proof for such bars: try one bar, and stop where it meets tools or itself. One note a sheet for each reason.",
    failing: [
      {
        rows: [{ size: "H12", shape: "98", A: 600, B: 600, C: 600, D: 600, length: 2925 }],
        shop: exampleShop(),
      },
    ],
    passing: [{ rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }], shop: exampleShop() }],
  },
  messages: {
    planes:
      "bends in more than one plane, so no order of bends was searched (such rows: {rows}): try one bar, and stop where it meets tools or itself",
    bends:
      "more bends than are searched for an order (such rows: {rows}): try one bar, and stop where it meets tools or itself",
    rolled: "rolled, not bent about a former, so no bender was checked (such rows: {rows}): try one bar",
    shapes:
      "more different shapes than are searched for an order (rows not searched: {rows}): try one bar, and stop where it meets tools or itself",
  },
  checkSheet(sheet, { shop }, report) {
    if (shop === null || shop.shop.benders.length === 0) return;
    const found = new Map<NotSearched, { readonly first: BarFacts; rows: number }>();
    for (const { facts, answer: reason } of sheet.answers.those(notSearched, shop)) {
      const held = found.get(reason);
      if (held === undefined) found.set(reason, { first: facts, rows: 1 });
      else held.rows += 1;
    }
    for (const messageId of REASONS) {
      const group = found.get(messageId);
      if (group === undefined) continue;
      const { first, rows } = group;
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

function notSearched(facts: BarFacts, shop: Workshop): NotSearched | null {
  return isCurve(facts) ? "rolled" : (machinesFor(facts, shop)?.notSearched ?? null);
}

function isCurve({ definition }: BarFacts): boolean {
  const kind = definition?.kind;
  return kind === "arc" || kind === "circle" || kind === "helix";
}
