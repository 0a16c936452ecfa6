import { bendMarks, type WorkStep } from "../bending/bend-marks";
import { hookGap } from "../bending/hook-gap";
import { developPath } from "../shapes/developed-length";
import type { ResolvedShape } from "../shapes/resolve-shape";
import type { BarToBend } from "../shop/bar-to-bend";
import { isRefusal, refusalText } from "../units/refusal";
import type { BarOnMachine } from "./bar-on-machine";
import type { TicketBend, TicketCut, TicketWarning } from "./ticket";
import { warn } from "./warn";

/** Bends in working order where one was found, else along the path; none where they cannot be marked. */
export function ticketBends(
  bar: BarToBend,
  shape: ResolvedShape,
  used: BarOnMachine,
  cut: TicketCut | null,
  warnings: TicketWarning[],
): TicketBend[] {
  const developed = developPath(used.path, {
    diameter: bar.diameter,
    radius: shape.radius,
    unit: shape.standard.unit,
  });
  if (isRefusal(developed)) {
    warn(warnings, refusalText(developed), false, "unbendable");
    return [];
  }
  if (cut === null) {
    warn(warnings, "no cut length is read or computed, so no bend is marked", true);
    return [];
  }
  const found =
    used.order !== null && !isRefusal(used.order) && used.order.kind === "order" ? used.order : null;
  const steps: WorkStep[] =
    found === null
      ? bar.path.turns.map((_, bend) => ({ bend: bend + 1, swinging: "last end" }))
      : found.bends.map(({ bend, swinging }) => ({ bend, swinging }));
  const marks = bendMarks({
    path: used.path,
    diameter: bar.diameter,
    radius: shape.radius,
    cutLength: cut.length,
    order: steps,
  });
  if (isRefusal(marks)) {
    warn(warnings, refusalText(marks), false, "unbendable");
    return [];
  }
  return steps.map(({ bend }, place): TicketBend => {
    const mark = marks[bend - 1]!;
    const ordered = found?.bends[place];
    return {
      ...mark,
      former: used.formers[bend - 1] as number,
      held: mark.swinging === "last end" ? "first end" : "last end",
      compensated: used.angles[bend - 1]!,
      turnedOver: ordered?.turnedOver ?? false,
      endForEnd: ordered?.endForEnd ?? false,
      swingRadius: ordered?.swingRadius ?? null,
      notes: ordered?.notes ?? [],
    };
  });
}

/** A hook of 180 whose tail meets the held leg before it is bent far enough. */
export function warnOfHooks(
  bar: BarToBend,
  used: BarOnMachine,
  bends: readonly TicketBend[],
  warnings: TicketWarning[],
): void {
  const last = bar.path.turns.length;
  for (const { bend, turn, compensated, former } of bends) {
    const isEnd = bend === 1 || bend === last;
    if (Math.abs(turn) < 179 || !isEnd || compensated.angle === null) continue;
    const tail = Math.max(0, (bar.path.legs[bend === 1 ? 0 : last]?.length ?? 0) - former / 2 - bar.diameter);
    const hook = hookGap({
      diameter: bar.diameter,
      former,
      yield: bar.steel.yield,
      tail,
      springback: compensated.angle - Math.abs(turn),
      largestAngle: used.machine?.largestAngle ?? null,
    });
    if (!hook.closes) continue;
    const text = `hook at bend ${bend}: the tail leans ${Math.round(hook.lean)} mm while it is bent beyond 180, and the legs stand ${Math.round(former)} mm apart: bend a trial, or shorten the tail with the designer's leave`;
    warn(warnings, text, false, "unbendable");
  }
}
