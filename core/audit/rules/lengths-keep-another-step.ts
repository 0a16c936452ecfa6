import type { BarFacts } from "../../bar/bar-facts";
import { isMost } from "../../bar/sheet-habits";
import { offStep } from "../../bar/step";
import { isOpen } from "../kept-elsewhere";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN107",
  name: "lengths-keep-another-step",
  severity: "off-standard",
  ofConvention: true,
  docs: {
    summary: "Lengths of the sheet keep another step than the one that the standard rounds lengths to.",
    why: "One length off the step is a slip; most of them, or several where all keep another step, are a habit, or the list was written to another standard.",
    failing: [
      { rows: [1020, 1530, 2010, 2540, 3080].map((length) => ({ size: "H16", shape: "00", length })) },
    ],
    passing: [
      { rows: [1025, 1525, 2000, 2550, 3075].map((length) => ({ size: "H16", shape: "00", length })) },
    ],
  },
  messages: {
    kept: "{off} of {lengths} lengths are no multiples of the {step} of {standard}; they keep {kept}: was the list written to another standard? Choose it and check again, or round the lengths",
    none: "{off} of {lengths} lengths are no multiples of the {step} of {standard}: was the list written to another standard? Choose it and check again, or round the lengths",
  },
  checkSheet(sheet, context, report) {
    const { standard } = context;
    const { offStepShare, standardMeant, keepsAnotherStep } = sheet.habits;
    if (!(isMost(offStepShare) || keepsAnotherStep) || standardMeant !== null) return;
    const { step, cite } = standard.lengthRounding;
    const off = sheet.answers.those(isOffStep);
    const first = off[0]?.facts;
    if (first === undefined) return;
    const kept = sheet.lengthStep;
    report({
      messageId: kept === null ? "none" : "kept",
      outcome: "unsure",
      // the list's own step, against a document that nobody chose
      ...(kept !== null && isOpen(context) ? { severity: "note" as const } : {}),
      row: first,
      at: "length",
      values: {
        off: off.length,
        lengths: sheet.answers.count(hasLength),
        step: { mm: step },
        standard: standard.id,
        kept: { mm: kept ?? 0 },
      },
      cite,
    });
  },
});

function hasLength({ row }: BarFacts): boolean {
  return row.length !== null;
}

function isOffStep({ row, standard }: BarFacts): true | null {
  return row.length !== null && offStep(row.length, standard.lengthRounding.step) ? true : null;
}
