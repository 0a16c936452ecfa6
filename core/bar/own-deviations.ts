import type { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import { LENGTH_HABIT, OWN_DEVIATION } from "./identities.data";

/**
 * By how many diameters the lengths of a code are longer than the document in force makes them, where half of its bars
 * and more are so: the office deducts for bends by a table of its own, or rounds its own way; with the step, mm. "|51:1.5:10|21:0:10|".
 */
export function ownDeviations(answers: AnswersOfBars, lengthStep: number | null): string {
  return answers.whole(deviationsOf, deviationKey, lengthStep ?? LENGTH_HABIT.value.step);
}

/** True where the bar's length is off the document's as the other bars of its code are. */
export function keepsOwnDeviation(facts: BarFacts, habits: string): boolean {
  const bar = deviationOf(facts);
  if (bar === null || habits === "") return false;
  const start = habits.indexOf(`|${bar.code}:`);
  if (start < 0) return false;
  const [, times, step] = habits.slice(start + 1, habits.indexOf("|", start + 1)).split(":");
  return keeps(bar, Number(times), Number(step));
}

interface Deviation {
  readonly code: string;
  readonly diameter: number;
  /** mm that the length is over what the document makes, before that is rounded */
  readonly over: number;
  readonly length: number;
  readonly isOther: boolean;
}

/** Of a bent bar by code whose length was typed and compared. */
function deviationOf(facts: BarFacts): Deviation | null {
  const { definition, diameter, lengthJudgement, cut, row } = facts;
  if (definition === null || diameter === null || cut === null || row.length === null) return null;
  if (facts.isPath || (facts.bendCount ?? 0) === 0) return null;
  const { kind } = lengthJudgement;
  if (kind !== "fits" && kind !== "differs") return null;
  const over = row.length - cut.unrounded;
  return { code: definition.code, diameter, over, length: row.length, isOther: kind === "differs" };
}

function deviationKey(facts: BarFacts): string {
  const bar = deviationOf(facts);
  return bar === null ? "" : `${bar.code} ${bar.diameter} ${bar.over} ${bar.length} ${bar.isOther}`;
}

function deviationsOf(bars: readonly BarFacts[], step: number): string {
  const groups = new Map<string, Deviation[]>();
  for (const facts of bars) {
    const group = groups.get(facts.definition?.code ?? "");
    if (group !== undefined && group.length >= OWN_DEVIATION.value.looked) continue;
    const bar = deviationOf(facts);
    if (bar === null) continue;
    if (group === undefined) groups.set(bar.code, [bar]);
    else group.push(bar);
  }
  const kept = [...groups].flatMap(([code, group]) => {
    const times = commonDeviation(group, step);
    return times === null ? [] : [`${code}:${times}:${step}`];
  });
  return kept.length === 0 ? "" : `|${kept.join("|")}|`;
}

/** The deviation, in diameters, that most bars of a code keep and several lengths among them prove. */
function commonDeviation(bars: readonly Deviation[], step: number): number | null {
  const { within } = LENGTH_HABIT.value;
  const { fewest, share } = OWN_DEVIATION.value;
  const tried = new Set(bars.map(({ over, diameter }) => Math.round(over / diameter / within) * within));
  let best: { times: number; kept: readonly Deviation[] } | null = null;
  for (const times of tried) {
    const kept = bars.filter((bar) => keeps(bar, times, step));
    if (kept.length > (best?.kept.length ?? 0)) best = { times, kept };
  }
  if (best === null || best.kept.length < share * bars.length) return null;
  return new Set(best.kept.map(({ length }) => length)).size < fewest ? null : best.times;
}

function keeps({ over, diameter }: Deviation, times: number, step: number): boolean {
  const { slack, slackPerDiameter } = LENGTH_HABIT.value;
  if (Math.abs(times) > OWN_DEVIATION.value.most) return false;
  return Math.abs(over - times * diameter) <= step + slack + slackPerDiameter * diameter;
}
