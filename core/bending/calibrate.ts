import { plainGrade } from "../bars/plain-grade";
import type { LengthUnit } from "../units/length-unit";
import { printLength } from "../units/print-length";
import { CALIBRATION_PRIOR, TRIAL_LIMITS } from "./calibration.data";
import { curvatureKept, elasticCoreShare } from "./elastic-core";
import { fitTrials, type GroupMechanics, type TrialFit } from "./fit-trials";
import { legFlexure } from "./leg-flexure";
import { USUAL_LEVERS } from "./springback.data";
import { type BarForm, type Trial, trialSpringback } from "./trial";
import {
  oneTrialOnly,
  type TrialProblem,
  trialContradictory,
  trialDoesNotFit,
  trialsAtOneAngle,
} from "./trial-problem";

/** Bars that come back alike: one machine, size, former, grade, and bar or coil. */
export interface TrialGroup {
  readonly machine: string | null;
  readonly diameter: number;
  readonly former: number;
  readonly grade: string | null;
  readonly yield: number;
  readonly form: BarForm | null;
  readonly mechanics: GroupMechanics;
  readonly trials: readonly Trial[];
  /** degrees, the median springback of its trials: the plain rule */
  readonly plain: number;
}

/** A trial log, fitted. */
export interface Calibration {
  readonly groups: readonly TrialGroup[];
  readonly fit: TrialFit;
  /** one a trial, in the log's order: 0 to 1, how far it agrees with the others */
  readonly weights: readonly { readonly trial: Trial; readonly weight: number; readonly residual: number }[];
  /** trials that are used but should be looked at, and thin groups */
  readonly problems: readonly TrialProblem[];
  /** in which its sentences name diameters and formers */
  readonly unit: LengthUnit;
}

export interface CalibrationOptions {
  /** of the standard in force, for sentences; mm where it is left out */
  readonly unit?: LengthUnit;
  /** mm, both levers of a machine, where its row says them; null where it does not */
  readonly leversOf?: (bar: {
    readonly machine: string | null;
    readonly diameter: number;
    readonly former: number;
  }) => number | null;
}

/**
 * The calibration of a shop from its trials: all groups fitted together, so that each learns from the
 * others. Trials that do not fit or contradict one another are shown in `problems` and never dropped.
 */
export function calibrate(trials: readonly Trial[], options: CalibrationOptions = {}): Calibration {
  const groups = groupTrials(trials, options);
  const rows = groups.flatMap((group, index) =>
    group.trials.map((trial) => ({
      group: index,
      bentTo: trial.bentTo,
      springback: trialSpringback(trial),
      trial,
    })),
  );
  const fit = fitTrials(
    groups.map((group) => group.mechanics),
    rows,
  );
  const weights = rows.map((row, index) => ({
    trial: row.trial,
    weight: fit.weights[index] as number,
    residual: row.springback - (fit.fitted[index] as number),
  }));
  weights.sort((a, b) => a.trial.row - b.trial.row);
  const misfits = weights.flatMap(({ trial, weight }): TrialProblem[] =>
    weight < CALIBRATION_PRIOR.value.suspiciousWeight
      ? [{ row: trial.row, outcome: "shown", reason: misfit(trial) }]
      : [],
  );
  const { unit = "mm" } = options;
  const ofGroups = groups.flatMap((group) => groupProblems(group, unit));
  return { groups, fit, weights, problems: [...misfits, ...ofGroups], unit };
}

/** What plain mechanics says of a group. */
export function groupMechanics(bar: {
  diameter: number;
  former: number;
  yield: number;
  levers: number | null;
}): GroupMechanics {
  return {
    bendShare: 1 - curvatureKept(elasticCoreShare(bar)),
    legDegrees: legFlexure({ ...bar, levers: bar.levers ?? USUAL_LEVERS.value }),
  };
}

/** "16 mm on former 64", or in inches 5/8" on former 3 3/4". */
export function barOnFormer(bar: { diameter: number; former: number }, unit: LengthUnit): string {
  if (unit === "in") return `${printLength(bar.diameter, unit)} on former ${printLength(bar.former, unit)}`;
  return `${shortNumber(bar.diameter)} mm on former ${shortNumber(bar.former)}`;
}

/** "16 mm on former 64, B500B, bar, machine M1": how messages name a group. */
export function groupName(
  group: Omit<TrialGroup, "mechanics" | "trials" | "plain" | "yield">,
  unit: LengthUnit,
): string {
  const parts = [barOnFormer(group, unit)];
  if (group.grade !== null) parts.push(group.grade);
  if (group.form !== null) parts.push(group.form);
  if (group.machine !== null) parts.push(`machine ${group.machine}`);
  return parts.join(", ");
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const high = sorted[middle] as number;
  return sorted.length % 2 === 1 ? high : ((sorted[middle - 1] as number) + high) / 2;
}

function groupTrials(trials: readonly Trial[], options: CalibrationOptions): TrialGroup[] {
  const byKey = new Map<string, Trial[]>();
  for (const trial of trials) {
    const key = groupKey(trial);
    const mates = byKey.get(key);
    if (mates === undefined) byKey.set(key, [trial]);
    else mates.push(trial);
  }
  return [...byKey.values()].map((mates) => {
    const { machine, diameter, former, grade, form, yield: yieldStress } = mates[0] as Trial;
    const levers = options.leversOf?.({ machine, diameter, former }) ?? null;
    return {
      machine,
      diameter,
      former,
      grade,
      yield: yieldStress,
      form,
      mechanics: groupMechanics({ diameter, former, yield: yieldStress, levers }),
      trials: mates,
      plain: median(mates.map(trialSpringback)),
    };
  });
}

function groupKey(trial: Trial): string {
  const machine = trial.machine?.toLowerCase() ?? null;
  const grade = trial.grade === null ? null : plainGrade(trial.grade);
  return JSON.stringify([machine, trial.diameter, trial.former, grade, trial.yield, trial.form]);
}

function groupProblems(group: TrialGroup, unit: LengthUnit): TrialProblem[] {
  const found: TrialProblem[] = [];
  const limits = TRIAL_LIMITS.value;
  group.trials.forEach((trial, index) => {
    const other = group.trials
      .slice(0, index)
      .find(
        (earlier) =>
          Math.abs(earlier.bentTo - trial.bentTo) <= limits.sameAngle &&
          Math.abs(trialSpringback(earlier) - trialSpringback(trial)) > limits.contradiction,
      );
    if (other === undefined) return;
    const reason = trialContradictory({
      first: other.row + 1,
      row: trial.row + 1,
      bentTo: shortNumber(trial.bentTo),
      firstSpringback: shortNumber(trialSpringback(other)),
      springback: shortNumber(trialSpringback(trial)),
    });
    found.push({ row: trial.row, outcome: "shown", reason });
  });
  const first = group.trials[0] as Trial;
  if (group.trials.length === 1) {
    found.push({ row: first.row, outcome: "shown", reason: oneTrialOnly({ group: groupName(group, unit) }) });
  } else if (group.trials.every((trial) => Math.abs(trial.bentTo - first.bentTo) <= limits.oneAngle)) {
    const reason = trialsAtOneAngle({
      count: group.trials.length,
      group: groupName(group, unit),
      bentTo: shortNumber(first.bentTo),
    });
    found.push({ row: first.row, outcome: "shown", reason });
  }
  return found;
}

function misfit(trial: Trial) {
  return trialDoesNotFit({
    row: trial.row + 1,
    bentTo: shortNumber(trial.bentTo),
    springback: shortNumber(trialSpringback(trial)),
  });
}

function shortNumber(value: number): string {
  return String(Math.round(value * 10) / 10);
}
