import { type CompensatedAngle, compensatedAngle, plainAngle } from "../bending/compensated-angle";
import type { FittedLog } from "../bending/fit-trial-log";
import { leastFormer } from "../shapes/least-former";
import type { Standard } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";
import {
  FORMER_ARGUMENT,
  gradeHeld,
  gradeOfSize,
  readFormer,
  readSize,
  readStandard,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
} from "./bar-arguments";
import type { RowReader } from "./lift";
import {
  ANGLE_ARGUMENT,
  GRADE_ARGUMENT,
  MACHINE_ARGUMENT,
  METHOD_ARGUMENT,
  questionOf,
  readAngle,
  readMethod,
  readTrialLog,
  TRIALS_ARGUMENT,
} from "./trial-arguments";
import type { Block, FunctionArgument } from "./worksheet-function";

/** The arguments of COMPENSATED and TRIALFIT, in the order that workbooks store. */
export const COMPENSATION_ARGUMENTS: readonly FunctionArgument[] = [
  ANGLE_ARGUMENT,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
  FORMER_ARGUMENT,
  GRADE_ARGUMENT,
  TRIALS_ARGUMENT,
  METHOD_ARGUMENT,
  MACHINE_ARGUMENT,
];
const TRIALS = 5;

export interface Compensation {
  /** degrees wanted */
  readonly wanted: number;
  readonly method: "fit" | "plain";
  readonly fit: CompensatedAngle;
  /** degrees by the plain rule, or why there are none */
  readonly plain: number | Refusal;
  readonly log: FittedLog;
}

/** A row's question put to its trial log. Refuses cells that cannot be read and what is no bend. */
export function readCompensation(
  row: RowReader,
  blocks: readonly (Block | undefined)[],
): Compensation | Refusal {
  const wanted = readAngle(row.cell(0));
  if (isRefusal(wanted)) return wanted;
  const standard = readStandard(row.cell(2), row);
  if (isRefusal(standard)) return standard;
  const size = readSize(row.cell(1), standard);
  if (isRefusal(size)) return size;
  const method = readMethod(row.cell(6));
  if (isRefusal(method)) return method;
  const grade = gradeHeld(row.cell(4), standard) ?? gradeOfSize(size, standard);
  const former = formerOf(row, standard, size.diameter, grade);
  if (isRefusal(former)) return former;
  const log = readTrialLog(blocks[TRIALS], standard, row.environment);
  if (isRefusal(log)) return log;
  const cells = { size, former, grade: row.cell(4), machine: row.cell(7) };
  const question = questionOf(wanted, cells, standard, row.environment, log);
  if (isRefusal(question)) return question;
  const fit = compensatedAngle(log.calibration, question);
  if (isRefusal(fit)) return fit;
  return { wanted, method, fit, plain: plainAngle(log.calibration, question), log };
}

function formerOf(
  row: RowReader,
  standard: Standard,
  diameter: number,
  grade: string | undefined,
): number | Refusal {
  const given = readFormer(row.cell(3), standard);
  if (given !== null) return given;
  const least = leastFormer(standard, diameter, "main", grade);
  return isRefusal(least) ? least : least.value;
}
