import { type Finding, SEVERITIES } from "../audit/finding";
import { limitsInForce, NO_CHANGED_LIMITS } from "../audit/limits";
import type { BarFacts } from "../bar/bar-facts";
import { barsAtOnce } from "../bending/bars-at-once";
import { steelNamed } from "../bending/steel-named";
import type { ScheduleHead } from "../schedule/schedule-head";
import { developPath } from "../shapes/developed-length";
import type { BarPath, PlanarPath } from "../shapes/path";
import type { ResolvedShape } from "../shapes/resolve-shape";
import { isRefusal, type Refusal, refusalText } from "../units/refusal";
import { cautionsFor } from "./cautions";
import { type BarToBend, type MachineTried, tryMachines, withoutMachine } from "./choose-machine";
import type { WantedFormer } from "./formers-on";
import type { Ticket, TicketAtOnce, TicketFormer, TicketGrade, TicketOrder, TicketWarning } from "./ticket";
import { ticketBends, warnOfHooks } from "./ticket-bends";
import { freeLegName, ticketCut, ticketDimensions, tolerancedBar } from "./ticket-dimensions";
import { toleranceOf } from "./tolerance-of";
import { warn } from "./warn";
import type { Yard } from "./yard";

export interface TicketQuestion {
  readonly facts: BarFacts;
  readonly yard: Yard;
  readonly head: ScheduleHead;
  /** what the audit found in this row */
  readonly findings: readonly Finding[];
}

/**
 * The ticket of one bar row. Nothing is left out silently: what cannot be said stands in `warnings`, in
 * `machine.reasons` or in a bend's `refusal`. No angle to bend to is given that trials do not bear.
 *
 * @example
 * const yard = yardOf(readShop(shopSheet, standard), standard);
 * makeTicket({ facts, yard, head: scheduleHead(reading), findings: [] }).bends[0]?.start; // mm
 */
export function makeTicket({ facts, yard, head, findings }: TicketQuestion): Ticket {
  const warnings = findings.filter(({ name }) => name !== SAID_BY_BENDS).map(warningOf);
  const steel = steelOf(facts);
  const shape = shapeInForce(facts, warnings);
  const path = shape === null ? null : pathToDraw(shape, warnings);
  const planar = path?.kind === "planar" && path.turns.length > 0 ? path : null;
  const cut = ticketCut(facts);
  if (yard.logRefusal !== null) warn(warnings, refusalText(yard.logRefusal), true);

  const bar = planar === null || shape === null ? null : barToBend(facts, shape, planar, steel);
  const tried = bar === null ? [] : tryMachines(yard, bar);
  const [best] = tried;
  const isSure = best !== undefined && best.reasons.length === 0;
  const used = best === undefined || best.cannot ? (bar === null ? null : withoutMachine(yard, bar)) : best;
  const laid =
    bar === null || shape === null || used === null ? [] : ticketBends(bar, shape, used, cut, warnings);
  if (bar !== null && used !== null) warnOfHooks(bar, used, laid, warnings);
  if (planar === null && path !== null && path.kind !== "planar")
    warn(
      warnings,
      "curved over its whole length: log the radius of trial pieces, not an angle",
      false,
      "note",
    );

  const massEach = facts.massEach;
  const largestSwing = laid.reduce<number | null>(
    (most, { swingRadius }) => (swingRadius === null ? most : Math.max(most ?? 0, swingRadius)),
    null,
  );
  const bendsAtOnce = best === undefined ? null : atOnceOf(best);
  const { row } = facts;
  return {
    sheet: facts.sheet.sheet.name,
    row: facts.sheet.sheet.top + row.row + 1,
    mark: row.mark,
    member: row.member,
    pour: row.pour,
    count: facts.count,
    size: facts.sizeName,
    diameter: facts.diameter,
    grade: steel,
    shape: row.shape,
    shapeWords: facts.definition?.words ?? null,
    standard: facts.standard.id,
    unit: facts.standard.unit,
    head,
    revision: row.revision ?? head.revision,
    cut,
    drawing:
      path === null || facts.diameter === null
        ? null
        : {
            path: planar === null ? path : (used?.path ?? path),
            diameter: facts.diameter,
            radius: shape?.radius ?? 0,
          },
    freeLeg: path?.kind === "planar" ? freeLegName(path) : null,
    dimensions: ticketDimensions(facts, path?.kind === "planar" ? path : null),
    toleranceCite: facts.standard.tolerances?.cite ?? null,
    formers: bar === null || used === null ? [] : formersOf(bar, used, row.former !== null, best),
    machine: {
      name: isSure ? (best.machine?.name ?? null) : null,
      reasons: isSure || bar === null ? [] : reasonsOf(tried, yard),
    },
    bends: laid,
    order: orderOf(bar, tried, used),
    bendsAtOnce,
    cutsAtOnce: cutsAtOnce(facts, yard, steel),
    swingRadius: largestSwing,
    massEach,
    massTotal: massEach === null || facts.count === null ? null : massEach * facts.count,
    warnings: byRank(warnings),
    cautions: cautionsFor({
      unit: facts.standard.unit,
      isBent: path?.kind === "planar" ? planar !== null : !facts.isStraight,
      hasHook: planar?.turns.some((turn) => Math.abs(turn.angle) > 179) ?? false,
      diameter: facts.diameter,
      yield: steel.yield,
      cutLength: cut?.length ?? null,
      massEach,
      handLift: limitsInForce(NO_CHANGED_LIMITS, facts.standard, yard.shop).handLift.value,
      swingRadius: largestSwing,
      turnHeight: turnHeight(used),
      bendsAtOnce: bendsAtOnce?.bars ?? null,
      needsTrial: laid.some((bend) => bend.compensated.angle === null),
      temperature: yard.shop?.limits.temperature ?? null,
      coldBending: facts.standard.coldBending?.value ?? null,
      words: facts.words,
    }),
  };
}

/** The audit's rule whose findings every bend of the ticket says for itself, without naming a guess. */
const SAID_BY_BENDS = "angle-without-trials";

function warningOf({ severity, outcome, message }: Finding): TicketWarning {
  return { severity, unsure: outcome === "unsure", text: message };
}

function byRank(warnings: readonly TicketWarning[]): TicketWarning[] {
  return [...warnings].sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity));
}

function steelOf(facts: BarFacts): TicketGrade {
  const steel = steelNamed(facts.row.grade, facts.row.size?.prefix ?? "", facts.standard);
  return { name: facts.grade?.name ?? facts.gradeName, ...steel };
}

/** The path; none of a ring or helix that is no wider than its own bar. */
function pathToDraw(shape: ResolvedShape, warnings: TicketWarning[]): BarPath | null {
  const { path, diameter, radius, standard } = shape;
  if (path === null || path.kind === "planar") return path;
  const developed = developPath(path, { diameter, radius, unit: standard.unit });
  if (!isRefusal(developed)) return path;
  warn(warnings, refusalText(developed), false, "unbendable");
  return null;
}

/** The shape about the former in force: as typed, else the least for this coating and grade. */
function shapeInForce(facts: BarFacts, warnings: TicketWarning[]): ResolvedShape | null {
  const { resolved, row } = facts;
  if (row.shape === null) {
    warn(warnings, "no shape is read from this row, so nothing is drawn or marked", true);
    return null;
  }
  if (resolved === null) {
    warn(warnings, "no bar size is read from this row, so nothing is drawn or marked", true);
    return null;
  }
  if (isRefusal(resolved)) {
    warn(warnings, refusalText(resolved), false, "unbendable");
    return null;
  }
  const least = facts.leastFormer?.value ?? null;
  if (row.former !== null || least === null || least === resolved.former.value) return resolved;
  const coated = facts.resolveWith(row.dims, least);
  return isRefusal(coated) ? resolved : coated;
}

function barToBend(facts: BarFacts, shape: ResolvedShape, path: PlanarPath, steel: TicketGrade): BarToBend {
  const prefix = facts.row.size?.prefix ?? "";
  return {
    path,
    diameter: shape.diameter,
    formers: path.turns.map((turn): WantedFormer => {
      const least = facts.leastFormer?.value ?? 0;
      if (turn.radius === null)
        return { diameter: shape.former.value, slack: 0, isLeast: facts.row.former === null, least: 0 };
      const width = 2 * turn.radius;
      const tolerance = toleranceOf(facts.standard, "bent dimension", width, tolerancedBar(facts));
      const slack = tolerance === null ? 0 : Math.min(tolerance.plus, tolerance.minus);
      return { diameter: width, slack, isLeast: false, least: Math.min(width, least) };
    }),
    steel: {
      grade: facts.row.grade,
      letter: prefix === "" ? null : prefix,
      yield: steel.yield,
      yieldSure: steel.sure,
    },
  };
}

function formersOf(
  bar: BarToBend,
  used: MachineTried,
  given: boolean,
  best: MachineTried | undefined,
): TicketFormer[] {
  const rack = best?.machine?.formers ?? null;
  const distinct = used.formers.flatMap((diameter, turn) =>
    used.formers.indexOf(diameter) === turn ? [{ diameter, wanted: bar.formers[turn] as WantedFormer }] : [],
  );
  return distinct.map(({ diameter, wanted }) => ({
    diameter,
    wanted: wanted.diameter,
    from: wanted.isLeast ? "standard's least" : given && wanted.slack === 0 ? "schedule" : "shape",
    inRack: rack === null ? null : rack.some((held) => Math.abs(held - diameter) < 0.5),
  }));
}

function reasonsOf(tried: readonly MachineTried[], yard: Yard): string[] {
  if (yard.shop === null) return ["the workbook has no Shop sheet, so no bender is known"];
  if (tried.length === 0) return ["the Shop sheet names no bender"];
  return tried.map(({ machine, reasons }) => {
    const name = machine?.name ?? "";
    const words = reasons.join("; ");
    return words.startsWith(name) ? words : `${name}: ${words}`;
  });
}

function orderOf(
  bar: BarToBend | null,
  tried: readonly MachineTried[],
  used: MachineTried | null,
): TicketOrder {
  const [best] = tried;
  if (bar === null) return { kind: "no bends" };
  if (best === undefined || best.machine === null)
    return {
      kind: "unsure",
      reason: "no bender is known, so no order of bends was searched: bends stand along the bar",
    };
  const { order, machine } = best;
  if (order === null)
    return { kind: "unsure", reason: "the bends need several formers, so their order was not searched" };
  if (isRefusal(order)) return { kind: "unsure", reason: refusalText(order) };
  if (order.kind === "blocked")
    return {
      kind: "blocked",
      machine: machine.name,
      reasons: best.reasons,
      sure: tried.every((one) => one.cannot),
    };
  const isBorne = used?.angles.every(({ shown }) => shown.angle !== null) ?? false;
  return {
    kind: "found",
    machine: machine.name,
    confirmed: best.reasons.length === 0 && isBorne,
    turnedOver: order.turnedOver,
    endForEnd: order.endForEnd,
  };
}

function atOnceOf({ machine, atOnce }: MachineTried): TicketAtOnce | null {
  return machine === null || atOnce === null ? null : atOnceWords(machine.name, atOnce);
}

function cutsAtOnce(facts: BarFacts, yard: Yard, steel: TicketGrade): TicketAtOnce | null {
  const { diameter } = facts;
  if (diameter === null) return null;
  const all = (yard.shop?.cutters ?? []).map((cutter) =>
    atOnceWords(cutter.name, barsAtOnce(cutter, { diameter, yield: steel.yield }, "cut")),
  );
  return all.sort((a, b) => (b.bars ?? -1) - (a.bars ?? -1))[0] ?? null;
}

function atOnceWords(machine: string, answer: ReturnType<typeof barsAtOnce>): TicketAtOnce {
  return isRefusal(answer)
    ? { machine, bars: null, basis: null, reason: refusalText(answer as Refusal) }
    : { machine, bars: answer.bars, basis: answer.basis, reason: null };
}

function turnHeight(used: MachineTried | null): number | null {
  const order = used?.order ?? null;
  if (order === null || isRefusal(order) || order.kind !== "order") return null;
  const heights = order.bends.filter((bend) => bend.turnedOver).map((bend) => bend.height);
  return heights.length === 0 ? null : Math.max(...heights);
}
