import type { BarFacts } from "../../bar/bar-facts";
import { MarkIndex } from "../../bar/mark-index";
import { markAndMember } from "../../bar/sheet-facts";
import { defineRule } from "../rule";

const FEWEST_MARKS = 5;
/** Share of steps of one that makes a sequence of it. */
const MOSTLY_BY_ONE = 0.8;
const LONGEST_GAP_NAMED = 5;
const MOST_DIGITS = 6;

export default defineRule({
  code: "MARK103",
  name: "mark-gap",
  severity: "note",
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
  checkSheet({ answers, marksRestart }, _context, report) {
    for (const { place, from, to } of answers.whole(markGaps, markAndMember, marksRestart)) {
      const facts = answers.bar(place);
      const mark = facts.row.mark ?? "";
      const values = { missing: renumbered(mark, from), last: renumbered(mark, to), mark };
      report({ messageId: from === to ? "one" : "some", outcome: "unsure", row: facts, at: "mark", values });
    }
  },
});

/** Numbers that are missing before the mark of the bar in `place`. */
interface Gap {
  readonly place: number;
  readonly from: number;
  readonly to: number;
}

function markGaps(bars: readonly BarFacts[], restart: boolean): readonly Gap[] {
  const gaps: Gap[] = [];
  for (const { places, numbers, steps, byOne } of markRuns(bars, restart)) {
    if (places.length < FEWEST_MARKS || byOne < steps * MOSTLY_BY_ONE) continue;
    let used: Set<number> | undefined;
    for (let at = 1; at < places.length; at += 1) {
      const from = (numbers[at - 1] as number) + 1;
      const to = (numbers[at] as number) - 1;
      if (to < from || to - from >= LONGEST_GAP_NAMED) continue;
      used ??= new Set(numbers);
      if (!used.has(from) && !used.has(to)) gaps.push({ place: places[at] as number, from, to });
    }
  }
  return gaps;
}

/** Bars whose marks share what stands before their numbers. */
interface Run {
  readonly places: number[];
  /** of the marks, in the same order */
  readonly numbers: number[];
  /** places where the number changes */
  steps: number;
  /** those where it grows by one */
  byOne: number;
}

/** Bars in order, by what stands before the number of their mark, and by member where marks start again. */
function markRuns(bars: readonly BarFacts[], restart: boolean): readonly Run[] {
  const runs = new MarkIndex<Run>();
  const all: Run[] = [];
  for (let place = 0; place < bars.length; place += 1) {
    const { mark, member } = (bars[place] as BarFacts).row;
    const start = mark === null ? 0 : numberStart(mark);
    if (mark === null || start === mark.length || mark.length - start > MOST_DIGITS) continue;
    const inMember = restart ? member : null;
    const before = mark.slice(0, start);
    let run = runs.get(inMember, before);
    if (run === undefined) {
      run = { places: [], numbers: [], steps: 0, byOne: 0 };
      runs.keep(inMember, before, run);
      all.push(run);
    }
    const number = Number(mark.slice(start));
    const last = run.numbers[run.numbers.length - 1];
    if (last !== undefined && number !== last) run.steps += 1;
    if (last !== undefined && number === last + 1) run.byOne += 1;
    run.places.push(place);
    run.numbers.push(number);
  }
  return all;
}

/** Where the digits at the end of a mark begin. */
function numberStart(mark: string): number {
  let start = mark.length;
  while (start > 0 && mark.charCodeAt(start - 1) >= 48 && mark.charCodeAt(start - 1) <= 57) start -= 1;
  return start;
}

/** The mark that would bear another number, with as many digits. */
function renumbered(mark: string, number: number): string {
  const start = numberStart(mark);
  return mark.slice(0, start) + String(number).padStart(mark.length - start, "0");
}

function rowsMarked(marks: readonly string[]) {
  return marks.map((mark) => ({ mark, size: "H16", shape: "00", A: 1000, length: 1000 }));
}
