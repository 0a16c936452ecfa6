import { columnWords } from "../../schedule/columns/column-words";
import { isCellError } from "../../schedule/sheet";
import { holdsShapeCodes } from "../holds-shape-codes";
import { defineRule } from "../rule";
import { isFabricName } from "../size-slips";
import { typedText } from "../typed-text";

/** What another standard would read. */
const OF_STANDARD: ReadonlySet<string> = new Set(["size", "grade", "shape"]);

export default defineRule({
  code: "READ101",
  name: "unread-cell",
  severity: "doubtful",
  asksOnce: true,
  tellsEach: ["error"],
  needs: "problem",
  docs: {
    summary: "A cell of a bar row could not be read.",
    why: "What is not read is not checked: the rules that need this cell stay silent on the row.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: "see sketch", B: 400, length: 875 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    unread: '{field} "{typed}" could not be read: {reason}',
    error: '{field} "{typed}" could not be read: {reason}',
    varying: "{reason}",
    blank: "{reason}",
  },
  checkRow(facts, context, report) {
    const { problems, sizeTyped, size } = facts.row;
    if (problems === null) return;
    const isFabric = size === null && sizeTyped !== null && isFabricName(sizeTyped);
    const isOfAnother = facts.sheet.habits.standardMeant !== null;
    for (const { field, typed, outcome, reason } of problems) {
      if (outcome !== "unread") continue;
      // one finding says that the sheet is of another standard, one that a row is fabric
      if ((isOfAnother && OF_STANDARD.has(field)) || isFabric) continue;
      // one finding of the sheet tells of them all
      if (isCellError(typed) && typed.uncalculated === true) continue;
      // words for a shape are as good as any where no list of codes is held: the sheet's note says so
      if (field === "shape" && (!holdsShapeCodes(context.standard) || facts.sheet.habits.shapesOwnWay))
        continue;
      if (field === facts.row.varying?.field) {
        report({ messageId: "varying", severity: "note", at: field, values: { reason } });
        continue;
      }
      report({
        messageId: typed === null ? "blank" : isCellError(typed) ? "error" : "unread",
        outcome: "unsure",
        // beside a number of bars the spacing is context
        ...(field === "spacing" && facts.count !== null ? { severity: "note" as const } : {}),
        at: field,
        values: { field: columnWords(field), typed: typedText(typed), reason },
      });
    }
  },
});
