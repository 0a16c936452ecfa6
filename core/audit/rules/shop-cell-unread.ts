import { exampleShop } from "../example-shop";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHOP101",
  name: "shop-cell-unread",
  severity: "doubtful",
  docs: {
    summary: "A cell of the Shop sheet could not be read, or nothing goes by it.",
    why: "It is taken as not known, so what it would allow or forbid is not checked.",
    failing: [
      {
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        shop: exampleShop({ bender: { guardRadius: "wide" } }),
      },
    ],
    passing: [{ rows: [{ size: "H12", shape: "00", A: 900, length: 900 }], shop: exampleShop() }],
  },
  messages: {
    unused: `"{typed}": {wanted}`,
    unread: `"{typed}" could not be read: write {wanted}, or leave it blank where it is not known`,
  },
  checkShop({ shop }, _context, report) {
    for (const { row, column, typed, wanted, isUnused } of shop.problems) {
      const messageId = isUnused === true ? "unused" : "unread";
      report({ messageId, place: { row, column }, values: { typed, wanted } });
    }
  },
});
