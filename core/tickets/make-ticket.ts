import { limitsInForce, NO_CHANGED_LIMITS } from "../audit/limits";
import type { BarFacts } from "../bar/bar-facts";
import { rowMass } from "../bar/bar-mass";
import { barToBend, machinesFor, steelOf } from "../bar/bar-on-machines";
import { leastInsideRadius } from "../bar/radius-of-width";
import { isSumOfLegs } from "../bar/sum-of-legs";
import { barsAtOnce } from "../bending/bars-at-once";
import type { Machine } from "../bending/machine";
import { courseNote, courseTrust, courseWarning } from "../shapes/course";
import type { ResolvedShape } from "../shapes/resolve-shape";
import type { BarToBend, WantedFormer } from "../shop/bar-to-bend";
import { reasonsAgainst } from "../shop/fault-text";
import type { MachineRanking } from "../shop/rank-machines";
import type { MachineVerdict } from "../shop/try-machine";
import type { Workshop } from "../shop/workshop";
import { isRefusal, type Refusal, refusalText } from "../units/refusal";
import { type BarOnMachine, onMachine, withoutMachine } from "./bar-on-machine";
import { cautionsFor } from "./cautions";
import { otherHeatWords } from "./other-heat";
import { byRank, known, namesOfRow, type RowQuestion, refusedWarning, warningsOf } from "./row-to-send";
import type { Ticket, TicketAtOnce, TicketFormer, TicketGrade, TicketOrder, TicketWarning } from "./ticket";
import { ticketBends, warnOfHooks } from "./ticket-bends";
import { freeLegName, overLegs, ticketCut, ticketDimensions } from "./ticket-dimensions";
import { warn } from "./warn";

export interface TicketQuestion extends RowQuestion {
  readonly workshop: Workshop;
}

/**
 * The ticket of one bar row. Nothing is left out silently: what cannot be said stands in `warnings`, in
 * `machine.reasons` or in a bend's `refusal`. No angle to bend to is given that trials do not bear.
 *
 * @example
 * const workshop = new Workshop(shopSheet, standard);
 * makeTicket({ facts, workshop, head: scheduleHead(reading), findings: [] }).bends[0]?.start; // mm
 */
export function makeTicket(question: TicketQuestion): Ticket {
  const { facts, workshop, findings } = question;
  const { shape: typedShape, head, remark, massEach, heats, waived, ...names } = namesOfRow(question);
  const { caution } = facts.standard;
  const warnings = warningsOf(question);
  if (facts.row.hidden) warn(warnings, "the row is hidden on the sheet, and counted all the same", false);
  const steel = gradeOf(facts, workshop);
  const shape = shapeOrWarning(facts, warnings);
  const path = shape?.path ?? null;
  const planar = path?.kind === "planar" && path.turns.length > 0 ? path : null;
  if (caution !== null) warn(warnings, `${facts.standard.id}: ${caution}`, true, "note");
  const cut = ticketCut(facts);
  const freeLeg = path?.kind === "planar" ? freeLegName(path) : null;
  const isTold = findings.some(({ name }) => name === "length-differs");
  if (freeLeg !== null && isSumOfLegs(facts) && !isTold) warn(warnings, SUM_OF_LEGS, false);
  if (workshop.logRefusal !== null) warn(warnings, refusalText(workshop.logRefusal), true);

  const ranking = planar === null ? null : machinesFor(facts, workshop);
  const bar = planar === null ? null : (ranking?.bar ?? barToBend(facts, workshop));
  const [best] = ranking?.verdicts ?? [];
  const isUsed = best !== undefined && best.can !== "cannot";
  const used = isUsed ? onMachine(workshop, bar!, best) : bar === null ? null : withoutMachine(workshop, bar);
  const course = shape === null ? null : courseWarning(shape);
  if (course !== null) warn(warnings, course, true);
  const isInDoubt = courseTrust(shape?.definition ?? null) === "in doubt";
  const laid =
    bar === null || shape === null || used === null || isInDoubt
      ? []
      : ticketBends(bar, shape, used, cut, warnings);
  if (bar !== null && used !== null) warnOfHooks(bar, used, laid, warnings);
  const otherHeat = otherHeatWords(laid, heats);
  if (otherHeat !== null)
    warn(warnings, otherHeat, heats.length === 0, heats.length === 0 ? "note" : "doubtful");
  if (planar === null && path !== null && path.kind !== "planar")
    warn(
      warnings,
      "curved over its whole length: log the radius of trial pieces, not an angle",
      false,
      "note",
    );

  const largestSwing = laid.reduce<number | null>(
    (most, { swingRadius }) => (swingRadius === null ? most : Math.max(most ?? 0, swingRadius)),
    null,
  );
  const bendsAtOnce = best === undefined ? null : bendsAtOnceOn(best.machine, bar!);
  const { row } = facts;
  return {
    ...names,
    diameter: facts.diameter,
    grade: steel,
    shape: typedShape,
    shapeWords: facts.definition?.words ?? null,
    standard: facts.standard.id,
    unit: facts.standard.unit,
    // a drawing that the row names stands before that of the title block
    head: { ...head, drawing: row.drawing ?? head.drawing },
    remark,
    revision: row.revision ?? head.revision,
    cut,
    drawing:
      path === null || facts.diameter === null
        ? null
        : {
            path: planar === null ? path : (used?.path ?? path),
            diameter: facts.diameter,
            radius: shape?.radius ?? 0,
            note: courseNote(shape?.definition ?? null),
          },
    freeLeg,
    freeLegOver: freeLeg === null ? 0 : overLegs(facts, cut),
    dimensions: ticketDimensions(facts, path?.kind === "planar" ? path : null),
    toleranceCite: facts.standard.tolerances?.cite ?? null,
    formers: bar === null || used === null ? [] : formersOf(facts, bar, used, row.former !== null, best),
    machine: {
      name: ranking?.made?.machine.name ?? null,
      reasons: bar === null || (ranking?.made ?? null) !== null ? [] : reasonsOf(ranking, workshop),
    },
    bends: laid,
    order: isInDoubt ? IN_DOUBT : orderOf(bar, ranking, used),
    bendsAtOnce,
    cutsAtOnce: cutsAtOnce(facts, workshop, steel),
    swingRadius: largestSwing,
    massEach,
    massTotal: known(rowMass(facts, "to cut")),
    heats,
    warnings: byRank(warnings),
    waived,
    cautions: cautionsFor({
      unit: facts.standard.unit,
      isBent: path?.kind === "planar" ? planar !== null : !facts.isStraight,
      hasHook: planar?.turns.some((turn) => Math.abs(turn.angle) > 179) ?? false,
      diameter: facts.diameter,
      yield: steel.yield,
      cutLength: cut?.length ?? null,
      massEach,
      handLift: limitsInForce(NO_CHANGED_LIMITS, facts.standard, workshop.shop).handLift.value,
      swingRadius: largestSwing,
      turnHeight: turnHeight(used),
      bendsAtOnce: bendsAtOnce?.bars ?? null,
      needsTrial: laid.some((bend) => bend.compensated.angle === null),
      temperature: workshop.shop.limits.temperature,
      coldBending: facts.standard.coldBending?.value ?? null,
      words: facts.words,
    }),
  };
}

/** That the list gives sums is one note of the sheet, which nobody at the bender sees. */
const SUM_OF_LEGS =
  "the length is the sum of the legs, more than they need: ask which of the two is to be cut, for the free leg takes up the rest";

const IN_DOUBT: TicketOrder = {
  kind: "unsure",
  reason: "the course of the bar is in doubt, so no stop and no angle is given",
};

function gradeOf(facts: BarFacts, workshop: Workshop): TicketGrade {
  const { yield: nominal, isYieldSure } = steelOf(facts, workshop);
  return { name: facts.grade?.name ?? facts.gradeName, yield: nominal, sure: isYieldSure };
}

/** The shape about the former in force; what keeps a row from having one is a warning. */
function shapeOrWarning(facts: BarFacts, warnings: TicketWarning[]): ResolvedShape | null {
  const { resolved, row } = facts;
  if (row.shape === null) {
    warn(warnings, "no shape is read from this row, so nothing is drawn or marked", true);
    return null;
  }
  if (resolved === null) {
    warn(warnings, "no bar size is read from this row, so nothing is drawn or marked", true);
    return null;
  }
  const refused = refusedWarning(facts);
  if (refused !== null) {
    warnings.push(refused);
    return null;
  }
  if (isRefusal(resolved)) return shapeByLength(facts);
  return facts.shapeInForce;
}

/** Of a straight bar that is scheduled by its length alone. */
function shapeByLength(facts: BarFacts): ResolvedShape | null {
  const { length } = facts.row;
  const shape = length === null ? null : facts.resolveWith([length]);
  return shape === null || isRefusal(shape) ? null : shape;
}

/** mm: formers are written in whole millimetres */
const ROUNDED = 0.5;

function formersOf(
  facts: BarFacts,
  bar: BarToBend,
  used: BarOnMachine,
  given: boolean,
  best: MachineVerdict | undefined,
): TicketFormer[] {
  const least = 2 * (leastInsideRadius(facts) ?? 0);
  const rack = best?.machine.formers ?? null;
  const distinct = used.formers.flatMap((diameter, turn) =>
    used.formers.indexOf(diameter) === turn ? [{ diameter, wanted: bar.formers[turn] as WantedFormer }] : [],
  );
  return distinct.map(({ diameter, wanted }) => ({
    diameter,
    wanted: wanted.diameter,
    from: wanted.isLeast ? "standard's least" : given && wanted.slack === 0 ? "schedule" : "shape",
    below: diameter < least - ROUNDED ? (facts.leastFormer?.value ?? null) : null,
    inRack: rack === null ? null : rack.some((held) => Math.abs(held - diameter) < 0.5),
  }));
}

function reasonsOf(ranking: MachineRanking | null, workshop: Workshop): string[] {
  if (workshop.sheet === null) return ["the workbook has no Shop sheet, so no bender is known"];
  if (workshop.shop.benders.length === 0) return ["the Shop sheet names no bender"];
  if (ranking === null) return ["it cannot be made as it is scheduled, so no bender was looked at"];
  return ranking.verdicts.map((verdict) => {
    const { name } = verdict.machine;
    const words = reasonsAgainst(verdict, ranking.bar).join("; ");
    return words.startsWith(name) ? words : `${name}: ${words}`;
  });
}

function orderOf(
  bar: BarToBend | null,
  ranking: MachineRanking | null,
  used: BarOnMachine | null,
): TicketOrder {
  if (bar === null) return { kind: "no bends" };
  const [best] = ranking?.verdicts ?? [];
  if (ranking === null || best === undefined)
    return {
      kind: "unsure",
      reason: "no bender is known, so no order of bends was searched: bends stand along the bar",
    };
  const machine = best.machine.name;
  if (best.can === "cannot") {
    const sure = ranking.verdicts.every(({ can }) => can === "cannot");
    return { kind: "blocked", machine, reasons: reasonsAgainst(best, bar), sure };
  }
  const order = used?.order ?? null;
  if (order === null || isRefusal(order) || order.kind === "blocked")
    return { kind: "unsure", reason: reasonsAgainst(best, bar).join("; ") };
  return {
    kind: "found",
    machine,
    confirmed: best.can === "known" && best.bentTo.guessed === 0,
    turnedOver: order.turnedOver,
    endForEnd: order.endForEnd,
  };
}

function bendsAtOnceOn(machine: Machine, { diameter, steel }: BarToBend): TicketAtOnce {
  return atOnceWords(machine.name, barsAtOnce(machine, { diameter, yield: steel.yield }, "bend"));
}

function cutsAtOnce(facts: BarFacts, workshop: Workshop, steel: TicketGrade): TicketAtOnce | null {
  const { diameter } = facts;
  if (diameter === null) return null;
  const all = workshop.shop.cutters.map((cutter) =>
    atOnceWords(cutter.name, barsAtOnce(cutter, { diameter, yield: steel.yield }, "cut")),
  );
  return all.sort((a, b) => (b.bars ?? -1) - (a.bars ?? -1))[0] ?? null;
}

function atOnceWords(machine: string, answer: ReturnType<typeof barsAtOnce>): TicketAtOnce {
  return isRefusal(answer)
    ? { machine, bars: null, basis: null, reason: refusalText(answer as Refusal) }
    : { machine, bars: answer.bars, basis: answer.basis, reason: null };
}

function turnHeight(used: BarOnMachine | null): number | null {
  const order = used?.order ?? null;
  if (order === null || isRefusal(order) || order.kind !== "order") return null;
  const heights = order.bends.filter((bend) => bend.turnedOver).map((bend) => bend.height);
  return heights.length === 0 ? null : Math.max(...heights);
}
