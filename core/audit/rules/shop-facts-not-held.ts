import type { Machine } from "../../bending/machine";
import type { Shop } from "../../shop/shop";
import { exampleShop } from "../example-shop";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHOP102",
  name: "shop-facts-not-held",
  severity: "note",
  docs: {
    summary: "The Shop sheet does not hold facts that the checks on machines need; one note names them all.",
    why: "A blank is not known, never a pass: copy it from the plate and the manual, or measure it.",
    failing: [{ rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }], shop: exampleShop() }],
    passing: [
      {
        rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({
          limits: { hoist: 500, temperature: 15 },
          trials: [["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85]],
        }),
      },
    ],
  },
  messages: { missing: "the Shop sheet does not hold {facts}, so what needs them was not checked" },
  checkShop({ shop, hasTrials }, _context, report) {
    const facts = [
      ...(shop.benders.length === 0 ? ["any bender"] : shop.benders.flatMap(missingOf)),
      ...shop.cutters.filter(({ rated }) => rated.length === 0).map(({ name }) => `the plate of ${name}`),
      ...missingLimits(shop),
      ...(hasTrials ? [] : ["trial bends"]),
    ];
    if (facts.length > 0)
      report({ messageId: "missing", outcome: "unsure", values: { facts: facts.join("; ") } });
  },
});

/** What a bender's row may leave blank, as it is named in the note. */
const OF_BENDER: readonly (readonly [keyof Machine, string])[] = [
  ["largestAngle", "largest angle"],
  ["guardRadius", "guard radius"],
  ["orbitRadius", "orbit radius"],
  ["backRestDistance", "back-rest distance"],
  ["pins", "pins"],
  ["formers", "formers in the rack"],
];

function missingOf(machine: Machine): string[] {
  const plate = machine.rated.some((row) => row.yield !== null);
  const blank = OF_BENDER.filter(([fact]) => machine[fact] === null).map(([, words]) => words);
  const missing = [...(plate ? [] : [machine.rated.length === 0 ? "plate" : "grade on the plate"]), ...blank];
  return missing.length === 0 ? [] : [`of ${machine.name} the ${missing.join(", ")}`];
}

function missingLimits({ limits }: Shop): string[] {
  const missing: string[] = [];
  if (limits.hoist === null) missing.push("what hoist or crane may lift");
  if (limits.temperature === null) missing.push("the temperature");
  return missing;
}
