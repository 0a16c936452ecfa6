import { plainGrade } from "../bars/plain-grade";
import type { LengthUnit } from "../units/length-unit";
import { isRefusal, type Refusal } from "../units/refusal";
import { toTenth } from "../units/to-tenth";
import { barOnFormer, type Calibration, groupMechanics, groupName, type TrialGroup } from "./calibrate";
import { CALIBRATION_LIMITS, PLAIN_RULE_REACH } from "./calibration.data";
import {
  angleNotBend,
  beyondMachine,
  farFromAllTried,
  farFromTried,
  makeTrialFirst,
  makeTrialOfGroup,
  moreTrialsNeeded,
  otherFormOnly,
  rolledNotBent,
  severalGroups,
  trialOutsideLog,
} from "./compensation-refusal";
import { elasticCoreShare } from "./elastic-core";
import { fitTrials } from "./fit-trials";
import { type AskedGroup, bendFor, nearestDistance, predictSpringback } from "./predict-springback";
import { LARGEST_CORE_OF_A_BEND } from "./springback.data";
import { type BarForm, trialSpringback } from "./trial";

export interface CompensationQuestion {
  /** degrees wanted on the released bar, over 0 and at most 180 */
  readonly angle: number;
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly former: number;
  /** null takes the only grade of this yield that the log has for this size and former */
  readonly grade: string | null;
  /** "H" of "H16", where the log may name its grade by the letter */
  readonly letter?: string | null;
  /** MPa, nominal */
  readonly yield: number;
  /** false where the yield is only the standard's usual one, so that any grade of the log may be meant */
  readonly yieldSure?: boolean;
  /** null takes the only machine the log has for this size and former */
  readonly machine: string | null;
  readonly form?: BarForm | null;
  /** degrees that the machine turns at most; null where its row does not say */
  readonly largestAngle?: number | null;
  /** degrees that half the 90 % interval may be */
  readonly tolerance?: number;
  /** mm, both levers of the machine; null where its row does not say */
  readonly levers?: number | null;
}

export interface CompensatedAngle {
  /** degrees to bend to */
  readonly angle: number;
  /** degrees, the 90 % interval of the next released angle */
  readonly low: number;
  readonly high: number;
  /** trials of the same group */
  readonly trials: number;
  /** degrees that the plain rule bends to: the median springback of the same group added; null without trials near the angle */
  readonly plain: number | null;
  /** why it is no recommendation: a guess, or beyond the machine; null where the log bears it */
  readonly refusal: Refusal | null;
  /** in words, what it rests on and what to look out for */
  readonly rests: readonly string[];
  readonly group: TrialGroup | null;
}

/**
 * The angle to bend to so that the released bar has the wanted one, by the fit of the whole log, with the
 * 90 % interval of what will be measured. Where the log does not bear it, `refusal` holds the reason and the
 * rest is what mechanics and the shop's other groups suggest. Refuses what is no bend, and a log that
 * leaves open which machine or grade is meant.
 */
export function compensatedAngle(
  calibration: Calibration,
  question: CompensationQuestion,
): CompensatedAngle | Refusal {
  if (!(question.angle > 0 && question.angle <= 180)) return angleNotBend({ angle: question.angle });
  if (elasticCoreShare(question) > LARGEST_CORE_OF_A_BEND.value) {
    return rolledNotBent({ bar: barOnFormer(question, calibration.unit) });
  }
  const group = findGroup(calibration, question);
  if (isRefusal(group)) return group;
  const asked = askedGroup(calibration, question, group);
  const bentTo = bendFor(calibration.fit, asked, question.angle);
  const { half } = predictSpringback(calibration.fit, asked, bentTo);
  const refusal =
    beyondWhatMachineTurns(question, bentTo) ??
    unborne(calibration, question, group) ??
    tooOpen(calibration, question, asked, group, { bentTo, half });
  return {
    angle: bentTo,
    low: question.angle - half,
    high: question.angle + half,
    trials: group?.trials.length ?? 0,
    plain: group === null || plainRuleStrays(group, question) ? null : question.angle + group.plain,
    refusal,
    rests: restsOn(calibration, question, group, bentTo),
    group,
  };
}

/**
 * The plain rule: the median springback of the same group added. Refuses a group without a trial, and an
 * angle farther from every tried one than a median may be carried.
 */
export function plainAngle(calibration: Calibration, question: CompensationQuestion): number | Refusal {
  if (!(question.angle > 0 && question.angle <= 180)) return angleNotBend({ angle: question.angle });
  const group = findGroup(calibration, question);
  if (isRefusal(group)) return group;
  if (group === null) return makeTrialOfGroup({ group: nameOf(question, calibration.unit) });
  if (plainRuleStrays(group, question)) {
    return farFromAllTried({
      angle: question.angle,
      away: toTenth(awayFromTried(group, question)),
      reach: PLAIN_RULE_REACH.value,
      group: groupName(group, calibration.unit),
    });
  }
  const bentTo = question.angle + group.plain;
  return beyondWhatMachineTurns(question, bentTo) ?? bentTo;
}

/** A median springback is carried no farther from a tried angle than this. */
function plainRuleStrays(group: TrialGroup, question: CompensationQuestion): boolean {
  return awayFromTried(group, question) > PLAIN_RULE_REACH.value;
}

function awayFromTried({ trials }: TrialGroup, { angle }: CompensationQuestion): number {
  return nearestDistance(
    trials.map(({ bentTo }) => bentTo),
    angle,
  );
}

function findGroup(calibration: Calibration, question: CompensationQuestion): TrialGroup | null | Refusal {
  const same = ofGrade(
    calibration.groups.filter(
      (group) =>
        near(group.diameter, question.diameter) &&
        near(group.former, question.former) &&
        (group.machine === null || question.machine === null || sameText(group.machine, question.machine)) &&
        (question.form == null || group.form === null || group.form === question.form),
    ),
    question,
  );
  // a machine of this name before trials that name none
  const named = same.filter((group) => question.machine !== null && group.machine !== null);
  const onMachine = named.length > 0 ? named : same;
  // the same bar supplied both ways: straight bar unless coil is asked for
  const bars = onMachine.filter((group) => group.form !== "coil");
  const left = onMachine.length > 1 && bars.length > 0 && question.form == null ? bars : onMachine;
  if (left.length <= 1) return left[0] ?? null;
  return severalGroups({
    bar: barOnFormer(question, calibration.unit),
    names: left.map((group) => groupName(group, calibration.unit)).join("; "),
  });
}

/** The grade by its name, else trials that name none; without a name, the size's letter, else all of this yield. */
function ofGrade(groups: readonly TrialGroup[], question: CompensationQuestion): readonly TrialGroup[] {
  const ofYield = groups.filter(
    (group) => question.yieldSure === false || Math.abs(group.yield - question.yield) <= 1,
  );
  const name = question.grade ?? question.letter ?? null;
  const ofName = name === null ? [] : ofYield.filter((group) => sameGrade(group.grade, name));
  if (ofName.length > 0) return ofName;
  return question.grade === null ? ofYield : ofYield.filter((group) => group.grade === null);
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 0.01 * Math.max(a, b);
}

function sameGrade(a: string | null, b: string): boolean {
  return a !== null && plainGrade(a) === plainGrade(b);
}

function sameText(a: string | null, b: string | null): boolean {
  return (a ?? "").trim().toLowerCase() === (b ?? "").trim().toLowerCase();
}

function askedGroup(
  calibration: Calibration,
  question: CompensationQuestion,
  group: TrialGroup | null,
): AskedGroup {
  if (group !== null) {
    return {
      mechanics: group.mechanics,
      index: calibration.groups.indexOf(group),
      tried: group.trials.map((trial) => trial.bentTo),
    };
  }
  return {
    mechanics: groupMechanics({ ...question, levers: question.levers ?? null }),
    index: null,
    tried: [],
  };
}

function beyondWhatMachineTurns(question: CompensationQuestion, bentTo: number): Refusal | null {
  const largest = question.largestAngle ?? null;
  if (largest === null || bentTo <= largest) return null;
  return beyondMachine({
    bentTo: toTenth(bentTo),
    largest: toTenth(largest),
    machine: question.machine ?? "the machine",
    open: toTenth(bentTo - largest),
  });
}

/** Reasons that lie in what was tried and what was not. */
function unborne(
  calibration: Calibration,
  question: CompensationQuestion,
  group: TrialGroup | null,
): Refusal | null {
  const limits = CALIBRATION_LIMITS.value;
  if (group !== null) {
    const away = nearestDistance(
      group.trials.map((trial) => trial.bentTo),
      question.angle,
    );
    if (away <= limits.farFromTried || group.trials.length >= limits.farNeedsTrials) return null;
    return farFromTried({
      angle: toTenth(question.angle),
      away: toTenth(away),
      group: groupName(group, calibration.unit),
    });
  }
  if (calibration.groups.length < limits.groupsWithoutTrial) {
    const { length } = calibration.groups;
    return makeTrialFirst({
      group: nameOf(question, calibration.unit),
      groups: `${length} other ${length === 1 ? "group" : "groups"}`,
      least: limits.groupsWithoutTrial,
    });
  }
  const form = question.form ?? null;
  if (form !== null && !calibration.groups.some((other) => other.form === null || other.form === form)) {
    return otherFormOnly({ form });
  }
  return (
    outside(
      calibration,
      question,
      "former over diameter",
      question.former / question.diameter,
      calibration.groups.map((g) => g.former / g.diameter),
    ) ??
    outside(
      calibration,
      question,
      "yield",
      question.yield,
      calibration.groups.map((g) => g.yield),
    )
  );
}

function outside(
  { unit }: Calibration,
  question: CompensationQuestion,
  what: string,
  value: number,
  held: readonly number[],
): Refusal | null {
  const low = Math.min(...held);
  const high = Math.max(...held);
  const share = CALIBRATION_LIMITS.value.outsideLog;
  if (value >= low * (1 - share) && value <= high * (1 + share)) return null;
  return trialOutsideLog({
    group: nameOf(question, unit),
    what,
    value: toTenth(value),
    low: toTenth(low),
    high: toTenth(high),
  });
}

/** The interval is wider than the tolerance: how many trials would close it. */
function tooOpen(
  calibration: Calibration,
  question: CompensationQuestion,
  asked: AskedGroup,
  group: TrialGroup | null,
  found: { bentTo: number; half: number },
): Refusal | null {
  const tolerance = question.tolerance ?? CALIBRATION_LIMITS.value.tolerance;
  if (found.half <= tolerance) return null;
  const more = trialsThatClose(calibration, asked, found.bentTo, tolerance);
  return moreTrialsNeeded({
    more: more === null ? "several more" : more === 1 ? "one more" : `${more} more`,
    group: group === null ? nameOf(question, calibration.unit) : groupName(group, calibration.unit),
    bentTo: toTenth(found.bentTo),
    half: toTenth(found.half),
    tolerance: toTenth(tolerance),
  });
}

/** Trials at this angle, each as predicted, until the interval is within the tolerance; null above five. */
function trialsThatClose(
  calibration: Calibration,
  asked: AskedGroup,
  bentTo: number,
  tolerance: number,
): number | null {
  const groups = calibration.groups.map((group) => group.mechanics);
  const index = asked.index ?? groups.push(asked.mechanics) - 1;
  const rows = calibration.groups.flatMap((group, place) =>
    group.trials.map((trial) => ({ group: place, bentTo: trial.bentTo, springback: trialSpringback(trial) })),
  );
  const { springback } = predictSpringback(calibration.fit, asked, bentTo);
  for (let more = 1; more <= 5; more += 1) {
    rows.push({ group: index, bentTo, springback });
    const fit = fitTrials(groups, rows);
    const next = { mechanics: asked.mechanics, index, tried: [...asked.tried, bentTo] };
    if (predictSpringback(fit, next, bentTo).half <= tolerance) return more;
  }
  return null;
}

function restsOn(
  calibration: Calibration,
  question: CompensationQuestion,
  group: TrialGroup | null,
  bentTo: number,
): string[] {
  const all = calibration.weights.length;
  const words: string[] = [];
  if (group === null) {
    words.push(
      all === 0
        ? "mechanics alone, no trial"
        : `mechanics and ${all} trials of ${calibration.groups.length} other groups`,
    );
  } else {
    const own = group.trials.length;
    words.push(
      `${own} ${own === 1 ? "trial" : "trials"} of ${groupName(group, calibration.unit)}, of ${all} in the log`,
    );
    if (!plainRuleStrays(group, question))
      words.push(`plain rule bends to ${toTenth(question.angle + group.plain)}`);
    const heats = [...new Set(group.trials.map((trial) => trial.heat).filter((heat) => heat !== null))];
    words.push(
      heats.length > 0
        ? `heats ${heats.join(", ")}: check one bar of any other`
        : "check one bar of each new heat",
    );
  }
  const usual = CALIBRATION_LIMITS.value.usualLargestAngle;
  if ((question.largestAngle ?? null) === null && bentTo > 180) {
    words.push(`the machine's largest angle is not known; many turn no further than 180 to ${usual}`);
  }
  return words;
}

function nameOf({ machine, diameter, former, grade, form }: CompensationQuestion, unit: LengthUnit): string {
  return groupName({ machine, diameter, former, grade, form: form ?? null }, unit);
}
