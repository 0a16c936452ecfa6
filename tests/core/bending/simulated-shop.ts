import type { Trial } from "../../../core/bending/trial";

/**
 * A bending shop whose steel and machine follow another law than the fit: a numeric moment with yield
 * plateau and power hardening, an unloading modulus that has softened, play, a zero error, and a part that
 * builds up with the angle. Invented; seeded.
 */
export interface SimulatedShop {
  readonly groups: readonly SimulatedGroup[];
  /** degrees of springback of one bar, with its own heat and bar scatter */
  bendOneBar(group: SimulatedGroup, bentTo: number, heat: number): number;
  /** what is written down of a bar that kept `released` degrees */
  read(released: number, options: { blunders: boolean }): number;
  newHeat(): number;
  readonly random: () => number;
}

export interface SimulatedGroup {
  readonly diameter: number;
  readonly former: number;
  /** degrees of springback of a mean bar at a bend of so many degrees */
  springbackAt(bentTo: number): number;
}

const SIZES = [8, 10, 12, 16, 20, 25, 32];

export function simulatedShop(seed: number, groupCount: number): SimulatedShop {
  const random = mulberry(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const between = (low: number, high: number) => low + (high - low) * random();
  const levers = between(60, 160) + between(60, 160);
  const play = Math.max(0, 0.8 + 0.5 * normal()) + 0.4 * normal();
  const buildUp = between(0, 0.5);
  const readingError = [0.3, 0.5, 1][Math.floor(random() * 3)] as number;
  const readingStep = random() < 0.5 ? 0.5 : 1;
  const offset = Math.floor(random() * SIZES.length);
  const groups = Array.from({ length: groupCount }, (_, index) => {
    // each size once before any comes again on the next larger former
    const diameter = SIZES[(offset + index * 3) % SIZES.length] as number;
    const former = diameter * ((diameter <= 16 ? 4 : 7) + Math.floor(index / SIZES.length));
    const yieldStress = 500 * (1.1 + 0.06 * normal());
    const ratio = Math.max(1.08, 1.17 + 0.05 * normal());
    const unloading = 200000 / between(1.08, 1.22);
    const own = 1 + 0.08 * normal();
    const ownPlay = 0.3 * normal();
    const moment = momentOf(diameter, (former + diameter) / 2, yieldStress, ratio);
    const inertia = (Math.PI * diameter ** 4) / 64;
    const bend = (own * moment * ((former + diameter) / 2)) / (unloading * inertia);
    const legs = ((own * moment * levers) / (3 * 200000 * inertia)) * (180 / Math.PI);
    const springbackAt = (bentTo: number) =>
      bend * bentTo +
      legs * Math.min(1, bentTo / 15) +
      (play + ownPlay) * Math.min(1, bentTo / 8) +
      buildUp * (bentTo / 90) ** 2;
    return { diameter, former, springbackAt };
  });
  return {
    groups,
    random,
    newHeat: () => 1 + 0.05 * normal(),
    bendOneBar: (group, bentTo, heat) => group.springbackAt(bentTo) * heat * (1 + 0.04 * normal()),
    read(released, { blunders }) {
      const written = Math.round((released + readingError * normal()) / readingStep) * readingStep;
      if (!blunders || random() >= 0.04) return written;
      // a slip: five or ten degrees off on the protractor, or the angle between the legs
      return [written + 5, written - 5, written - 10, 180 - written][Math.floor(random() * 4)] as number;
    },
  };
}

/** A trial as it would stand in the shop's log. */
export function trialOf(group: SimulatedGroup, row: number, bentTo: number, released: number): Trial {
  return {
    row,
    machine: "M1",
    size: `H${group.diameter}`,
    diameter: group.diameter,
    former: group.former,
    grade: "B500B",
    yield: 500,
    form: "bar",
    heat: null,
    date: null,
    bentTo,
    released,
  };
}

/** Moment by the trapezium rule: elastic, plateau to 1.5 %, then a power law through the tensile strength. */
function momentOf(diameter: number, radius: number, yieldStress: number, ratio: number): number {
  const half = diameter / 2;
  const plateauEnd = 0.015;
  const uniform = 0.08;
  const power = Math.log(ratio * (1 + uniform)) / Math.log(uniform / plateauEnd);
  const stress = (strain: number) => {
    if (strain <= plateauEnd) return Math.min(yieldStress, 200000 * strain);
    return yieldStress * (strain / plateauEnd) ** power;
  };
  const strips = 400;
  let sum = 0;
  for (let strip = 1; strip < strips; strip += 1) {
    const y = (half * strip) / strips;
    sum += stress(y / radius) * y * 2 * Math.sqrt(half * half - y * y);
  }
  return 2 * sum * (half / strips);
}

/** Mulberry32: a small seeded generator of numbers from 0 to 1. */
function mulberry(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
