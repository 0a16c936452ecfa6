import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";

const FEWEST_MARKS = 5;
/** Share of steps of one that makes a sequence of it. */
const MOSTLY_BY_ONE = 0.8;
const LONGEST_GAP_NAMED = 5;

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
        const values = { missing: here.named(from), last: here.named(to), mark: here.facts.row.mark ?? "" };
        report({ messageId: from === to ? "one" : "some", row: here.facts, at: "mark", values });
      }
    }
  },
});

interface Marked {
  readonly facts: RowFacts;
  readonly number: number;
  named(number: number): string;
}

/** Bars in order, by what stands before the number of their mark, and by member. */
function markRuns(bars: readonly RowFacts[]): Iterable<readonly Marked[]> {
  const runs = new Map<string, Marked[]>();
  for (const facts of bars) {
    const { mark, member } = facts.row;
    const parts = mark === null ? null : /^(.*?)(\d{1,6})$/.exec(mark.trim());
    const digits = parts?.[2];
    if (parts === null || digits === undefined) continue;
    const prefix = parts[1] ?? "";
    const key = `${facts.sheet.habits.marksRestart ? (member ?? "") : ""}\n${prefix}`;
    const marked: Marked = {
      facts,
      number: Number(digits),
      named: (number) => `${prefix}${String(number).padStart(digits.length, "0")}`,
    };
    const run = runs.get(key);
    if (run === undefined) runs.set(key, [marked]);
    else run.push(marked);
  }
  return runs.values();
}

function numberOf(marked: Marked | undefined): number {
  return marked?.number ?? 0;
}

function rowsMarked(marks: readonly string[]) {
  return marks.map((mark) => ({ mark, size: "H16", shape: "00", A: 1000, length: 1000 }));
}
