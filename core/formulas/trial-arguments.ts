import { type Calibration, calibrate } from "../bending/calibrate";
import type { CompensationQuestion } from "../bending/compensated-angle";
import type { Machine } from "../bending/machine";
import { readTrials, type TrialLogReader } from "../bending/read-trials";
import { toolingOf } from "../bending/tooling";
import type { TrialProblem } from "../bending/trial-problem";
import type { Cell } from "../schedule/sheet";
import type { Grade, SizeReading, Standard } from "../standards/port";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { isBlankCell } from "./lift";
import type { Block, FunctionArgument, FunctionEnvironment } from "./worksheet-function";

const methodUnknown = defineRefusal(
  "method-unknown",
  "value",
  `method "{typed}" is none: write fit or plain`,
);
const angleUnread = defineRefusal(
  "angle-unread",
  "value",
  `angle "{typed}" is no number: give the bend angle in degrees, 0 is straight`,
);
const machineNotOnShop = defineRefusal(
  "machine-not-on-shop-sheet",
  "value",
  `machine "{typed}" is none of the Shop sheet and of no trial: it names {held}`,
);

export const ANGLE_ARGUMENT: FunctionArgument = {
  name: "angle",
  description: "Wanted bend angle of the released bar in degrees: 0 is straight, 180 a hook",
  optional: false,
  lifts: "column",
};
export const GRADE_ARGUMENT: FunctionArgument = {
  name: "grade",
  description: "Grade as the trials name it; the size's letter where it is left out",
  optional: true,
  lifts: "column",
};
export const TRIALS_ARGUMENT: FunctionArgument = {
  name: "trials",
  description:
    "Trial log with its header row: size, former, grade, bent to, released; also machine, form, heat, date",
  optional: true,
  lifts: "table",
};
export const METHOD_ARGUMENT: FunctionArgument = {
  name: "method",
  description: "fit, or plain for the median springback of the same group; fit where it is left out",
  optional: true,
  lifts: "column",
};
export const MACHINE_ARGUMENT: FunctionArgument = {
  name: "machine",
  description: "Machine as the trials and the Shop sheet name it",
  optional: true,
  lifts: "column",
};

/** A trial log, read and fitted. */
export interface FittedLog {
  readonly calibration: Calibration;
  readonly problems: readonly TrialProblem[];
}

export interface SteelCells {
  readonly size: SizeReading;
  readonly former: number;
  readonly grade: Cell;
  readonly machine: Cell;
}

/** The trials of a block, fitted; no block and a blank one are an empty log. The same cells are fitted once. */
export function readTrialLog(
  block: Block | undefined,
  standard: Standard,
  environment: FunctionEnvironment,
): FittedLog | Refusal {
  const isEmpty = block === undefined || block.every((row) => row.every(isBlankCell));
  if (isEmpty) return { calibration: calibrate([]), problems: [] };
  const key = JSON.stringify([standard.id, environment.machines ?? null, block]);
  const known = fitted.get(key);
  if (known !== undefined) return known;
  const reading = readTrials(block, logReader(standard));
  const log = isRefusal(reading)
    ? reading
    : {
        calibration: calibrate(reading.trials, { leversOf: (bar) => leversOf(environment.machines, bar) }),
        problems: reading.problems,
      };
  if (fitted.size >= MOST_LOGS) fitted.delete(fitted.keys().next().value as string);
  fitted.set(key, log);
  return log;
}

const fitted = new Map<string, FittedLog | Refusal>();
const MOST_LOGS = 12;

export function readAngle(cell: Cell): number | Refusal {
  const typed = typeof cell === "string" ? cell.trim().replace(/\s*(°|deg|degrees)$/i, "") : cell;
  const angle = typeof typed === "string" && typed !== "" ? Number(typed) : typed;
  return typeof angle === "number" && Number.isFinite(angle)
    ? angle
    : angleUnread({ typed: String(cell ?? "") });
}

export function readMethod(cell: Cell): "fit" | "plain" | Refusal {
  const method = cell === null ? "fit" : String(cell).trim().toLowerCase();
  return method === "fit" || method === "plain" ? method : methodUnknown({ typed: String(cell) });
}

/** What the calibration is asked about one bend of a bar. */
export function questionOf(
  angle: number,
  cells: SteelCells,
  standard: Standard,
  environment: FunctionEnvironment,
  log: FittedLog,
): CompensationQuestion | Refusal {
  const machine = textOf(cells.machine);
  const row = machineNamed(environment.machines, machine);
  if (machine !== null && row === null && environment.machines !== undefined) {
    const inLog = log.calibration.groups.some((group) => sameText(group.machine, machine));
    const held = environment.machines.map((one) => one.name).join(", ") || "no machine";
    if (!inLog) return machineNotOnShop({ typed: machine, held });
  }
  const { diameter, prefix } = cells.size;
  const steel = steelOf(textOf(cells.grade), prefix, standard);
  return {
    angle,
    diameter,
    former: cells.former,
    grade: textOf(cells.grade),
    letter: prefix === "" ? null : prefix,
    yield: steel.yield,
    yieldSure: steel.sure,
    machine,
    largestAngle: row?.largestAngle ?? null,
    levers: leversOf(environment.machines, { machine, diameter, former: cells.former }),
  };
}

function logReader(standard: Standard): TrialLogReader {
  return {
    readSize: (typed) => standard.readSize(typed),
    readGrade: (typed, prefix) => ({ name: typed, yield: steelOf(typed, prefix, standard).yield }),
    readLength(typed, unit) {
      // a former below zero is told as such, not as a length that cannot be read
      if (Number(typed) <= 0) return Number(typed);
      const length = parseLength(typed, unit ?? standard.unit);
      return isRefusal(length) ? null : length;
    },
  };
}

/** The nominal yield of a grade or a size's letter; the standard's usual one, not sure, where neither says. */
function steelOf(name: string | null, prefix: string, standard: Standard): { yield: number; sure: boolean } {
  const grades = standard.grades.filter((grade) => grade.yield > 0);
  const named = name === null ? undefined : grades.find((grade) => isCalled(grade, name));
  const lettered = prefix === "" ? undefined : grades.find((grade) => isCalled(grade, prefix));
  const found = named ?? (name === null ? lettered : undefined);
  if (found !== undefined) return { yield: found.yield, sure: true };
  // "B500B" or "500" under a standard that does not list it
  const digits = /(?<!\d)(\d{3})(?!\d)/.exec(name ?? "")?.[1];
  if (digits !== undefined) return { yield: Number(digits), sure: true };
  return { yield: grades[0]?.yield ?? USUAL_YIELD, sure: false };
}

/** MPa, where a standard lists no grade with its yield */
const USUAL_YIELD = 500;

function isCalled(grade: Grade, name: string): boolean {
  return sameText(grade.name, name) || grade.prefixes.some((prefix) => sameText(prefix, name));
}

function leversOf(
  machines: readonly Machine[] | undefined,
  bar: { machine: string | null; diameter: number; former: number },
): number | null {
  const machine = machineNamed(machines, bar.machine);
  if (machine === null) return null;
  const tooling = toolingOf({ ...machine, formers: null }, bar);
  return isRefusal(tooling) ? null : tooling.pinLever + tooling.backRestDistance;
}

function machineNamed(machines: readonly Machine[] | undefined, name: string | null): Machine | null {
  if (name === null) return null;
  return machines?.find((machine) => sameText(machine.name, name)) ?? null;
}

function sameText(a: string | null, b: string): boolean {
  return a !== null && a.trim().toLowerCase() === b.trim().toLowerCase();
}

function textOf(cell: Cell): string | null {
  if (cell === null || typeof cell === "object") return null;
  const text = String(cell).trim();
  return text === "" ? null : text;
}
