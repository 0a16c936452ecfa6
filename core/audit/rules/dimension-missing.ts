import type { BarFacts } from "../../bar/bar-facts";
import { dimMissing } from "../../shapes/resolve-shape";
import { isSure } from "../../standards/citation";
import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { ShapeDefinition } from "../../standards/port";
import { isRefusalOf } from "../../units/refusal";
import type { Severity } from "../finding";
import { defineRule } from "../rule";

/** What the formula does not speak of is asked for by the drawing alone. */
function isInFormula({ formula }: ShapeDefinition, letter: string): boolean {
  return formula?.includes(letter) === true;
}

export default defineRule({
  code: "SHAPE103",
  name: "dimension-missing",
  severity: "off-standard",
  docs: {
    summary: "A dimension that the shape code needs is blank.",
    why: "The bar cannot be made, nor its length checked, without it.",
    failing: [{ rows: [{ size: "H16", shape: "21", A: 500, C: 500, length: 1350 }] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] }],
  },
  messages: {
    missing: "shape {code} needs {letter}, which is blank",
    free: "{letter}, the free dimension of shape {code}, is blank, as in most rows of that code: it is what the length leaves",
  },
  ofKind: ({ definition }) => definition !== null,
  checkRow(facts, { standard }, report) {
    const { definition, row } = facts;
    if (definition === null) return;
    // a straight bar is often scheduled by its length alone
    if (facts.isStraight && (row.length !== null || row.problems?.some(({ field }) => field === "length")))
      return;
    // a table without columns for dimensions lacks them in every row: the sheet's note says so
    if (!DIMENSION_LETTERS.some((letter) => facts.has(letter))) return;
    // of two ends that may lack one has to be there
    const asked = isRefusalOf(facts.resolved, dimMissing) ? facts.resolved.values.letter : null;
    for (const letter of definition.dims) {
      if (facts.dim(letter) !== null) continue;
      if (definition.optionalDims?.includes(letter) && letter !== asked) continue;
      if (row.problems?.some(({ field }) => field === letter) || row.varying?.field === letter) continue;
      if (letter === definition.free && isLeftBlank(facts, definition)) {
        report({
          messageId: "free",
          severity: "note",
          outcome: "unsure",
          at: letter,
          values: { code: definition.code, letter },
          cite: definition.cite,
        });
        continue;
      }
      report({
        messageId: "missing",
        at: letter,
        ...severityOf(facts, standard.shapesInPart, definition, letter),
        values: { code: definition.code, letter },
        cite: isInFormula(definition, letter) ? definition.cite : (definition.course ?? definition.cite),
      });
    }
  },
});

/** The sheet gives the length in place of the free dimension, as its habit. */
function isLeftBlank({ row, sheet }: BarFacts, { code }: ShapeDefinition): boolean {
  return row.length !== null && sheet.habits.freeLeftBlank.includes(`|${code}|`);
}

/** A dimension is given that the drawing shows and the code does not ask for: it may stand for the one that is blank. */
function hasAnother(facts: BarFacts, { optionalDims = [] }: ShapeDefinition): boolean {
  return optionalDims.some((letter) => facts.dim(letter) !== null);
}

/**
 * A list that is recalled and not whole may give the code other letters, unless its formula was read; what the length
 * does without only the drawing asks for.
 */
function severityOf(
  facts: BarFacts,
  isInPart: boolean,
  definition: ShapeDefinition,
  letter: string,
): { readonly severity?: Severity } {
  if (isInFormula(definition, letter)) {
    if (!isInPart || isSure(definition.cite)) return {};
    return { severity: "doubtful" };
  }
  return { severity: isInPart || hasAnother(facts, definition) ? "note" : "doubtful" };
}
