import type { BarFacts } from "../../bar/bar-facts";
import { isMost } from "../../bar/sheet-habits";
import { standardsWithShape } from "../../shapes/standards-with-shape";
import { holdsShapeCodes } from "../holds-shape-codes";
import { defineRule } from "../rule";
import { isFabricName } from "../size-slips";

export default defineRule({
  code: "SHAPE101",
  name: "unknown-shape",
  severity: "off-standard",
  ofConvention: true,
  asksOnce: true,
  docs: {
    summary: "The shape code is not in the standard in force.",
    why: "The same number means another shape elsewhere; the bender must not have to guess which is meant.",
    failing: [{ rows: [{ size: "H16", shape: "38", A: 500, B: 400, C: 500, length: 1350 }] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] }],
  },
  messages: {
    unknown:
      "shape {code} is no code of {standard}: write the bar as a path, or enter the code on the sheet Standard",
    elsewhere: "shape {code} is no code of {standard}, but is one of {others}",
    notHeld:
      "shape {code} is none of the codes that are held of {standard}, so it was not checked: write the bar as a path, or enter the code on the sheet Standard",
    missing: "no shape code is given",
    straight: "no shape is given, and no dimension: taken as straight",
  },
  ofKind: ({ definition, isPath }) => definition === null && !isPath,
  checkRow(facts, context, report) {
    // a standard without a list of shapes cannot say that one is not in it: the sheet's note does
    if (!holdsShapeCodes(context.standard) || facts.sheet.habits.standardMeant !== null) return;
    // one note says so where most shapes are written in another way
    if (facts.sheet.habits.shapesOwnWay || facts.isCodeOfAnother) return;
    const { shape, problems, sizeTyped } = facts.row;
    if (sizeTyped !== null && isFabricName(sizeTyped)) return;
    if (shape === null) {
      if (!facts.has("shape") || !isMost(facts.sheet.habits.shapeShare)) return;
      if (problems?.some(({ field }) => field === "shape")) return;
      // a list in part is no rule that a straight bar has a code: many lists leave it blank
      const isStraightSaid = context.standard.shapesInPart && isLengthAlone(facts);
      report({
        messageId: isStraightSaid ? "straight" : "missing",
        at: "shape",
        outcome: "unsure",
        ...(isStraightSaid ? { severity: "note" as const } : {}),
      });
      return;
    }
    if (facts.definition !== null || facts.isPath) return;
    const { id, shapesInPart } = context.standard;
    if (shapesInPart) {
      const values = { code: shape, standard: id };
      report({ messageId: "notHeld", outcome: "unsure", severity: "note", at: "shape", values });
      return;
    }
    const others = standardsWithShape(shape, context.standard).join(", ");
    report({
      messageId: others === "" ? "unknown" : "elsewhere",
      at: "shape",
      values: { code: shape, standard: context.standard.id, others },
    });
  },
});

function isLengthAlone({ row }: BarFacts): boolean {
  return row.length !== null && row.dims.every((dim) => dim === null);
}
