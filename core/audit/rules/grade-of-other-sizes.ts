import { gradesOfOthers } from "../../bar/grade-of-sizes";
import { MADE_UP_TO } from "../../bar/grade-of-sizes.data";
import { defineRule } from "../rule";

/** The message for each thing that tells. */
const MESSAGE = {
  note: "note",
  all: "all",
  title: "title",
  letters: "letters",
  thickness: "thickness",
  made: "made",
  size: "size",
} as const;

const bar = (size: string, grade: string) => ({ size, shape: "00", A: 2000, length: 2000, grade });
const LIST = [
  ...["12", "12", "16", "16", "20", "20"].map((size) => bar(size, "B500B")),
  ...["6", "8", "8"].map((size) => bar(size, "S235")),
];

export default defineRule({
  code: "GRADE108",
  name: "grade-of-other-sizes",
  severity: "doubtful",
  docs: {
    summary: "One bar has a grade that notes, letters or all other bars give to other sizes.",
    why: "Plain, drawn and high-yield steel go by sizes: a grade in the wrong line orders a steel that is weaker than designed, or that no mill rolls so thick. Which steel is meant only the designer can say.",
    failing: [{ rows: [...LIST, bar("16", "S235")] }],
    passing: [{ rows: [...LIST, bar("16", "B500B")] }],
  },
  messages: {
    note: "{typed} is given to other sizes by a note of the list, which has {instead} for {size}: ask the designer",
    all: "a note of the list gives {instead} to all steel, and this bar has {typed}: ask the designer",
    title:
      "a note of the list names {instead} alone, as {others} other bars have it, and this bar has {typed}: ask the designer",
    letters:
      "{typed} stands with {others} bars in all other rows, and {instead} with the others such as {size}: ask the designer",
    thickness:
      "all other bars of {typed} are up to {others}, and the others of {size} are {instead}: ask the designer",
    size: "the {others} other bars of {size} are {instead}, and {typed} stands with other sizes alone: ask the designer",
    made: "{typed} is made up to {others}, and this bar is {size}: ask the designer which steel is meant",
  },
  checkSheet(sheet, _context, report) {
    for (const { facts, column, typed, by, instead, others } of gradesOfOthers(sheet)) {
      const place = { row: facts.row.row, column };
      const values = { typed, instead, others, size: facts.row.sizeTyped ?? "" };
      const cite = by === "made" ? MADE_UP_TO.cite : null;
      report({ messageId: MESSAGE[by], outcome: "unsure", place, values, cite });
    }
  },
});
