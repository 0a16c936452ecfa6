import { LEAST_ELONGATION } from "../../bending/capacity.data";
import { type FibreCircumstance, type OuterFibre, outerFibre } from "../../bending/outer-fibre";
import { exampleShop } from "../example-shop";
import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";
import type { RuleContext } from "../rule-context";

export default defineRule({
  code: "STEEL102",
  name: "outer-fibre-strained",
  severity: "note",
  docs: {
    summary: "The outer fibre of a bend is stretched far beyond what the steel's ductility class promises.",
    why: "The index only ranks bends: no neck can form in one, so it does not break where the index passes 1. Look at the outside of the first bend with a lens. Cold, bending back, a coat, a weld near by or corrosion raise it by a step. One finding for each size, former, class and circumstance.",
    failing: [
      { rows: [{ size: "A12", shape: "11", A: 900, B: 900, length: 1775 }] },
      {
        rows: [{ size: "A12", shape: "11", A: 900, B: 900, length: 1775 }],
        shop: exampleShop({ limits: { temperature: -8 } }),
      },
    ],
    passing: [
      { rows: [{ size: "C12", shape: "11", A: 900, B: 900, length: 1775 }] },
      { rows: [{ size: "A12", shape: "11", A: 900, B: 900, length: 1775, former: 100 }] },
    ],
  },
  messages: {
    watch:
      "{size} on former {former} (rows: {rows}): outer fibre strained to {strain} %, {index} times what class {ductility} promises{raised}: look at the outside of the first bend",
    stop: "{size} on former {former} (rows: {rows}): outer fibre strained to {strain} %, {index} times what class {ductility} promises{raised}: do not bend, ask the designer",
  },
  checkSheet(sheet, context, report) {
    const isCold = coldIn(context);
    const groups = new Map<string, { readonly first: RowFacts; readonly bend: StrainedBend; rows: number }>();
    for (const facts of sheet.bars) {
      const bend = bendOf(facts, isCold);
      if (bend === null) continue;
      const key = `${facts.sizeName}|${bend.former}|${bend.ductility}|${bend.circumstances.join()}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, { first: facts, bend, rows: 1 });
      else group.rows += 1;
    }
    for (const { first, bend, rows } of groups.values()) {
      const { judgement, strain, index } = bend.fibre;
      if (judgement === "normal") continue;
      const raised = bend.circumstances.map((circumstance) => `, ${circumstance}`).join("");
      report({
        messageId: judgement === "watch" ? "watch" : "stop",
        ...(judgement === "watch" ? {} : { severity: "unsafe" as const }),
        row: first,
        at: first.row.former === null ? "shape" : "former",
        values: {
          rows,
          size: first.sizeName,
          former: { mm: bend.former },
          strain: Math.round(1000 * strain) / 10,
          index: Math.round(10 * index) / 10,
          ductility: bend.ductility,
          raised,
        },
        cite: LEAST_ELONGATION.cite,
      });
    }
  },
});

interface StrainedBend {
  readonly former: number;
  readonly ductility: "A" | "B" | "C";
  readonly circumstances: readonly FibreCircumstance[];
  readonly fibre: OuterFibre;
}

/** Null where nothing is bent, no class is said, or the former is one that another rule stops. */
function bendOf(facts: RowFacts, isCold: boolean): StrainedBend | null {
  const { row, diameter, leastFormer } = facts;
  if (diameter === null || row.shape === null || facts.isStraight) return null;
  const kind = facts.definition?.kind ?? "planar";
  if (kind !== "planar" && kind !== "isometric") return null;
  const ductility = classOf(facts);
  if (ductility === null) return null;
  const former = row.radius === null ? facts.former : 2 * row.radius;
  if (former === null || former < (leastFormer?.value ?? 0)) return null;
  const circumstances: FibreCircumstance[] = isCold ? ["cold"] : [];
  if (/\bre-?ben[dt]|straighten/.test(facts.words)) circumstances.push("bent back");
  if (facts.coating !== null) circumstances.push("coated");
  if (/\bweld/.test(facts.words)) circumstances.push("near a weld");
  if (/corro|rust|nick/.test(facts.words)) circumstances.push("corroded or nicked");
  const fibre = outerFibre({ diameter, former, ductility, circumstances });
  return { former, ductility, circumstances, fibre };
}

/** The lowest class that the grade's name allows; null where it names none, or all. */
function classOf({ gradeName, grade }: RowFacts): "A" | "B" | "C" | null {
  if (gradeName === null) return null;
  const named =
    /\d{3}\s*([ABC])(?![A-Z,])/i.exec(gradeName) ?? /\d{3}([ABC])(?![A-Z,])/.exec(grade?.name ?? "");
  return (named?.[1]?.toUpperCase() as "A" | "B" | "C" | undefined) ?? null;
}

function coldIn({ standard, shop }: RuleContext): boolean {
  const temperature = shop?.shop.limits.temperature ?? null;
  return temperature !== null && standard.coldBending !== null && temperature < standard.coldBending.value;
}
