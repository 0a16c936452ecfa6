import type { BarFacts } from "../../bar/bar-facts";
import { exampleShop } from "../example-shop";
import { COLD_TO_ASK_ABOUT } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "STEEL101",
  name: "cold-bending",
  severity: "unsafe",
  docs: {
    summary: "The shop is colder than the standard lets bars be bent without leave.",
    why: "Cold steel cracks at the bend, at once or later. Stop; warm the bars only as the specification allows: ask the designer. One finding a sheet.",
    failing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({ limits: { temperature: -8 } }),
      },
    ],
    passing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({ limits: { temperature: 12 } }),
      },
      {
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        shop: exampleShop({ limits: { temperature: -8 } }),
      },
    ],
  },
  messages: {
    cold: "the shop is at {temperature} C, below the {least} C from which bars are bent cold without leave (bent rows: {rows}): stop, and ask the designer",
    ask: "the shop is at {temperature} C, and {standard} as held names no least temperature for bending (bent rows: {rows}): ask the designer",
  },
  checkSheet(sheet, { standard, shop }, report) {
    const temperature = shop?.shop.limits.temperature ?? null;
    if (temperature === null) return;
    const { coldBending } = standard;
    const least = coldBending ?? COLD_TO_ASK_ABOUT;
    if (temperature >= least.value) return;
    const rows = sheet.answers.count(isBent);
    if (rows === 0) return;
    const values = { rows, temperature, least: least.value, standard: standard.id };
    if (coldBending !== null) report({ messageId: "cold", values, cite: least.cite });
    else report({ messageId: "ask", severity: "note", outcome: "unsure", values, cite: least.cite });
  },
});

function isBent({ row, isStraight }: BarFacts): boolean {
  return row.shape !== null && !isStraight;
}
