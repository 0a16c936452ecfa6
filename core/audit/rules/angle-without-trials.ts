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
    for (const group of sheet.answers.whole(groupsOf, bendsOfBar, shop)) {
      const unborne = unborneAngles(group, shop);
      if (unborne === null) continue;
      const { former, rows } = group;
      const first = sheet.answers.bar(group.first);
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
  /** place of the first of them */
  readonly first: number;
  readonly bar: BarToBend;
  readonly madeOn: Machine | null;
  readonly former: number;
  rows: number;
  /** whole degrees */
  readonly angles: Set<number>;
}

/** Bars that one row of the log would speak for: bender, size, former and grade. */
function groupsOf(bars: readonly BarFacts[], shop: Workshop): readonly BentGroup[] {
  const groups = new Map<string, BentGroup>();
  bars.forEach((facts, place) => {
    for (const { key, angles, ...bends } of bendsOf(facts, shop)) {
      let group = groups.get(key);
      if (group === undefined) {
        group = { ...bends, first: place, rows: 0, angles: new Set() };
        groups.set(key, group);
      }
      group.rows += 1;
      for (const angle of angles) group.angles.add(angle);
    }
  });
  return [...groups.values()];
}

/** What the groups go by. */
function bendsOfBar(facts: BarFacts, shop: Workshop): string {
  return JSON.stringify(bendsOf(facts, shop).map(({ key, angles }) => [key, angles]));
}

/** The bends of a bar by former, as the log would speak for them. */
function bendsOf(facts: BarFacts, shop: Workshop) {
  const ranking = machinesFor(facts, shop);
  const best = ranking?.verdicts[0];
  if (ranking === null || best === undefined || ranking.notSearched === "rolled") return [];
  // without a former no trial can be made either, and the rack's own rule says so
  if (best.faults.some(({ kind }) => kind === "former")) return [];
  const { bar, made } = ranking;
  const madeOn = made?.machine ?? null;
  return [...new Set(best.formers)].map((former) => {
    const key = `${madeOn?.name}|${bar.diameter}|${former}|${bar.steel.grade}|${bar.steel.letter}`;
    const turns = bar.path.turns.filter((_, turn) => best.formers[turn] === former);
    const angles = turns.map(({ angle }) => Math.max(1, Math.round(Math.abs(angle))));
    return { key, bar, madeOn, former, angles };
  });
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
