import type { BarFacts } from "./bar-facts";
import type { OfKind } from "./bar-kind";

const FEWEST = 2;

/** A bar's code and whether it leaves its free dimension blank; empty where it has none, or no length to tell it by. */
export function codeAndFree(facts: BarFacts): string {
  const code = codeWithFree(facts);
  return code === null ? "" : `${code} ${leavesFree(facts) ? "blank" : "given"}`;
}

function codeWithFree(facts: BarFacts): string | null {
  return facts.row.length === null ? null : facts.kind.ask(codeOfFree, facts);
}

function codeOfFree({ definition, isStraight }: OfKind): string | null {
  // a straight bar is often given by its length alone
  return definition === null || definition.free === null || isStraight ? null : definition.code;
}

function leavesFree(facts: BarFacts): boolean {
  const free = facts.definition?.free ?? null;
  return free !== null && facts.dim(free) === null;
}

/** Codes of which most rows, and two at least, leave it blank; all that do where most rows of all codes do. */
export function freeLeftBlank(bars: readonly BarFacts[]): string {
  const byCode = new Map<string, { blank: number; given: number }>();
  const all = { blank: 0, given: 0 };
  for (const facts of bars) {
    const code = codeWithFree(facts);
    if (code === null) continue;
    const kind = leavesFree(facts) ? "blank" : "given";
    let of = byCode.get(code);
    if (of === undefined) {
      of = { blank: 0, given: 0 };
      byCode.set(code, of);
    }
    of[kind] += 1;
    all[kind] += 1;
  }
  const isHabit = ({ blank, given }: typeof all): boolean => blank >= FEWEST && blank > given;
  const isOfSheet = isHabit(all);
  const codes = [...byCode].filter(([, of]) => isHabit(of) || (isOfSheet && of.blank > of.given));
  return codes.length === 0 ? "" : `|${codes.map(([code]) => code).join("|")}|`;
}
