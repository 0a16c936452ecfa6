import type { Cell } from "../schedule/sheet";
import { isRefusal, refusalText } from "../units/refusal";
import { toTenth } from "../units/to-tenth";
import { COMPENSATION_ARGUMENTS, type Compensation, readCompensation } from "./compensation";
import { blockFunction } from "./lift";

const HEADER: readonly Cell[] = ["compensated angle", "released low", "released high", "trials", "rests on"];
const MOST_TOLD = 3;

/**
 * BAR.TRIALFIT: header and one row: the compensated angle, the 90 % interval of the released angle, the
 * trials of the same group, and in words what it rests on. Shows a guess where COMPENSATED refuses, called so.
 */
export const TRIALFIT = blockFunction({
  name: "TRIALFIT",
  description: "Compensated angle with its 90 % interval and what it rests on; a guess is called one",
  args: COMPENSATION_ARGUMENTS,
  block(row, blocks) {
    const found = readCompensation(row, blocks);
    if (isRefusal(found)) return found;
    const { fit } = found;
    const byPlain = found.method === "plain" && !isRefusal(found.plain) ? found.plain : null;
    const angle = byPlain ?? fit.angle;
    const shift = angle - fit.angle;
    return [HEADER, [angle, fit.low + shift, fit.high + shift, fit.trials, wordsOf(found, byPlain)]];
  },
});

function wordsOf({ fit, method, plain, log }: Compensation, byPlain: number | null): string {
  const words: string[] = [];
  if (byPlain !== null) words.push(`plain rule; fit bends to ${toTenth(fit.angle)}`);
  else if (method === "plain" && isRefusal(plain)) words.push(`a guess: ${refusalText(plain)}`);
  if (byPlain === null && fit.refusal !== null) words.push(`a guess: ${refusalText(fit.refusal)}`);
  words.push(...fit.rests);
  const unused = log.problems.map((problem) => refusalText(problem.reason));
  const rows = new Set(fit.group?.trials.map((trial) => trial.row));
  const shown = log.calibration.problems
    .filter((problem) => rows.has(problem.row))
    .map((problem) => refusalText(problem.reason));
  if (unused.length > 0)
    words.push(
      unused.length === 1 ? "1 row of the log not used" : `${unused.length} rows of the log not used`,
    );
  const told = [...unused, ...shown];
  words.push(...told.slice(0, MOST_TOLD));
  if (told.length > MOST_TOLD) words.push(`and ${told.length - MOST_TOLD} more`);
  return [...new Set(words)].join("; ");
}
