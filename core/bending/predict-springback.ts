import { CALIBRATION_PRIOR, type CalibrationPrior } from "./calibration.data";
import { designRow, dot, type GroupMechanics, quadratic, type TrialFit } from "./fit-trials";
import { studentQuantile } from "./student-quantile";

/** A group that the fit is asked about: one of its own, or one without a trial. */
export interface AskedGroup {
  readonly mechanics: GroupMechanics;
  /** place in the fit; null for a group that the log does not hold */
  readonly index: number | null;
  /** degrees bent to by the group's trials */
  readonly tried: readonly number[];
}

export interface SpringbackPrediction {
  /** degrees */
  readonly springback: number;
  readonly deviation: number;
  /** degrees: the next reading lies within this of the prediction in 90 of 100 cases */
  readonly half: number;
}

/** The springback of a bar of this group bent to `bentTo` degrees, with the 90 % interval of the next reading. */
export function predictSpringback(
  fit: TrialFit,
  group: AskedGroup,
  bentTo: number,
  prior: CalibrationPrior = CALIBRATION_PRIOR.value,
): SpringbackPrediction {
  const { full, row } = rowsOf(fit, group, bentTo, prior);
  const springback = dot(row, fit.coefficients);
  let variance = quadratic(row, fit.covariance);
  if (group.index === null) {
    variance += ((full.values[3] as number) * fit.groupFactor * prior.groupShare) ** 2;
    variance += ((full.values[4] as number) * fit.groupFactor * prior.groupDegrees) ** 2;
  }
  const away = group.tried.length === 0 ? prior.strayWithoutTrial : nearestDistance(group.tried, bentTo);
  variance +=
    fit.reading ** 2 + (prior.heatShare * springback) ** 2 + ((prior.strayPerRightAngle * away) / 90) ** 2;
  const deviation = Math.sqrt(variance);
  return { springback, deviation, half: studentQuantile(prior.intervalShare, fit.freedom) * deviation };
}

/** Degrees to bend to so that the released bar has `wanted` degrees. */
export function bendFor(
  fit: TrialFit,
  group: AskedGroup,
  wanted: number,
  prior: CalibrationPrior = CALIBRATION_PRIOR.value,
): number {
  let bentTo = wanted;
  // springback changes by a tenth of a degree a degree at most, so each round wins a digit
  for (let round = 0; round < 12; round += 1) {
    bentTo = wanted + dot(rowsOf(fit, group, bentTo, prior).row, fit.coefficients);
  }
  return bentTo;
}

/** A group without trials stands at the shop's mean: its own two coefficients have no place in the fit. */
function rowsOf(fit: TrialFit, group: AskedGroup, bentTo: number, prior: CalibrationPrior) {
  const full = designRow(bentTo, group.mechanics, group.index ?? 0, fit.groups.length, prior);
  const row =
    group.index === null ? { places: full.places.slice(0, 3), values: full.values.slice(0, 3) } : full;
  return { full, row };
}

export function nearestDistance(tried: readonly number[], angle: number): number {
  let least = Infinity;
  for (const one of tried) least = Math.min(least, Math.abs(one - angle));
  return least;
}
