import type { BarFacts } from "../../bar/bar-facts";
import { machinesFor } from "../../bar/bar-on-machines";
import { type BarsAtOnce, barsAtOnce } from "../../bending/bars-at-once";
import type { Machine } from "../../bending/machine";
import type { Workshop } from "../../shop/workshop";
import { isRefusal } from "../../units/refusal";
import { exampleShop } from "../example-shop";
import { OF_SHOP_SHEET } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE109",
  name: "bars-at-once-estimated",
  severity: "note",
  docs: {
    summary: "How many bars of a size are bent at once is only an estimate from another row of the plate.",
    why: "Bars side by side share a load unevenly, and the plate's own rows are usually lower than any scaling: ask the maker. One note for each size.",
    failing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({ plates: [["Bench 2", "bend", "H20", 500, 1]] }),
      },
    ],
    passing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({ plates: [["Bench 2", "bend", "H12", 500, 3]] }),
      },
    ],
  },
  messages: {
    estimate:
      "bars at once of {size} on {machine}: {bars}, an estimate from the plate's {ratedBars} of {rated}: ask the maker",
  },
  checkSheet(sheet, { shop }, report) {
    if (shop === null) return;
    for (const place of sheet.answers.whole(firstsOfEach, barOnMachine, shop)) {
      const facts = sheet.answers.bar(place);
      const ranking = machinesFor(facts, shop);
      const madeOn = ranking?.made?.machine ?? null;
      if (ranking === null || madeOn === null) continue;
      const bar = { diameter: ranking.bar.diameter, yield: ranking.bar.steel.yield };
      const plate = estimateOn(madeOn, bar);
      if (plate !== null) report({ row: facts, at: "size", ...noteOf(facts, madeOn, plate) });
    }
  },
});

/** The first bar of each size and steel on each bender. */
function firstsOfEach(bars: readonly BarFacts[], shop: Workshop): readonly number[] {
  const firsts = new Map<string, number>();
  bars.forEach((facts, place) => {
    const key = barOnMachine(facts, shop);
    if (key !== "" && !firsts.has(key)) firsts.set(key, place);
  });
  return [...firsts.values()];
}

/** Empty for what no bender makes. */
function barOnMachine(facts: BarFacts, shop: Workshop): string {
  const ranking = machinesFor(facts, shop);
  const made = ranking?.made ?? null;
  if (ranking === null || made === null) return "";
  const { diameter, steel } = ranking.bar;
  return `${diameter}|${steel.yield}|${made.machine.name}`;
}

function estimateOn(machine: Machine, bar: { diameter: number; yield: number }): BarsAtOnce | null {
  const plate = barsAtOnce(machine, bar, "bend");
  return isRefusal(plate) || plate.basis === "plate" || plate.bars === 0 ? null : plate;
}

function noteOf(facts: BarFacts, machine: Machine, { bars, row }: BarsAtOnce) {
  return {
    messageId: "estimate" as const,
    outcome: "unsure" as const,
    values: {
      size: facts.sizeName,
      machine: machine.name,
      bars,
      ratedBars: row.bars,
      rated: { mm: row.diameter },
    },
    cite: OF_SHOP_SHEET,
  };
}
