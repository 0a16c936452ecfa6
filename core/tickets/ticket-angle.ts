import {
  type CompensatedAngle,
  type CompensationQuestion,
  compensatedAngle,
} from "../bending/compensated-angle";
import { beyondMachine, moreTrialsNeeded } from "../bending/compensation-refusal";
import { trialContradictory, trialDoesNotFit } from "../bending/trial-problem";
import type { Workshop } from "../shop/workshop";
import { isRefusal, isRefusalOf, type Refusal, refusalText } from "../units/refusal";
import type { TicketAngle, TicketTrial } from "./ticket";

/**
 * The compensated angle of one bend as the ticket shows it. Where the trials do not bear it there is no
 * angle, only the reason: an estimate is no instruction.
 */
export function ticketAngle(workshop: Workshop, question: CompensationQuestion): TicketAngle {
  let known = remembered.get(workshop);
  if (known === undefined) {
    known = new Map();
    remembered.set(workshop, known);
  }
  const key = JSON.stringify(question);
  let answer = known.get(key);
  if (answer === undefined) {
    answer = askAngle(workshop, question);
    known.set(key, answer);
  }
  return answer;
}

/** A schedule asks for a few angles of a few sizes, over and over. */
const remembered = new WeakMap<Workshop, Map<string, TicketAngle>>();

function askAngle(workshop: Workshop, question: CompensationQuestion): TicketAngle {
  const found = compensatedAngle(workshop.log.calibration, question);
  if (isRefusal(found)) return without(found, []);
  const trials = trialsOf(found);
  const refusal = found.refusal === null ? null : reasonOf(workshop, question, found.refusal);
  const doubtedTrials = doubted(workshop, found);
  if (refusal !== null) return { ...without(withoutGuess(refusal, question.angle), trials), doubtedTrials };
  const all = workshop.log.calibration.weights.length;
  return {
    angle: found.angle,
    low: found.low,
    high: found.high,
    plain: found.plain,
    refusal: null,
    trials,
    otherTrials: all - found.trials,
    doubtedTrials,
  };
}

/** That a machine turns too little is no matter while no trial says how far it must turn. */
function reasonOf(workshop: Workshop, question: CompensationQuestion, refusal: Refusal): Refusal {
  if (!isRefusalOf(refusal, beyondMachine)) return refusal;
  const anywhere = compensatedAngle(workshop.log.calibration, { ...question, largestAngle: null });
  return isRefusal(anywhere) ? anywhere : (anywhere.refusal ?? refusal);
}

/** The angle that is known too loosely is not named: somebody would bend to it. */
function withoutGuess(refusal: Refusal, wanted: number): Refusal {
  return isRefusalOf(refusal, moreTrialsNeeded)
    ? moreTrialsNeeded({ ...refusal.values, bentTo: wanted })
    : refusal;
}

function without(refusal: Refusal, trials: readonly TicketTrial[]): TicketAngle {
  const reason = refusalText(refusal);
  return {
    angle: null,
    low: null,
    high: null,
    plain: null,
    refusal: reason,
    trials,
    otherTrials: 0,
    doubtedTrials: 0,
  };
}

/** How many of the group's trials are to be measured again. */
function doubted({ log }: Workshop, { group }: CompensatedAngle): number {
  const rows = new Set(
    log.calibration.problems
      .filter(({ reason }) => isRefusalOf(reason, trialDoesNotFit) || isRefusalOf(reason, trialContradictory))
      .map(({ row }) => row),
  );
  return (group?.trials ?? []).filter(({ row }) => rows.has(row)).length;
}

function trialsOf({ group }: CompensatedAngle): TicketTrial[] {
  const trials = (group?.trials ?? []).map(({ date, machine, heat }) => ({
    date: date === null ? null : dateText(date),
    machine,
    heat,
  }));
  return trials.sort((a, b) => (a.date ?? "").localeCompare(b.date ?? ""));
}

const DAY = 86_400_000;

/** A spreadsheet's serial number as a date; any other text as it was typed. */
function dateText(typed: string): string {
  if (!/^\d{5}(\.\d+)?$/.test(typed)) return typed;
  const date = new Date(Date.UTC(1899, 11, 30) + Math.floor(Number(typed)) * DAY);
  return date.toISOString().slice(0, 10);
}
