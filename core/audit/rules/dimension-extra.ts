import type { BarFacts } from "../../bar/bar-facts";
import { isSure } from "../../standards/citation";
import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE104",
  name: "dimension-extra",
  severity: "doubtful",
  docs: {
    summary: "A dimension is given that the shape code does not take.",
    why: "Either the figure or the code is wrong, and the bender cannot know which.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, D: 300, length: 875 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: { extra: "shape {code} takes no {letter}, but {value} is given" },
  fixes: { clear: { label: "clear {letter}, if the code is right", safety: "needs-review" } },
  ofKind: ({ definition }) => definition !== null,
  checkRow(facts, { standard }, report) {
    const { definition, row } = facts;
    if (definition === null || definition.dims.length === 0) return;
    const { dims, optionalDims, path, formula } = definition;
    // a sketch takes what it needs
    if (path === null && formula === null) return;
    const isSureOfLetters = !standard.shapesInPart || (formula !== null && isSure(definition.cite));
    for (let column = 0; column < row.dims.length; column += 1) {
      const value = row.dims[column];
      const letter = DIMENSION_LETTERS[column];
      if (value === null || value === undefined || value === 0 || letter === undefined) continue;
      if (dims.includes(letter) || optionalDims?.includes(letter)) continue;
      // the radius may stand in the fifth column
      if (letter === "E" && value === row.radius && dims.includes("R")) continue;
      report({
        messageId: "extra",
        at: letter,
        ...(isSureOfLetters ? {} : asRecalled(facts, definition.code, letter)),
        values: { code: definition.code, letter, value: { mm: value } },
        cite: definition.cite,
        // only a length that follows without the figure tells that the code is right
        ...(facts.lengthJudgement.kind === "fits"
          ? { fix: { id: "clear" as const, edits: [{ at: letter, to: null }] } }
          : {}),
      });
    }
  },
});

/** A list that is recalled and not whole may give the code other letters, unless the bars beside it say that it does not. */
function asRecalled({ sheet }: BarFacts, code: string, letter: string) {
  return sheet.habits.strayLetters.includes(`|${code}:${letter}|`)
    ? { outcome: "unsure" as const }
    : { severity: "note" as const };
}
