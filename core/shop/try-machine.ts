import { barsAtOnce } from "../bending/bars-at-once";
import { bendOrder } from "../bending/bend-order";
import { blockedBendText } from "../bending/blocked-bend-text";
import { canBeBent } from "../bending/can-be-bent";
import type { Machine } from "../bending/machine";
import { type Tooling, toolingOf } from "../bending/tooling";
import type { PlanarPath } from "../shapes/path";
import { isRefusal, refusalText } from "../units/refusal";
import type { BarToBend, BentTo } from "./bar-to-bend";
import { faultsOfLegs } from "./faults-of-legs";
import { formersOn, pathAbout } from "./formers-on";
import { isHindrance, type MachineFault, type MachineUnknown, type NotSearched } from "./machine-fault";

/** What one bender makes of a bar. */
export interface MachineVerdict {
  readonly machine: Machine;
  /** `known` to make it; `possible` where a fault is a guess or something is not written down */
  readonly can: "known" | "possible" | "cannot";
  readonly faults: readonly MachineFault[];
  readonly unknown: readonly MachineUnknown[];
  /** mm, one a turn: what the rack has for it, else what is wanted */
  readonly formers: readonly number[];
  /** the path about these formers */
  readonly path: PlanarPath;
  readonly bentTo: BentTo;
}

/** What a first look found, and whether a search of orders can still tell something. */
export interface FirstLook extends Omit<MachineVerdict, "can"> {
  readonly isSearchable: boolean;
}

/**
 * What speaks against a bar on one bender without searching an order: plate, rack, largest angle, tooling,
 * legs. `bentToOn` gives the angles about formers of the rack; `notSearched` is why no order will be.
 */
export function lookAtMachine(
  bar: BarToBend,
  machine: Machine,
  bentToOn: (formers: readonly number[]) => BentTo,
  notSearched: NotSearched | null,
): FirstLook {
  const faults: MachineFault[] = [];
  const unknown: MachineUnknown[] = [];
  checkPlate(bar, machine, faults, unknown);
  const { formers, largestAngle, guardRadius } = machine;
  if (formers === null) unknown.push({ kind: "rack" });
  if (largestAngle === null) unknown.push({ kind: "largest angle" });
  if (guardRadius === null) unknown.push({ kind: "guard" });
  if (notSearched !== null) unknown.push({ kind: "not searched", why: notSearched });
  const held = formersOn(machine, bar.formers);
  const taken = held.map(({ diameter }) => diameter);
  const path = pathAbout(bar.path, taken);
  const bentTo = bentToOn(taken);
  const look = { machine, faults, unknown, formers: taken, path, bentTo };
  for (const kind of ["none", "larger"] as const) {
    const turn = held.findIndex((one) => one.as === kind);
    if (turn < 0) continue;
    const former = bar.formers[turn]!.diameter;
    if (kind === "larger") faults.push({ kind: "larger former", former, larger: taken[turn]! });
    else {
      faults.push({ kind: "former", former, held: formers ?? [] });
      return { ...look, isSearchable: false };
    }
  }
  checkAngles(bar, machine, bentTo, faults);
  const tooling = dress(machine, bar.diameter, taken, faults, unknown);
  if (tooling === null) return { ...look, isSearchable: false };
  faults.push(...faultsOfLegs({ bar, path, tooling, bentTo, canTurn: !has(faults, "angle") }));
  return { ...look, isSearchable: notSearched === null && !faults.some(isHindrance) };
}

/** The verdict: where the look allows it an order of bends is searched, and what it finds counts. */
export function verdictOf(bar: BarToBend, { isSearchable, ...look }: FirstLook): MachineVerdict {
  const found = isSearchable ? orderFault(bar, look) : null;
  const faults = found === null ? look.faults : [...look.faults, found];
  const hindrances = faults.filter(isHindrance);
  const isSure = hindrances.some((fault) => !("sure" in fault) || fault.sure);
  const isKnown = hindrances.length === 0 && look.unknown.length === 0;
  return { ...look, faults, can: isSure ? "cannot" : isKnown ? "known" : "possible" };
}

const has = (faults: readonly MachineFault[], kind: MachineFault["kind"]): boolean =>
  faults.some((fault) => fault.kind === kind);

function checkPlate(
  bar: BarToBend,
  machine: Machine,
  faults: MachineFault[],
  unknown: MachineUnknown[],
): void {
  const { steel, diameter } = bar;
  const plate = barsAtOnce(machine, { diameter, yield: steel.yield }, "bend");
  if (isRefusal(plate)) unknown.push({ kind: "plate", reason: plate });
  else if (plate.bars === 0)
    faults.push({ kind: "plate", plate, sure: plate.basis === "plate" && steel.isYieldSure });
}

function checkAngles(bar: BarToBend, machine: Machine, bentTo: BentTo, faults: MachineFault[]): void {
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
    sure: bentTo.guessed === 0 || wanted > largestAngle,
  });
}

/** The tooling of each turn; null where it is not written down or does not fit. */
function dress(
  machine: Machine,
  diameter: number,
  formers: readonly number[],
  faults: MachineFault[],
  unknown: MachineUnknown[],
): readonly Tooling[] | null {
  const all: Tooling[] = [];
  for (const former of formers) {
    const tooling = toolingOf({ ...machine, formers: null }, { diameter, former });
    if (!isRefusal(tooling)) {
      all.push(tooling);
      continue;
    }
    if (tooling.kind === "value") faults.push({ kind: "pin", reason: refusalText(tooling) });
    else unknown.push({ kind: "tooling", reason: tooling });
    return null;
  }
  return all;
}

/** What speaks against every order of bends; null where one can be bent, or where that cannot be told. */
function orderFault(bar: BarToBend, { machine, path, formers, bentTo }: Omit<FirstLook, "isSearchable">) {
  const question = {
    path,
    diameter: bar.diameter,
    former: formers[0] ?? 0,
    machine: { ...machine, formers: null },
    bentTo: bentTo.angles,
  };
  const can = canBeBent(question);
  if (can === true) return null;
  // an estimate of springback must not condemn a bar that can be bent to its wanted angles
  const wanted = path.turns.map(({ angle }) => Math.abs(angle));
  const sure = bentTo.guessed === 0 || canBeBent({ ...question, bentTo: wanted }) !== true;
  const order = isRefusal(can) ? can : bendOrder(question);
  if (isRefusal(order)) {
    const reason = refusalText(order, bar.unit);
    return order.kind === "value" ? ({ kind: "order", reason, sure: true } as const) : null;
  }
  if (order.kind === "order") {
    return { kind: "swing", reach: order.swingRadius, guard: machine.guardRadius ?? 0, sure } as const;
  }
  const reason = order.blocked.map((blocked) => blockedBendText(blocked, order.made)).join("; ");
  return { kind: "order", reason, sure } as const;
}
