import type { BarFacts } from "../../bar/bar-facts";
import { steelOf } from "../../bar/bar-on-machines";
import { type BarsAtOnce, barsAtOnce } from "../../bending/bars-at-once";
import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import type { Steel } from "../../shop/bar-to-bend";
import type { Cutter } from "../../shop/shop";
import { isRefusal } from "../../units/refusal";
import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { OF_SHOP_SHEET } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE102",
  name: "beyond-plate",
  severity: "unsafe",
  needs: "shop",
  docs: {
    summary: "No bender's or cutter's plate allows even one bar of this size and grade.",
    why: "Beyond its plate a machine may break, and the bar or a tool flies. The plate and the manual govern; what is scaled from another row of the plate is only an estimate: ask the maker.",
    failing: [
      {
        rows: [{ size: "H25", shape: "11", A: 900, B: 900, length: 1750 }],
        shop: exampleShop({
          bender: { formers: "64, 140, 175", orbitRadius: 200 },
          plates: [["Bench 2", "bend", "H25", 500, 0]],
        }),
      },
      {
        rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }],
        shop: exampleShop({ plates: [["Shear 1", "cut", "H32", 500, 0]] }),
      },
    ],
    passing: [{ rows: [{ size: "H20", shape: "11", A: 900, B: 900, length: 1750 }], shop: exampleShop() }],
  },
  messages: {
    bend: "on {machine}: the plate allows no {size} bar of {yield} MPa; it is rated for {bars} of {rated} at {ratedYield} MPa: use another machine",
    bendEstimate:
      "on {machine}: by an estimate from the plate's {bars} of {rated} at {ratedYield} MPa not one {size} bar of {yield} MPa is to be bent: ask the maker",
    cut: "on {machine}: the plate allows no {size} bar of {yield} MPa to be cut; it is rated for {bars} of {rated} at {ratedYield} MPa: use another machine",
    cutEstimate:
      "on {machine}: by an estimate from the plate's {bars} of {rated} at {ratedYield} MPa not one {size} bar of {yield} MPa is to be cut: ask the maker",
  },
  checkRow(facts, context, report) {
    const { shop } = context;
    if (shop === null || facts.diameter === null) return;
    // what a size that is rolled nowhere would ask of a machine is no question: which size is meant comes first
    if (isNoSize(facts)) return;
    const steel = steelOf(facts, shop);
    for (const { fault, machine, outcome } of faultsOfKind("plate", facts, context)) {
      report({
        messageId: fault.plate.basis === "plate" ? "bend" : "bendEstimate",
        outcome,
        at: "size",
        values: valuesOf(facts, steel, machine, fault.plate),
        cite: OF_SHOP_SHEET,
      });
    }
    const cutter = beyondCutters(shop.shop.cutters, facts.diameter, steel);
    if (cutter === null) return;
    const { name, plate, isSure } = cutter;
    report({
      messageId: plate.basis === "plate" ? "cut" : "cutEstimate",
      outcome: isSure && plate.basis === "plate" && steel.isYieldSure ? "broken" : "unsure",
      at: "size",
      values: valuesOf(facts, steel, name, plate),
      cite: OF_SHOP_SHEET,
    });
  },
});

/** No bar of the standard, nor of round steel as it is rolled. */
function isNoSize({ bar, row }: BarFacts): boolean {
  return bar === null && massPerMetreOf(row.size) === null;
}

/** The first cutter that is rated below the bar, where none is known to cut it. */
function beyondCutters(cutters: readonly Cutter[], diameter: number, steel: Steel) {
  let first: { readonly name: string; readonly plate: BarsAtOnce } | null = null;
  let isSure = true;
  for (const cutter of cutters) {
    const plate = barsAtOnce(cutter, { diameter, yield: steel.yield }, "cut");
    if (isRefusal(plate)) isSure = false;
    else if (plate.bars > 0) return null;
    else first ??= { name: cutter.name, plate };
  }
  return first === null ? null : { ...first, isSure };
}

function valuesOf(facts: BarFacts, steel: Steel, machine: string, { row }: BarsAtOnce) {
  return {
    machine,
    size: facts.sizeName,
    yield: steel.yield,
    bars: row.bars,
    rated: { mm: row.diameter },
    ratedYield: row.yield ?? 0,
  };
}
