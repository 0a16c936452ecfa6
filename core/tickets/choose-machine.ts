import { type BarsAtOnce, barsAtOnce } from "../bending/bars-at-once";
import { type BendOrder, bendOrder } from "../bending/bend-order";
import { blockedBendText } from "../bending/blocked-bend-text";
import type { CompensationQuestion } from "../bending/compensated-angle";
import { leversOf } from "../bending/fit-trial-log";
import type { Machine } from "../bending/machine";
import type { PlanarPath } from "../shapes/path";
import { isRefusal, type Refusal, refusalText } from "../units/refusal";
import { formersOn, type WantedFormer } from "./formers-on";
import { type AngleFound, ticketAngle } from "./ticket-angle";
import type { Yard } from "./yard";

/** A bar as a bender meets it. */
export interface BarToBend {
  readonly path: PlanarPath;
  readonly diameter: number;
  /** one a turn */
  readonly formers: readonly WantedFormer[];
  readonly steel: Pick<CompensationQuestion, "grade" | "letter" | "yield" | "yieldSure">;
}

/** What one bender, or none in particular, makes of a bar. */
export interface MachineTried {
  /** null where the bar is looked at without a machine */
  readonly machine: Machine | null;
  /** mm, one a turn: what is wanted, or what the rack has for it */
  readonly formers: readonly number[];
  /** the path about these formers */
  readonly path: PlanarPath;
  /** one a turn, along the path */
  readonly angles: readonly AngleFound[];
  readonly order: BendOrder | Refusal | null;
  readonly atOnce: BarsAtOnce | Refusal | null;
  /** why this bender is not known to make the bar; empty where it is */
  readonly reasons: readonly string[];
  /** some reason is that it cannot, not only that something is unknown */
  readonly cannot: boolean;
}

/**
 * The benders of the yard, the best first: those known to make the bar (rated, former in the rack, an
 * order found), then those with an order of which something else is unknown, then those that cannot, then
 * those of which nothing can be said. Alike, the one whose trials bear more of the angles stands before,
 * then the order of the Shop sheet.
 */
export function tryMachines(yard: Yard, bar: BarToBend): MachineTried[] {
  const tried = (yard.shop?.benders ?? []).map((machine) => tryMachine(yard, bar, machine));
  const rank = (one: MachineTried): number =>
    standing(one) * (bar.path.turns.length + 1) +
    one.angles.filter(({ shown }) => shown.angle === null).length;
  return tried.sort((a, b) => rank(a) - rank(b));
}

function standing({ reasons, cannot, order }: MachineTried): number {
  if (reasons.length === 0) return 0;
  if (cannot) return 2;
  return order === null || isRefusal(order) ? 3 : 1;
}

/** The bar without a machine: angles by the log alone, no order. */
export function withoutMachine(yard: Yard, bar: BarToBend): MachineTried {
  const formers = formersOn(null, bar.formers);
  return {
    machine: null,
    formers,
    path: pathAbout(bar.path, formers),
    angles: anglesOn(yard, bar, null, formers),
    order: null,
    atOnce: null,
    reasons: [],
    cannot: false,
  };
}

function tryMachine(yard: Yard, bar: BarToBend, machine: Machine): MachineTried {
  const reasons: string[] = [];
  let cannot = false;
  const never = (reason: string): void => {
    reasons.push(reason);
    cannot = true;
  };
  const atOnce = barsAtOnce(machine, { diameter: bar.diameter, yield: bar.steel.yield }, "bend");
  if (isRefusal(atOnce)) reasons.push(refusalText(atOnce));
  else if (atOnce.bars === 0) never(beyondPlate(machine, bar, atOnce));
  const formers = formersOn(machine, bar.formers);
  const path = pathAbout(bar.path, formers);
  const angles = anglesOn(yard, bar, machine, formers);
  const order = orderOn(path, bar.diameter, machine, angles);
  if (isRefusal(order)) {
    if (order.kind === "value") never(refusalText(order, yard.log.calibration.unit));
    else reasons.push(refusalText(order, yard.log.calibration.unit));
  } else if (order.kind === "blocked") {
    for (const blocked of order.blocked) never(blockedBendText(blocked, order.made));
  } else if (machine.formers === null) {
    reasons.push(`the formers in the rack of ${machine.name} are not written down`);
  }
  return { machine, formers, path, angles, order, atOnce, reasons, cannot };
}

/** Every turn about its own former of the rack. */
function pathAbout(path: PlanarPath, formers: readonly number[]): PlanarPath {
  const turns = path.turns.map((turn, index) => ({ ...turn, radius: (formers[index] as number) / 2 }));
  return { ...path, turns };
}

function anglesOn(
  yard: Yard,
  bar: BarToBend,
  machine: Machine | null,
  formers: readonly number[],
): AngleFound[] {
  return bar.path.turns.map((turn, index) => {
    const former = formers[index] as number;
    return ticketAngle(yard, {
      angle: Math.abs(turn.angle),
      diameter: bar.diameter,
      former,
      ...bar.steel,
      machine: machine?.name ?? null,
      largestAngle: machine?.largestAngle ?? null,
      levers: leversOf(yard.shop?.benders, {
        machine: machine?.name ?? null,
        diameter: bar.diameter,
        former,
      }),
    });
  });
}

function orderOn(
  path: PlanarPath,
  diameter: number,
  machine: Machine,
  angles: readonly AngleFound[],
): BendOrder | Refusal {
  // every turn brings its own radius, so the former of the whole bar is that of any of them
  const former = 2 * (path.turns[0]?.radius ?? 0);
  const search = (bentTo: readonly number[]): BendOrder | Refusal =>
    bendOrder({ path, diameter, former, machine, bentTo });
  const order = search(angles.map((angle) => angle.forClearance));
  if (isRefusal(order) || order.kind === "order" || angles.every(({ shown }) => shown.angle !== null))
    return order;
  // an estimate of springback must not condemn a bar that can be bent to its wanted angles
  return search(angles.map(({ forClearance, shown }, at) => shown.angle ?? wanted(path, at, forClearance)));
}

function wanted(path: PlanarPath, at: number, otherwise: number): number {
  const turn = path.turns[at];
  return turn === undefined ? otherwise : Math.abs(turn.angle);
}

function beyondPlate(machine: Machine, bar: BarToBend, { basis, row }: BarsAtOnce): string {
  const rated = `${row.bars} of ${short(row.diameter)} mm at ${row.yield ?? "?"} MPa`;
  const how = basis === "plate" ? "its plate" : "an estimate from its plate";
  return `one bar of ${short(bar.diameter)} mm at ${bar.steel.yield} MPa is beyond ${machine.name} by ${how} (${rated})`;
}

function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}
