import { MarkIndex } from "../mark-index";
import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";

const FEWEST_MARKS = 5;
/** Share of steps of one that makes a sequence of it. */
const MOSTLY_BY_ONE = 0.8;
const LONGEST_GAP_NAMED = 5;
const MOST_DIGITS = 6;

export default defineRule({
  code: "MARK103",
  name: "mark-gap",
  severity: "doubtful",
  docs: {
    summary: "A number is missing in an otherwise unbroken sequence of marks.",
    why: "A deleted bar leaves a gap on purpose; a forgotten one leaves the same gap.",
    failing: [{ rows: rowsMarked(["01", "02", "03", "05", "06", "07", "08"]) }],
    passing: [{ rows: rowsMarked(["01", "02", "03", "04", "05", "06", "07"]) }],
  },
  messages: {
    one: "mark {missing} is missing before {mark}",
    some: "marks {missing} to {last} are missing before {mark}",
  },
  checkSheet(sheet, _context, report) {
    for (const run of markRuns(sheet.bars)) {
      let steps = 0;
      let byOne = 0;
      for (let at = 1; at < run.length; at += 1) {
        const step = numberOf(run[at]) - numberOf(run[at - 1]);
        if (step !== 0) steps += 1;
        if (step === 1) byOne += 1;
      }
      if (run.length < FEWEST_MARKS || byOne < steps * MOSTLY_BY_ONE) continue;
      const used = new Set(run.map(({ number }) => number));
      for (let at = 1; at < run.length; at += 1) {
        const here = run[at];
        if (here === undefined) continue;
        const from = numberOf(run[at - 1]) + 1;
        const to = here.number - 1;
        if (to < from || to - from >= LONGEST_GAP_NAMED || used.has(from) || used.has(to)) continue;
        const values = { missing: named(here, from), last: named(here, to), mark: here.facts.row.mark ?? "" };
        report({ messageId: from === to ? "one" : "some", row: here.facts, at: "mark", values });
      }
    }
  },
});

interface Marked {
  readonly facts: RowFacts;
  readonly number: number;
  /** digits that the number is written with */
  readonly digits: number;
}

/** Bars in order, by what stands before the number of their mark, and by member where marks start again. */
function markRuns(bars: readonly RowFacts[]): readonly (readonly Marked[])[] {
  const runs = new MarkIndex<Marked[]>();
  const all: Marked[][] = [];
  for (const facts of bars) {
    const { mark, member } = facts.row;
    const start = mark === null ? 0 : numberStart(mark);
    if (mark === null || start === mark.length || mark.length - start > MOST_DIGITS) continue;
    const fresh: Marked[] = [];
    const run = runs.keep(facts.sheet.habits.marksRestart ? member : null, mark.slice(0, start), fresh);
    if (run === fresh) all.push(run);
    run.push({ facts, number: Number(mark.slice(start)), digits: mark.length - start });
  }
  return all;
}

/** Where the digits at the end of a mark begin. */
function numberStart(mark: string): number {
  let start = mark.length;
  while (start > 0 && mark.charCodeAt(start - 1) >= 48 && mark.charCodeAt(start - 1) <= 57) start -= 1;
  return start;
}

/** The mark that would bear another number. */
function named({ facts, digits }: Marked, number: number): string {
  const mark = facts.row.mark ?? "";
  return `${mark.slice(0, mark.length - digits)}${String(number).padStart(digits, "0")}`;
}

function numberOf(marked: Marked | undefined): number {
  return marked?.number ?? 0;
}

function rowsMarked(marks: readonly string[]) {
  return marks.map((mark) => ({ mark, size: "H16", shape: "00", A: 1000, length: 1000 }));
}
