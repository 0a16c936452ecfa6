import type { BarFacts } from "../../bar/bar-facts";
import type { SheetFacts } from "../../bar/sheet-facts";
import type { CellProblem } from "../../schedule/bar-row";
import { columnWords } from "../../schedule/columns/column-words";
import { defineRule } from "../rule";
import { typedText } from "../typed-text";

/** A guess made in more rows than this is one finding for the sheet. */
const MOST_ROWS_NAMED = 3;

export default defineRule({
  code: "READ102",
  name: "guessed-cell",
  severity: "note",
  docs: {
    summary: "A cell was read by a guess, which is shown so that it can be corrected.",
    why: "A guess is never silent. One that moves steel or changes a shape is asked before it is used.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: "5OO", B: 400, length: 875 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    guessed: '{field} "{typed}" was read by a guess: {reason}',
    asks: '{field} "{typed}" is open, and was not used: {reason}',
    many: '{field} was read by the same guess in {rows} rows, first "{typed}" in row {first}: {reason}',
    sheet: "{reason}",
  },
  checkSheet(sheet, _context, report) {
    for (const guess of sheet.reading.guesses ?? []) {
      report({
        messageId: "sheet",
        outcome: "unsure",
        ...(guess.asks ? { severity: "doubtful" as const } : {}),
        ...(guess.row === null || guess.column === null
          ? {}
          : { place: { row: guess.row, column: guess.column } }),
        values: { reason: guess.reason },
      });
    }
    for (const group of guessGroups(sheet).values()) {
      const first = group[0];
      if (first === undefined) continue;
      const open = isOpen(first.problem);
      if (group.length > MOST_ROWS_NAMED && !open) {
        report({
          messageId: "many",
          outcome: "unsure",
          values: {
            ...valuesOf(first.problem),
            rows: group.length,
            first: String(sheet.sheet.top + first.facts.row.row + 1),
          },
        });
        continue;
      }
      for (const { facts, problem } of group) {
        report({
          messageId: open ? "asks" : "guessed",
          outcome: "unsure",
          ...(open ? { severity: "doubtful" as const } : {}),
          row: facts,
          at: problem.field,
          values: valuesOf(problem),
        });
      }
    }
  },
});

interface Guess {
  readonly facts: BarFacts;
  readonly problem: CellProblem;
}

function guessGroups({ answers }: SheetFacts): ReadonlyMap<string, readonly Guess[]> {
  const groups = new Map<string, Guess[]>();
  for (const { facts } of answers.those(hasProblems)) {
    for (const problem of facts.row.problems ?? []) {
      // one note of the sheet tells of shapes that it writes in its own way
      if (problem.field === "shape" && facts.sheet.habits.shapesOwnWay) continue;
      // a unit that only fits this one cell is a slip, and its rule says so
      if (problem.outcome !== "guessed" || problem.guess === "unit-of-cell") continue;
      const key = `${problem.field} ${problem.guess ?? problem.reason} ${isOpen(problem)}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [{ facts, problem }]);
      else group.push({ facts, problem });
    }
  }
  return groups;
}

function hasProblems({ row }: BarFacts): true | null {
  return row.problems === null ? null : true;
}

/** A guess that was not used: it waits for the user. */
function isOpen({ asks, proposal }: CellProblem): boolean {
  return asks === true && proposal !== undefined;
}

function valuesOf({ field, typed, reason }: CellProblem) {
  return { field: columnWords(field), typed: typedText(typed), reason };
}
