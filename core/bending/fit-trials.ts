import { CALIBRATION_PRIOR, type CalibrationPrior } from "./calibration.data";
import { type Cholesky, cholesky } from "./cholesky";

/** What plain mechanics says about a group of trials: the shape of its springback over the angle. */
export interface GroupMechanics {
  /** share of the angle that comes back from the bend itself */
  readonly bendShare: number;
  /** degrees that come back from the legs */
  readonly legDegrees: number;
}

/** One trial as the fit sees it. */
export interface FitRow {
  readonly group: number;
  /** degrees */
  readonly bentTo: number;
  /** degrees, bent to less released */
  readonly springback: number;
}

/** The shop's springback as the trials leave it. */
export interface TrialFit {
  readonly groups: readonly GroupMechanics[];
  /**
   * times plain mechanics, times plain leg flexure, degrees of play; then a share of mechanics of each
   * group, then degrees of each group
   */
  readonly coefficients: Float64Array;
  readonly covariance: readonly Float64Array[];
  /** 0 to 1, one a row: how far a trial agrees with the others */
  readonly weights: Float64Array;
  /** degrees */
  readonly reading: number;
  readonly groupFactor: number;
  readonly freedom: number;
  /** degrees, one a row: the springback that the fit gives it */
  readonly fitted: readonly number[];
}

/**
 * Ridge fit of the springback of all groups of a log at once, with Student weights. A trial's weight is
 * judged by the fit that leaves it out, so a lone blunder cannot hide; no trial is dropped. With no rows
 * it is the prior. One Cholesky factor of 3 + 2 x groups a round.
 *
 * @example
 * fitTrials([{ bendShare: 0.0212, legDegrees: 1.01 }], [{ group: 0, bentTo: 90, springback: 8 }]);
 */
export function fitTrials(
  groups: readonly GroupMechanics[],
  rows: readonly FitRow[],
  prior: CalibrationPrior = CALIBRATION_PRIOR.value,
): TrialFit {
  const design = rows.map((row) =>
    designRow(row.bentTo, groups[row.group] as GroupMechanics, row.group, groups.length, prior),
  );
  const mean = priorMean(groups.length, prior);
  const expected = design.map((row) => dot(row, mean));
  const gaps = rows.map((row, index) => row.springback - (expected[index] as number));
  const heat = expected.map((value) => (prior.heatShare * value) ** 2);
  const weights = new Float64Array(rows.length).fill(1);
  const state: FitState = { design, gaps, heat, weights, groups: groups.length, prior };
  let variance = prior.reading ** 2;
  let freedom = 0;
  let factor = 1;
  let solved = solveOnce(state, variance, factor);
  for (let round = 0; round < prior.robustRounds; round += 1) {
    solved = solveOnce(state, variance, factor);
    ({ variance, freedom } = reweigh(state, variance, solved));
    // the spread of groups moves slowly: every third round is enough
    if (rows.length >= prior.groupFactorFrom && round % 3 === 2) factor = bestGroupFactor(state, variance);
  }
  return {
    groups,
    coefficients: solved.solution.map((value, index) => value + (mean[index] as number)),
    covariance: solved.parts.inverse(),
    weights,
    reading: Math.sqrt(variance),
    groupFactor: factor,
    freedom: prior.readingWorth + freedom,
    fitted: design.map((row, index) => (expected[index] as number) + dot(row, solved.solution)),
  };
}

/** A row of the model's matrix, sparse: five of its places are not zero. */
export interface DesignRow {
  readonly places: readonly number[];
  readonly values: readonly number[];
}

/** How much each coefficient adds to the springback of a bar bent to `bentTo` degrees. */
export function designRow(
  bentTo: number,
  mechanics: GroupMechanics,
  group: number,
  groupCount: number,
  prior: CalibrationPrior,
): DesignRow {
  const bend = mechanics.bendShare * bentTo;
  const legs = mechanics.legDegrees * (1 - Math.exp(-bentTo / prior.flexureFade));
  const play = Math.min(1, bentTo / prior.playFade);
  return { places: [0, 1, 2, 3 + group, 3 + groupCount + group], values: [bend, legs, play, bend, play] };
}

export function dot(row: DesignRow, vector: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < row.places.length; k += 1) {
    sum += (row.values[k] as number) * (vector[row.places[k] as number] ?? 0);
  }
  return sum;
}

interface FitState {
  readonly design: readonly DesignRow[];
  /** degrees, springback less the prior's */
  readonly gaps: readonly number[];
  /** degrees squared, scatter between heats */
  readonly heat: readonly number[];
  readonly weights: Float64Array;
  readonly groups: number;
  readonly prior: CalibrationPrior;
}

function priorMean(groups: number, prior: CalibrationPrior): Float64Array {
  const mean = new Float64Array(3 + 2 * groups);
  mean.set(prior.mean);
  return mean;
}

function priorPrecision(groups: number, factor: number, prior: CalibrationPrior): Float64Array {
  const precision = new Float64Array(3 + 2 * groups);
  prior.deviation.forEach((deviation, index) => {
    precision[index] = 1 / deviation ** 2;
  });
  precision.fill(1 / (factor * prior.groupShare) ** 2, 3, 3 + groups);
  precision.fill(1 / (factor * prior.groupDegrees) ** 2, 3 + groups);
  return precision;
}

/** The ridge solution, as departures from the prior's mean. */
function solveOnce(state: FitState, variance: number, factor: number) {
  const precision = priorPrecision(state.groups, factor, state.prior);
  const size = precision.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  for (let index = 0; index < size; index += 1)
    (matrix[index] as Float64Array)[index] = precision[index] as number;
  state.design.forEach((row, trial) => {
    const weight = (state.weights[trial] as number) / (variance + (state.heat[trial] as number));
    row.places.forEach((place, k) => {
      const scaled = weight * (row.values[k] as number);
      right[place] = (right[place] as number) + scaled * (state.gaps[trial] as number);
      const line = matrix[place] as Float64Array;
      row.places.forEach((other, m) => {
        line[other] = (line[other] as number) + scaled * (row.values[m] as number);
      });
    });
  });
  const parts: Cholesky = cholesky(matrix);
  return { parts, solution: parts.solve(right), precision, right };
}

/** One half-step of the Student weights, then the reading error that the weighted residuals show. */
function reweigh(
  state: FitState,
  variance: number,
  { parts, solution }: ReturnType<typeof solveOnce>,
): { variance: number; freedom: number } {
  const { prior, design, weights } = state;
  const covariance = parts.inverse();
  let squares = prior.readingWorth * prior.reading ** 2;
  let freedom = 0;
  design.forEach((row, trial) => {
    const spread = variance + (state.heat[trial] as number);
    const weight = weights[trial] as number;
    const leverage = (quadratic(row, covariance) * weight) / spread;
    const residual = (state.gaps[trial] as number) - dot(row, solution);
    const left = (residual / (1 - leverage)) ** 2;
    const z2 = left / (spread + ((leverage / (1 - leverage)) * spread) / weight);
    const student = Math.min(1, (prior.robustFreedom + 1) / (prior.robustFreedom + z2));
    const next = 0.5 * weight + 0.5 * student;
    weights[trial] = next;
    const share = variance / spread;
    squares += next * share ** 2 * residual ** 2;
    freedom += share * (next - leverage);
  });
  const found = squares / (prior.readingWorth + freedom);
  return { variance: Math.max(prior.leastReading ** 2, found), freedom };
}

/** x' V x of a sparse row. */
export function quadratic(row: DesignRow, covariance: readonly Float64Array[]): number {
  let sum = 0;
  row.places.forEach((place, k) => {
    const line = covariance[place] as Float64Array;
    row.places.forEach((other, m) => {
      sum += (row.values[k] as number) * (row.values[m] as number) * (line[other] as number);
    });
  });
  return sum;
}

/** The spread of groups about the shop that makes this log the most likely, of the few that are tried. */
function bestGroupFactor(state: FitState, variance: number): number {
  let best = 1;
  let most = -Infinity;
  for (const factor of state.prior.groupFactors) {
    const likely =
      logLikelihood(state, variance, factor) - Math.log(factor) ** 2 / state.prior.groupFactorSpread;
    if (likely > most) {
      most = likely;
      best = factor;
    }
  }
  return best;
}

/** Log density of the gaps but for what does not change with the factor. */
function logLikelihood(state: FitState, variance: number, factor: number): number {
  const { parts, solution, precision, right } = solveOnce(state, variance, factor);
  let quadratics = 0;
  right.forEach((value, index) => {
    quadratics += value * (solution[index] as number);
  });
  const priorLogDeterminant = precision.reduce((sum, value) => sum + Math.log(value), 0);
  return 0.5 * quadratics - 0.5 * (parts.logDeterminant - priorLogDeterminant);
}
