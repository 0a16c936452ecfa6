import type { CompensationQuestion } from "../bending/compensated-angle";
import { emptyLog, type FittedLog, fitTrialLog, leversOf, machineNamed } from "../bending/fit-trial-log";
import { sameText, steelNamed } from "../bending/steel-named";
import type { Cell } from "../schedule/sheet";
import type { SizeReading, Standard } from "../standards/port";
import { defineRefusal, type Refusal } from "../units/refusal";
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
  if (block === undefined) return emptyLog(standard);
  // the rows of one call share its blocks, and mostly its standard
  if (last?.block === block && last.standard === standard && last.environment === environment)
    return last.log;
  const log = fittedOnce(block, standard, environment);
  last = { block, standard, environment, log };
  return log;
}

interface AskedLog {
  readonly block: Block;
  readonly standard: Standard;
  readonly environment: FunctionEnvironment;
  readonly log: FittedLog | Refusal;
}

let last: AskedLog | null = null;

function fittedOnce(block: Block, standard: Standard, environment: FunctionEnvironment): FittedLog | Refusal {
  let end = block.length;
  while (end > 0 && block[end - 1]!.every(isBlankCell)) end -= 1;
  if (end === 0) return emptyLog(standard);
  const filled = end === block.length ? block : block.slice(0, end);
  const key = JSON.stringify([standard.id, environment.machines ?? null, filled]);
  const known = fitted.get(key);
  if (known !== undefined) return known;
  const log = fitTrialLog(filled, standard, environment.machines);
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
  const steel = steelNamed(textOf(cells.grade), prefix, standard);
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

function textOf(cell: Cell): string | null {
  if (cell === null || typeof cell === "object") return null;
  const text = String(cell).trim();
  return text === "" ? null : text;
}
