import { barsAtOnce } from "../bending/bars-at-once";
import { bendOrder } from "../bending/bend-order";
import { blockedBendText } from "../bending/blocked-bend-text";
import { canBeBent } from "../bending/can-be-bent";
import { hookGap } from "../bending/hook-gap";
import type { Machine } from "../bending/machine";
import { leastLegs, type Tooling, toolingOf } from "../bending/tooling";
import { centreLine, setBack } from "../shapes/centre-line";
import type { PlanarPath } from "../shapes/path";
import type { LengthUnit } from "../units/length-unit";
import { isRefusal, refusalText } from "../units/refusal";
import type { MachineFault } from "./machine-fault";

/** One bent bar as a bender must take it. */
export interface BarForMachines {
  /** mm */
  readonly diameter: number;
  /** mm, one for each different one that the turns ask for */
  readonly formers: readonly number[];
  /** the former was asked for, so that the next larger one is not what was meant */
  readonly isFormerAsked: boolean;
  /** mm by which a former of the rack may differ: more where it follows from a width with its tolerance */
  readonly formerSlack: number;
  /** mm, of the standard; 0 where it holds none */
  readonly leastFormer: number;
  /** MPa */
  readonly yield: number;
  /** false where no grade is said and the standard's usual one was taken */
  readonly isYieldSure: boolean;
  readonly path: PlanarPath;
  /** in which reasons are worded */
  readonly unit: LengthUnit;
  /** mm, clear inside width of a closed link; null for any other bar */
  readonly linkInside: number | null;
}

/** Degrees to bend to, one a turn, and whether trials bear them. */
export interface BentTo {
  readonly angles: readonly number[];
  readonly sure: boolean;
}

export interface MachineJudgement {
  readonly faults: readonly MachineFault[];
  /** something that is needed is not written down, so that no fault is no pass */
  readonly isUnknown: boolean;
}

/** What a first look found, and what the search of orders needs. */
export interface FirstLook extends MachineJudgement {
  /** mm, the former of the rack that it would be bent round; null where there is none */
  readonly former: number | null;
  /** null where the search cannot be made, or would tell nothing new */
  readonly ready: { readonly machine: Machine; readonly former: number; readonly bentTo: BentTo } | null;
}

/**
 * What speaks against a bar on one bender without searching an order: plate, rack, largest angle, tooling,
 * legs. `bentToOn` gives the angles for a former of the rack.
 */
export function lookAtMachine(
  bar: BarForMachines,
  machine: Machine,
  bentToOn: (former: number) => BentTo,
): FirstLook {
  const faults: MachineFault[] = [];
  const { formers, largestAngle, guardRadius } = machine;
  const plate = barsAtOnce(machine, bar, "bend");
  const isBlank = isRefusal(plate) || formers === null || largestAngle === null || guardRadius === null;
  if (!isRefusal(plate) && plate.bars === 0) {
    faults.push({ kind: "plate", plate, sure: plate.basis === "plate" && bar.isYieldSure });
  }
  const former = formerOn(machine, bar, faults);
  if (former === null) return { faults, isUnknown: isBlank, former, ready: null };
  const bentTo = bentToOn(former);
  checkAngles(bar, machine, bentTo, faults);
  const tooling = toolingOf({ ...machine, formers: null }, { diameter: bar.diameter, former });
  if (isRefusal(tooling)) {
    const isFault = tooling.kind === "value";
    if (isFault) faults.push({ kind: "pin", reason: refusalText(tooling, bar.unit) });
    return { faults, isUnknown: isBlank || !isFault, former, ready: null };
  }
  checkLegs(bar, tooling, bentTo, faults);
  const isReady = faults.every(({ kind }) => kind === "larger former");
  return { faults, isUnknown: isBlank, former, ready: isReady ? { machine, former, bentTo } : null };
}

/** What speaks against every order of bends; null where one can be bent, or where that cannot be told. */
export function orderFault(
  bar: BarForMachines,
  { machine, former, bentTo }: NonNullable<FirstLook["ready"]>,
): MachineFault | null {
  const question = {
    path: bar.path,
    diameter: bar.diameter,
    former,
    machine: { ...machine, formers: null },
    bentTo: bentTo.angles,
  };
  const can = canBeBent(question);
  if (can === true || isRefusal(can)) return null;
  const order = bendOrder(question);
  if (isRefusal(order)) return null;
  if (order.kind === "order") {
    return { kind: "swing", reach: order.swingRadius, guard: machine.guardRadius ?? 0 };
  }
  const reason = order.blocked.map((blocked) => blockedBendText(blocked, order.made)).join("; ");
  return { kind: "order", reason, sure: true };
}

/** mm within which a former of the rack is the one that is named */
export const SAME_FORMER = 0.5;

/** mm: the former to work with; the next larger one where the standard's least is not in the rack. */
function formerOn(machine: Machine, bar: BarForMachines, faults: MachineFault[]): number | null {
  const [first = 0] = bar.formers;
  const { formers: held } = machine;
  if (held === null) return first;
  const inRack = bar.formers.map((former) => nearestIn(held, former, bar));
  const missing = bar.formers.find((_, index) => inRack[index] === undefined);
  if (missing === undefined) return inRack[0] ?? first;
  const larger = bar.isFormerAsked
    ? undefined
    : [...held].sort((a, b) => a - b).find((former) => former > missing);
  if (larger === undefined) {
    faults.push({ kind: "former", former: missing, held });
    return null;
  }
  faults.push({ kind: "larger former", former: missing, larger });
  return larger;
}

function nearestIn(
  held: readonly number[],
  wanted: number,
  { formerSlack, leastFormer }: BarForMachines,
): number | undefined {
  const least = Math.min(wanted, leastFormer) - SAME_FORMER;
  return [...held]
    .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))
    .find((former) => former >= least && Math.abs(former - wanted) <= formerSlack);
}

function checkAngles(bar: BarForMachines, machine: Machine, bentTo: BentTo, faults: MachineFault[]): void {
  const { largestAngle } = machine;
  if (largestAngle === null) return;
  const farthest = bentTo.angles.indexOf(Math.max(...bentTo.angles));
  const angle = bentTo.angles[farthest] as number;
  if (angle <= largestAngle + 1e-9) return;
  const wanted = Math.abs(bar.path.turns[farthest]?.angle ?? 0);
  faults.push({
    kind: "angle",
    bend: farthest + 1,
    wanted,
    bentTo: angle,
    largest: largestAngle,
    sure: bentTo.sure || wanted > largestAngle,
  });
}

function checkLegs(bar: BarForMachines, tooling: Tooling, bentTo: BentTo, faults: MachineFault[]): void {
  const { diameter, path, linkInside } = bar;
  const least = leastLegs(tooling);
  if (linkInside !== null && linkInside < least.insideOfLink) {
    faults.push({ kind: "link", inside: linkInside, least: least.insideOfLink });
    return;
  }
  // a larger former than the path's own: every turn is bent round it
  const turns = path.turns.map((turn) => ({ ...turn, radius: tooling.former / 2 }));
  const line = centreLine({ ...path, turns }, { diameter, radius: tooling.former / 2 });
  const canTurn = !faults.some(({ kind }) => kind === "angle");
  path.turns.forEach((turn, index) => {
    if (Math.abs(turn.angle) !== 180 || !canTurn) return;
    const tail = Math.min(line.straights[index] as number, line.straights[index + 1] as number);
    const springback = (bentTo.angles[index] as number) - 180;
    const { former, largestAngle } = tooling;
    const hook = hookGap({ diameter, former, yield: bar.yield, tail, springback, largestAngle });
    if (hook.closes) {
      faults.push({ kind: "hook", bend: index + 1, tail, lean: hook.lean, former, sure: bentTo.sure });
    }
  });
  const legs = endLegs(bar, line, tooling, bentTo).filter((leg) => leg.length < leg.least - 1e-6);
  // of a bar with one bend both ends answer for the same bend: the shorter one is at fault
  const [shortest] = [...legs].sort((a, b) => a.length - b.length);
  if (shortest === undefined) return;
  for (const leg of path.turns.length === 1 ? [shortest] : legs) faults.push({ kind: "leg", ...leg });
}

/** Both end legs with the least that their bend needs, whichever side swings and whatever is bent before. */
function endLegs(
  bar: BarForMachines,
  line: {
    readonly straights: readonly number[];
    readonly arcs: readonly number[];
    readonly developed: number;
  },
  tooling: Tooling,
  bentTo: BentTo,
): { leg: string; length: number; least: number }[] {
  const { legs, turns } = bar.path;
  const need = leastLegs(tooling);
  return [0, turns.length - 1].map((bend, end) => {
    const leg = end === 0 ? 0 : legs.length - 1;
    const straight = line.straights[leg] as number;
    const angle = Math.abs(turns[bend]?.angle ?? 0);
    const overbent =
      (Math.max(0, (bentTo.angles[bend] as number) - angle) * Math.PI * (tooling.former + bar.diameter)) /
      360;
    const others = line.developed - straight - (line.arcs[bend] as number);
    const swings = need.straight + overbent;
    // a back-rest may bear on a bend that is made already, where there is one
    const canSwing = others >= need.held || turns.length > 1;
    const canBeHeld = others >= swings;
    const enough = Math.min(canSwing ? swings : Infinity, canBeHeld ? need.held : Infinity);
    const least =
      (Number.isFinite(enough) ? enough : swings) + setBack(angle, tooling.former / 2, bar.diameter);
    return {
      leg: legs[leg]?.letter ?? String(leg + 1),
      length: straight + setBack(angle, tooling.former / 2, bar.diameter),
      least,
    };
  });
}
