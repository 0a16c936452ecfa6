import type { BarFacts } from "./bar-facts";

const FEWEST = 2;

/** A bar's code and whether it leaves its free dimension blank; empty where it has none, or no length to tell it by. */
export function codeAndFree(facts: BarFacts): string {
  const { definition, row } = facts;
  const free = definition?.free ?? null;
  // a straight bar is often given by its length alone
  if (definition === null || free === null || row.length === null || facts.isStraight) return "";
  return `${definition.code} ${facts.dim(free) === null ? "blank" : "given"}`;
}

/** Codes of which most rows, and two at least, leave it blank; all that do where most rows of all codes do. */
export function freeLeftBlank(bars: readonly BarFacts[]): string {
  const byCode = new Map<string, { blank: number; given: number }>();
  const all = { blank: 0, given: 0 };
  for (const facts of bars) {
    const [code = "", free] = codeAndFree(facts).split(" ");
    if (free === undefined) continue;
    const kind = free === "blank" ? "blank" : "given";
    const of = byCode.get(code) ?? { blank: 0, given: 0 };
    of[kind] += 1;
    all[kind] += 1;
    byCode.set(code, of);
  }
  const isHabit = ({ blank, given }: typeof all): boolean => blank >= FEWEST && blank > given;
  const isOfSheet = isHabit(all);
  const codes = [...byCode].filter(([, of]) => isHabit(of) || (isOfSheet && of.blank > of.given));
  return codes.length === 0 ? "" : `|${codes.map(([code]) => code).join("|")}|`;
}
