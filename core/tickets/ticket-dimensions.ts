import type { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { tolerancedBar, toleranceOf } from "../bar/tolerance-of";
import { freeLeg } from "../bending/bend-marks";
import type { PlanarPath } from "../shapes/path";
import { isRefusal } from "../units/refusal";
import type { TicketCut, TicketDimension } from "./ticket";

/** The length to cut and its tolerance: as typed, else as computed; null where there is neither. */
export function ticketCut(facts: BarFacts): TicketCut | null {
  const computed = facts.cut?.length ?? null;
  const toCut = barLength(facts, "to cut");
  if (isRefusal(toCut)) return null;
  const { length, from } = toCut;
  return {
    length,
    from,
    computed,
    tolerance: toleranceOf(facts.standard, "cut length", length, tolerancedBar(facts)),
  };
}

/** The dimensions as scheduled, each with what it may deviate by. */
export function ticketDimensions(facts: BarFacts, path: PlanarPath | null): TicketDimension[] {
  const bar = tolerancedBar(facts);
  const { definition, standard } = facts;
  const free = path === null ? null : freeLegName(path);
  const dimension = (name: string, length: number, tolerated: boolean): TicketDimension => ({
    name,
    length,
    free: name === free,
    tolerance: !tolerated || name === free ? null : toleranceOf(standard, "bent dimension", length, bar),
  });
  if (definition === null) {
    return (path?.legs ?? []).map((leg, index) => dimension(`leg ${index + 1}`, leg.length, true));
  }
  return definition.dims.flatMap((letter) => {
    const length = facts.dim(letter);
    if (length === null || definition.counts?.includes(letter) === true) return [];
    return [dimension(letter, length, letter !== "R" && !facts.isStraight)];
  });
}

/** mm by which a typed length is over (below 0: under) the one that its legs need; 0 where it is theirs. */
export function overLegs({ lengthJudgement }: BarFacts, cut: TicketCut | null): number {
  const isOther = lengthJudgement.kind === "differs" || lengthJudgement.kind === "slip";
  return cut === null || cut.computed === null || !isOther ? 0 : cut.length - cut.computed;
}

/** Letter or number of the leg that takes up tolerance; null for a straight bar. */
export function freeLegName(path: PlanarPath): string | null {
  if (path.turns.length === 0) return null;
  const leg = freeLeg(path);
  return path.legs[leg]?.letter ?? `leg ${leg + 1}`;
}
