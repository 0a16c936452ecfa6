import type { Finding } from "../audit/finding";
import { findingRank } from "../audit/finding-rank";
import { isHolding } from "../audit/holds";
import { reachOf } from "../audit/reach-of";
import { barCount } from "../bar/bar-count";
import type { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { barMass } from "../bar/bar-mass";
import { shapeRefused } from "../bar/shape-refused";
import type { ScheduleHead } from "../schedule/schedule-head";
import { isRefusal, type Refusal } from "../units/refusal";
import {
  isAsked,
  isHold,
  type Ticket,
  type TicketCut,
  type TicketHeat,
  type TicketWaived,
  type TicketWarning,
} from "./ticket";

export interface RowQuestion {
  readonly facts: BarFacts;
  readonly head: ScheduleHead;
  /** what the audit found in this row */
  readonly findings: readonly Finding[];
  /** what it found and somebody said is not to be told */
  readonly waived?: readonly TicketWaived[];
  /** mill certificates of the stock that the cut list takes its pieces from */
  readonly heats?: readonly TicketHeat[];
  /** why no stock of the yard gives its length; null where one does */
  readonly noStock?: string | null;
}

type Named = "sheet" | "row" | "mark" | "member" | "pour" | "count" | "size" | "shape" | "head" | "remark";

/** What of a ticket goes with the bars that are bundled and sent: nothing of how they are bent. */
export interface RowToSend
  extends Pick<Ticket, Named | "reach" | "isHidden" | "massEach" | "heats" | "waived" | "warnings"> {
  readonly cut: Pick<TicketCut, "length"> | null;
}

/** One bar row as it is bundled and sent; of its warnings those that hold it back or ask. */
export function rowToSend(question: RowQuestion): RowToSend {
  const { facts } = question;
  const cut = barLength(facts, "to cut");
  const warnings = warningsOf(question);
  const refused = refusedWarning(facts);
  if (refused !== null) warnings.push(refused);
  return Object.assign(namesOfRow(question), {
    cut: isRefusal(cut) ? null : { length: cut.length },
    warnings: byRank(warnings).filter((warning) => isHold(warning) || isAsked(warning)),
  });
}

/** What names the bars of a row, how many there are and what they weigh. */
export function namesOfRow({
  facts,
  head,
  waived = [],
  heats = [],
}: RowQuestion): Omit<RowToSend, "cut" | "warnings"> {
  const { row, sheet } = facts;
  // objects spread into one another take ten times as long
  return {
    sheet: sheet.sheet.name,
    row: sheet.sheet.top + row.row + 1,
    mark: row.mark,
    member: row.member,
    pour: row.pour,
    // none is known as well
    count: facts.count === 0 ? 0 : known(barCount(facts)),
    size: facts.sizeName,
    shape: row.shape,
    head,
    remark: row.remark,
    reach: reachOf(facts),
    isHidden: row.hidden,
    massEach: known(barMass(facts, "to cut")),
    heats,
    waived,
  };
}

export const known = (answer: number | Refusal): number | null => (isRefusal(answer) ? null : answer);

/** The audit's rule whose findings every bend of the ticket says for itself, without naming a guess. */
const SAID_BY_BENDS = "angle-without-trials";
/** That whose findings the stock says for itself, in the words of the cut list. */
export const SAID_BY_STOCK = "longer-than-stock";

/** What the audit found in a row, as its ticket says it. */
export function warningsOf({ findings, waived = [], noStock = null }: RowQuestion): TicketWarning[] {
  const isSaidHere = ({ name }: Finding): boolean =>
    name === SAID_BY_BENDS || (name === SAID_BY_STOCK && noStock !== null);
  const warnings = findings.filter((finding) => !isSaidHere(finding)).map(warningOf);
  if (noStock !== null) warnings.push(ofNoStock(noStock, waived));
  return warnings;
}

/** That the cut list has not all bars of a row, in its own words. */
export const inNoPlan = (why: string): string => `in no cutting plan: ${why}`;

/** Nobody will find it cut, unless somebody answers for its length. */
function ofNoStock(why: string, waived: readonly TicketWaived[]): TicketWarning {
  const hold = !waived.some(({ name }) => name === SAID_BY_STOCK);
  return { severity: "doubtful", unsure: false, text: inNoPlan(why), hold };
}

function warningOf(finding: Finding): TicketWarning {
  const { severity, outcome, message } = finding;
  return { severity, unsure: outcome === "unsure", text: message, hold: isHolding(finding) };
}

/** Why the bar has no shape that can be made; null where it has one, and where shape or size is not read. */
export function refusedWarning(facts: BarFacts): TicketWarning | null {
  if (facts.row.shape === null || facts.resolved === null) return null;
  const refused = shapeRefused(facts);
  if (refused === null) return null;
  const { why, isCertain } = refused;
  return { severity: isCertain ? "unbendable" : "doubtful", unsure: !isCertain, text: why, hold: isCertain };
}

export function byRank(warnings: readonly TicketWarning[]): TicketWarning[] {
  const rank = ({ severity, unsure }: TicketWarning): number =>
    findingRank({ severity, outcome: unsure ? "unsure" : "broken" });
  return [...warnings].sort((a, b) => rank(a) - rank(b));
}
