import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";
import { runsInWords } from "../runs-in-words";

export default defineRule({
  code: "SHAPE121",
  name: "made-by-sketch",
  severity: "note",
  docs: {
    summary:
      "Bars of a code that is drawn for each of them are made by their sketch; one note names their rows.",
    why: "No formula and no course belong to such a code: neither the bends, the legs and the formers nor whether the length is right could be checked. Silence must not be taken for a pass.",
    failing: [{ rows: [{ size: "H16", shape: "99", A: 500, B: 400, length: 1200 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    drawn:
      "shape {code} is made by sketch, so no bend, leg or former of it was checked, nor its length against them (rows {at}): see the drawing, or write the shape as a path",
  },
  checkSheet(sheet, _context, report) {
    const drawn = sheet.answers.those(codeOfSketch);
    const byCode = new Map<string, { readonly first: BarFacts; readonly rows: number[] }>();
    for (const { facts, answer: code } of drawn) {
      const row = sheet.sheet.top + facts.row.row + 1;
      const held = byCode.get(code);
      if (held === undefined) byCode.set(code, { first: facts, rows: [row] });
      else held.rows.push(row);
    }
    for (const [code, { first, rows }] of byCode) {
      const values = { code, at: runsInWords(rows) };
      const cite = first.definition?.cite ?? null;
      report({ messageId: "drawn", outcome: "unsure", row: first, at: "shape", values, cite });
    }
  },
});

/** The code of a bar that is to be made and has neither a course nor a formula. */
function codeOfSketch({ definition, row }: BarFacts): string | null {
  if (definition === null || definition.path !== null || definition.formula !== null) return null;
  return row.struckThrough || row.superseded === true ? null : definition.code;
}
