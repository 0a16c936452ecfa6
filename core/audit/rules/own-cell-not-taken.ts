import { isCellError } from "../../schedule/sheet";
import { defineRule } from "../rule";

const HEADS = ["standard", "figure", "your copy says", "who looked", "when"];

export default defineRule({
  code: "STANDARD102",
  name: "own-cell-not-taken",
  severity: "doubtful",
  docs: {
    summary: "A line of the sheet Standard could not be taken, so what is held stays in force.",
    why: "A figure is confirmed or replaced by somebody, on a day, in the unit of its line; a shape must be one that can be drawn.",
    failing: [
      {
        standard: "BS8666:2020",
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        own: [HEADS, ["BS8666:2020", "least former: d 16, diameter", 640, "R. Ashdown", "2026-11-02"]],
      },
    ],
    passing: [
      {
        standard: "BS8666:2020",
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        own: [HEADS, ["BS8666:2020", "least former: d 16, diameter", 64, "R. Ashdown", "2026-11-02"]],
      },
    ],
  },
  messages: {
    blank: "{reason}; the line is not in force",
    typed: `"{typed}": {reason}; the line is not in force`,
  },
  checkOwn({ problems }, report) {
    for (const { row, column, typed, reason } of problems) {
      const shown = isCellError(typed) ? typed.error : String(typed ?? "");
      report({
        messageId: shown === "" ? "blank" : "typed",
        place: { row, column },
        values: { typed: shown, reason },
      });
    }
  },
});
