import type { Standard } from "../standards/port";
import { parseLength } from "../units/parse-length";
import { isRefusal, type Refusal } from "../units/refusal";
import { type Calibration, calibrate } from "./calibrate";
import type { Machine } from "./machine";
import { readTrials, type TrialCell, type TrialLogReader } from "./read-trials";
import { sameText, steelNamed } from "./steel-named";
import { toolingOf } from "./tooling";
import type { TrialProblem } from "./trial-problem";

/** A trial log, read and fitted. */
export interface FittedLog {
  readonly calibration: Calibration;
  readonly problems: readonly TrialProblem[];
}

/**
 * A block of trials with its header row, read by the standard in force and fitted; null is an empty log.
 * Levers come from the machines of the Shop sheet where it names them. Refuses a block without a header.
 */
export function fitTrialLog(
  block: readonly (readonly TrialCell[])[] | null,
  standard: Standard,
  machines: readonly Machine[] | undefined,
): FittedLog | Refusal {
  if (block === null) return emptyLog(standard);
  const reading = readTrials(block, logReader(standard));
  if (isRefusal(reading)) return reading;
  return {
    calibration: calibrate(reading.trials, {
      unit: standard.unit,
      leversOf: (bar) => leversOf(machines, bar),
    }),
    problems: reading.problems,
  };
}

/** A log without trials. */
export function emptyLog({ unit }: Standard): FittedLog {
  return { calibration: calibrate([], { unit }), problems: [] };
}

/** mm, both levers of a machine dressed for a bar; null where its row does not say them. */
export function leversOf(
  machines: readonly Machine[] | undefined,
  bar: { machine: string | null; diameter: number; former: number },
): number | null {
  const machine = machineNamed(machines, bar.machine);
  if (machine === null) return null;
  const tooling = toolingOf({ ...machine, formers: null }, bar);
  return isRefusal(tooling) ? null : tooling.pinLever + tooling.backRestDistance;
}

export function machineNamed(machines: readonly Machine[] | undefined, name: string | null): Machine | null {
  if (name === null) return null;
  return machines?.find((machine) => sameText(machine.name, name)) ?? null;
}

function logReader(standard: Standard): TrialLogReader {
  return {
    readSize: (typed) => standard.readSize(typed),
    readGrade: (typed, prefix) => ({ name: typed, yield: steelNamed(typed, prefix, standard).yield }),
    readLength(typed, unit) {
      // a former below zero is told as such, not as a length that cannot be read
      if (Number(typed) <= 0) return Number(typed);
      const length = parseLength(typed, unit ?? standard.unit);
      return isRefusal(length) ? null : length;
    },
  };
}
