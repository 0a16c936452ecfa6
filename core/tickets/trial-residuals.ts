import { groupName } from "../bending/calibrate";
import { CALIBRATION_PRIOR } from "../bending/calibration.data";
import { type Trial, trialSpringback } from "../bending/trial";
import { reasonOnSheet, type TrialProblem } from "../bending/trial-problem";
import type { Workshop } from "../shop/workshop";
import { refusalText } from "../units/refusal";

/** One trial beside what the fit of the whole log expects of it. Degrees. */
export interface ResidualPoint {
  /** the Shop sheet's row number where `firstRow` was the log's, from 1 */
  readonly row: number;
  readonly trial: Trial;
  readonly group: string;
  readonly springback: number;
  /** springback less the fit's */
  readonly residual: number;
  /** 0 to 1, how far it agrees with the others */
  readonly weight: number;
  /** so little agreement that it should be measured again; it is never dropped */
  readonly suspicious: boolean;
}

export interface TrialResiduals {
  readonly points: readonly ResidualPoint[];
  /** what is wrong or odd in the log, each with its row */
  readonly problems: readonly {
    readonly row: number;
    readonly outcome: TrialProblem["outcome"];
    readonly text: string;
  }[];
}

/**
 * The residuals of a log, in its order, and its problems. `firstRow` is the sheet's own number of the
 * log's header row, so that rows are named as the user sees them.
 */
export function trialResiduals(workshop: Workshop, firstRow: number): TrialResiduals {
  const { calibration, problems } = workshop.log;
  return {
    points: calibration.weights.map(({ trial, weight, residual }) => ({
      row: firstRow + trial.row,
      trial,
      group: groupName(trial, calibration.unit),
      springback: trialSpringback(trial),
      residual,
      weight,
      suspicious: weight < CALIBRATION_PRIOR.value.suspiciousWeight,
    })),
    problems: [...problems, ...calibration.problems].map((problem) => ({
      row: firstRow + problem.row,
      outcome: problem.outcome,
      text: refusalText(reasonOnSheet(problem.reason, firstRow - 1)),
    })),
  };
}
