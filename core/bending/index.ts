export { type BarsAtOnce, barsAtOnce } from "./bars-at-once";
export {
  type BarEnd,
  type BendMark,
  bendMarks,
  freeLeg,
  type StopDistance,
  type WorkStep,
} from "./bend-marks";
export {
  type BendOrder,
  type BendOrderInput,
  type BlockedBend,
  bendOrder,
  type OrderedBend,
} from "./bend-order";
export { blockedBendText } from "./blocked-bend-text";
export { type Calibration, calibrate, groupName, type TrialGroup } from "./calibrate";
export { CALIBRATION_LIMITS } from "./calibration.data";
export {
  type CompensatedAngle,
  type CompensationQuestion,
  compensatedAngle,
  plainAngle,
} from "./compensated-angle";
export { type FittedLog, fitTrialLog, leversOf, machineNamed } from "./fit-trial-log";
export { type HookGap, hookGap } from "./hook-gap";
export type { Machine, RatedBars } from "./machine";
export { type FibreCircumstance, type OuterFibre, outerFibre } from "./outer-fibre";
export { type RadiusConcern, radiusAfterRelease, radiusConcerns } from "./radius-after-release";
export { readTrials, type TrialCell, type TrialLogReader, type TrialReading } from "./read-trials";
export { type RolledRadius, rolledRadius } from "./rolled-radius";
export { type SpringbackEstimate, springback } from "./springback";
export { steelNamed } from "./steel-named";
export { type LeastLegs, leastLegs, type Tooling, toolingOf } from "./tooling";
export { type BarForm, type Trial, trialSpringback } from "./trial";
export type { TrialProblem } from "./trial-problem";
