import type { TrialGroup } from "../bending/calibrate";
import { compensatedAngle } from "../bending/compensated-angle";
import { machineNamed } from "../bending/fit-trial-log";
import type { Workshop } from "../shop/workshop";
import { isRefusal, type Refusal } from "../units/refusal";

/** What a group of bars is bent to for one wanted angle. Degrees. */
export interface CompensationPoint {
  readonly wanted: number;
  /** null where the trials do not bear it */
  readonly angle: number | null;
  /** half of the 90 % interval of the released angle; null with `angle` */
  readonly half: number | null;
  readonly plain: number | null;
  readonly refusal: Refusal | null;
}

/** One row of the wall chart: a size on a former, as the log has it. */
export interface CompensationLine {
  readonly group: TrialGroup;
  readonly points: readonly CompensationPoint[];
}

/** Bend angles that schedules ask for most. */
const WANTED = [45, 90, 135, 180] as const;

/** Compensated angles of every group of the log, by size and former; common bend angles unless given. */
export function compensationLines(
  workshop: Workshop,
  angles: readonly number[] = WANTED,
): CompensationLine[] {
  const { calibration } = workshop.log;
  const lines = calibration.groups.map((group): CompensationLine => {
    const largestAngle = machineNamed(workshop.shop.benders, group.machine)?.largestAngle ?? null;
    const { machine, diameter, former, grade, form, yield: yieldStress } = group;
    const points = angles.map((wanted): CompensationPoint => {
      const steel = { grade, yield: yieldStress, machine, form, largestAngle };
      const found = compensatedAngle(calibration, { angle: wanted, diameter, former, ...steel });
      const refusal = isRefusal(found) ? found : found.refusal;
      if (isRefusal(found) || refusal !== null)
        return { wanted, angle: null, half: null, plain: null, refusal };
      return { wanted, angle: found.angle, half: found.high - wanted, plain: found.plain, refusal: null };
    });
    return { group, points };
  });
  return lines.sort(
    (a, b) =>
      a.group.diameter - b.group.diameter ||
      a.group.former - b.group.former ||
      (a.group.machine ?? "").localeCompare(b.group.machine ?? ""),
  );
}
