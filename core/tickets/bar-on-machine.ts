import { type BendOrder, bendOrder } from "../bending/bend-order";
import { leversOf } from "../bending/fit-trial-log";
import type { Machine } from "../bending/machine";
import type { PlanarPath } from "../shapes/path";
import type { BarToBend } from "../shop/bar-to-bend";
import { formersOn, pathAbout } from "../shop/formers-on";
import type { MachineVerdict } from "../shop/try-machine";
import type { Workshop } from "../shop/workshop";
import { isRefusal, type Refusal } from "../units/refusal";
import type { TicketAngle } from "./ticket";
import { ticketAngle } from "./ticket-angle";

/** A bar as its ticket lays it out: on the bender that was chosen, or on none in particular. */
export interface BarOnMachine {
  readonly machine: Machine | null;
  /** mm, one a turn */
  readonly formers: readonly number[];
  /** the path about these formers */
  readonly path: PlanarPath;
  /** one a turn, along the path */
  readonly angles: readonly TicketAngle[];
  /** null where none was searched */
  readonly order: BendOrder | Refusal | null;
}

/** The bar on a bender that is not known to be unable to make it, with its cheapest order of bends. */
export function onMachine(workshop: Workshop, bar: BarToBend, verdict: MachineVerdict): BarOnMachine {
  const { machine, formers, path, unknown } = verdict;
  const isSearched = !unknown.some(({ kind }) => kind === "not searched");
  return {
    machine,
    formers,
    path,
    angles: anglesOn(workshop, bar, machine, formers),
    order: isSearched ? orderOn(bar, verdict) : null,
  };
}

/** The bar without a machine: angles by the log alone, no order. */
export function withoutMachine(workshop: Workshop, bar: BarToBend): BarOnMachine {
  const formers = formersOn(null, bar.formers).map(({ diameter }) => diameter);
  return {
    machine: null,
    formers,
    path: pathAbout(bar.path, formers),
    angles: anglesOn(workshop, bar, null, formers),
    order: null,
  };
}

function anglesOn(
  workshop: Workshop,
  { path, diameter, steel }: BarToBend,
  machine: Machine | null,
  formers: readonly number[],
): TicketAngle[] {
  const name = machine?.name ?? null;
  return path.turns.map((turn, index) => {
    const former = formers[index] as number;
    return ticketAngle(workshop, {
      angle: Math.abs(turn.angle),
      diameter,
      former,
      grade: steel.grade,
      letter: steel.letter,
      yield: steel.yield,
      yieldSure: steel.isYieldSure,
      machine: name,
      largestAngle: machine?.largestAngle ?? null,
      levers: leversOf(workshop.shop.benders, { machine: name, diameter, former }),
    });
  });
}

function orderOn({ diameter }: BarToBend, { machine, formers, path, bentTo }: MachineVerdict) {
  const question = { path, diameter, former: formers[0] ?? 0, machine: { ...machine, formers: null } };
  const order = bendOrder({ ...question, bentTo: bentTo.angles });
  if (isRefusal(order) || order.kind === "order" || bentTo.guessed === 0) return order;
  // an estimate of springback must not keep from a trial a bar that can be bent to its wanted angles
  return bendOrder({ ...question, bentTo: path.turns.map(({ angle }) => Math.abs(angle)) });
}
