import type { BarFacts } from "../../bar/bar-facts";
import type { OfKind } from "../../bar/bar-kind";
import { saying } from "../../bar/said-words";
import { LEAST_ELONGATION } from "../../bending/capacity.data";
import { type FibreCircumstance, type OuterFibre, outerFibre } from "../../bending/outer-fibre";
import { Memo } from "../../units/memo";
import { exampleShop } from "../example-shop";
import { defineRule } from "../rule";
import type { RuleContext } from "../rule-context";

export default defineRule({
  code: "STEEL102",
  name: "outer-fibre-strained",
  severity: "note",
  docs: {
    summary: "The outer fibre of a bend is stretched far beyond what the steel's ductility class promises.",
    why: "The index only ranks bends: no neck can form in one, so it does not break where the index passes 1. Look at the outside of the first bend with a lens, with the machine stopped. Cold, bending back, a coat, a weld near by or corrosion raise it by a step. One finding for each size, former, class and circumstance.",
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
    stop: "{size} on former {former} (rows: {rows}): outer fibre strained to {strain} %, {index} times what class {ductility} promises{raised}: stop, and ask the designer; the index is a measure of our own",
  },
  checkSheet(sheet, context, report) {
    const groups = new Map<string, { readonly first: BarFacts; readonly bend: StrainedBend; rows: number }>();
    for (const { facts, answer: bend } of sheet.answers.those(strainedBend, coldIn(context))) {
      const key = `${facts.sizeName}|${bend.former}|${bend.ductility}|${bend.circumstances.join()}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, { first: facts, bend, rows: 1 });
      else group.rows += 1;
    }
    for (const { first, bend, rows } of groups.values()) {
      const { judgement, strain, index } = bend.fibre;
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

type Ductility = "A" | "B" | "C";

/** Classes found so far, by the names of the grade. */
const classes = new Memo<string, { readonly ductility: Ductility | null }>(1000);

interface StrainedBend {
  readonly former: number;
  readonly ductility: Ductility;
  readonly circumstances: readonly FibreCircumstance[];
  readonly fibre: OuterFibre;
}

/** Null where nothing is bent, no class is said, the former is one that another rule stops, or the strain is usual. */
function strainedBend(facts: BarFacts, isCold: boolean): StrainedBend | null {
  const { row, diameter, leastFormer } = facts;
  const ductility = facts.kind.ask(classOfBent, facts);
  if (diameter === null || ductility === null) return null;
  const former = row.radius === null ? facts.former : 2 * row.radius;
  if (former === null || former < (leastFormer?.value ?? 0)) return null;
  const said = facts.inWords(circumstancesSaid);
  const coated: readonly FibreCircumstance[] = facts.coating === null ? said : ["coated", ...said];
  const circumstances: readonly FibreCircumstance[] = isCold ? ["cold", ...coated] : coated;
  const fibre = outerFibre({ diameter, former, ductility, circumstances });
  if (fibre.judgement === "normal") return null;
  return { former, ductility, circumstances, fibre };
}

/** The class of a bar that is bent round a former; null of any other. */
function classOfBent(bar: OfKind): Ductility | null {
  if (bar.kind.shape === null || bar.isStraight) return null;
  const form = bar.definition?.kind ?? "planar";
  return form === "planar" || form === "isometric" ? classOf(bar) : null;
}

/** The lowest class that the grade's name allows; null where it names none, or all. */
function classOf({ gradeName, grade }: OfKind): Ductility | null {
  // the letter behind SD295 names a kind of steel
  if (gradeName === null || /^\s*S[DR]\s*\d/i.test(gradeName)) return null;
  const names = `${gradeName}\n${grade?.name ?? ""}`;
  return classes.of(names, () => {
    const named =
      /\d{3}\s*([ABC])(?![A-Z,])/i.exec(gradeName) ?? /\d{3}([ABC])(?![A-Z,])/.exec(grade?.name ?? "");
    return { ductility: (named?.[1]?.toUpperCase() as Ductility | undefined) ?? null };
  }).ductility;
}

function coldIn({ standard, shop }: RuleContext): boolean {
  const temperature = shop?.shop.limits.temperature ?? null;
  return temperature !== null && standard.coldBending !== null && temperature < standard.coldBending.value;
}

const NOTHING: readonly FibreCircumstance[] = [];
const saysBentBack = saying(/\bre-?ben[dt]|straighten/);
const saysWeld = saying(/\bweld/);
const saysCorroded = saying(/corro|rust|nick/);

function circumstancesSaid(words: string): readonly FibreCircumstance[] {
  const said: FibreCircumstance[] = [];
  if (saysBentBack(words)) said.push("bent back");
  if (saysWeld(words)) said.push("near a weld");
  if (saysCorroded(words)) said.push("corroded or nicked");
  return said.length === 0 ? NOTHING : said;
}
