import type { BarFacts } from "../../bar/bar-facts";
import { machinesFor } from "../../bar/bar-on-machines";
import type { Machine } from "../../bending/machine";
import type { BarToBend } from "../../shop/bar-to-bend";
import type { Workshop } from "../../shop/workshop";
import { isRefusal, refusalText } from "../../units/refusal";
import { exampleShop } from "../example-shop";
import { TRIALS_FIRST } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE110",
  name: "angle-without-trials",
  severity: "note",
  docs: {
    summary:
      "The trial log does not bear a compensated angle that the bars of a size, former and grade need.",
    why: "The angle would be a guess, and a whole batch bent by it may have to be bent again. One note for each size, former and grade.",
    failing: [
      {
        rows: [{ size: "H20", shape: "11", A: 900, B: 900, length: 1750 }],
        shop: exampleShop({ trials: [["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85]] }),
      },
    ],
    passing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({
          trials: [
            ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85],
            ["2031-03-03", "Bench 2", "H12", 48, "H", "bar", "K4", 95, 90],
            ["2031-03-04", "Bench 2", "H12", 48, "H", "bar", "K5", 90, 85.5],
          ],
        }),
      },
    ],
  },
  messages: {
    unborne: "{size} on former {former}, bends of {angles} degrees (rows: {rows}): {reason}",
  },
  checkSheet(sheet, { shop }, report) {
    if (shop === null || !shop.hasTrials) return;
    for (const group of groupsOf(sheet.bars, shop)) {
      const unborne = unborneAngles(group, shop);
      if (unborne === null) continue;
      const { first, former, rows } = group;
      const values = { rows, size: first.sizeName, former: { mm: former }, ...unborne };
      report({
        messageId: "unborne",
        outcome: "unsure",
        row: first,
        at: "shape",
        values,
        cite: TRIALS_FIRST,
      });
    }
  },
});

interface BentGroup {
  readonly first: BarFacts;
  readonly bar: BarToBend;
  readonly madeOn: Machine | null;
  readonly former: number;
  rows: number;
  /** whole degrees */
  readonly angles: Set<number>;
}

/** Bars that one row of the log would speak for: bender, size, former and grade. */
function groupsOf(bars: readonly BarFacts[], shop: Workshop): Iterable<BentGroup> {
  const groups = new Map<string, BentGroup>();
  for (const facts of bars) {
    const ranking = machinesFor(facts, shop);
    const best = ranking?.verdicts[0];
    if (ranking === null || best === undefined || ranking.notSearched === "rolled") continue;
    // without a former no trial can be made either, and the rack's own rule says so
    if (best.faults.some(({ kind }) => kind === "former")) continue;
    const { bar, made } = ranking;
    const madeOn = made?.machine ?? null;
    for (const former of new Set(best.formers)) {
      const key = `${madeOn?.name}|${bar.diameter}|${former}|${bar.steel.grade}|${bar.steel.letter}`;
      let group = groups.get(key);
      if (group === undefined) {
        group = { first: facts, bar, madeOn, former, rows: 0, angles: new Set() };
        groups.set(key, group);
      }
      group.rows += 1;
      bar.path.turns.forEach(({ angle }, turn) => {
        if (best.formers[turn] === former) group.angles.add(Math.max(1, Math.round(Math.abs(angle))));
      });
    }
  }
  return groups.values();
}

/** The angles that the log bears on no bender asked, with the first one's reason; null where it bears all. */
function unborneAngles({ bar, madeOn, former, angles }: BentGroup, shop: Workshop) {
  const machines = madeOn === null ? shop.shop.benders : [madeOn];
  let reason: string | null = null;
  const unborne = [...angles]
    .sort((a, b) => a - b)
    .filter((degrees) => {
      for (const machine of machines) {
        const found = shop.compensation({ diameter: bar.diameter, former }, bar.steel, machine, degrees);
        const refusal = isRefusal(found) ? found : found.refusal;
        if (refusal === null) return false;
        reason ??= refusalText(refusal);
      }
      return true;
    });
  return unborne.length === 0 ? null : { angles: unborne.join(", "), reason: reason ?? "" };
}
