import { calibrate } from "../../../core/bending/calibrate";
import { compensatedAngle } from "../../../core/bending/compensated-angle";
import type { Trial } from "../../../core/bending/trial";
import { isRefusal } from "../../../core/units/refusal";
import { simulatedShop, trialOf } from "./simulated-shop";

export interface SimulationRow {
  readonly trials: number;
  /** degrees, mean size of the error of production bars bent by the fit, and by the plain rule */
  readonly fit: number;
  readonly plain: number;
  /** share of next readings inside the 90 % interval */
  readonly covered: number;
}

const OTHER_GROUPS = 8;
const BARS = 20;
const MOST_TRIALS = 5;

/**
 * Shops whose steel follows another law than the fit: each has eight other groups with one to four trials
 * in its log, makes 0 to 5 trials of the group in question, and then bends 20 bars of mixed heats at what it
 * is told, in whole degrees. `triedAt` is where trials are made; null makes them where the rule says.
 */
export function simulateShops(shops: number, wanted: number, triedAt: number | null): SimulationRow[] {
  const sums = Array.from({ length: MOST_TRIALS + 1 }, () => ({ fit: 0, plain: 0, covered: 0, bars: 0 }));
  for (let seed = 0; seed < shops; seed += 1) runShop(seed, wanted, triedAt, sums);
  return sums.map((sum, trials) => ({
    trials,
    fit: sum.fit / sum.bars,
    plain: trials === 0 ? Number.NaN : sum.plain / sum.bars,
    covered: sum.covered / sum.bars,
  }));
}

function runShop(
  seed: number,
  wanted: number,
  triedAt: number | null,
  sums: { fit: number; plain: number; covered: number; bars: number }[],
): void {
  const shop = simulatedShop(7001 + seed, OTHER_GROUPS + 1);
  const [own, ...others] = shop.groups;
  if (own === undefined) return;
  let row = 0;
  const tryOut = (group: typeof own, bentTo: number, heat: number): Trial => {
    row += 1;
    return trialOf(
      group,
      row,
      bentTo,
      shop.read(bentTo - shop.bendOneBar(group, bentTo, heat), { blunders: true }),
    );
  };
  const log = others.flatMap((group) => {
    const heat = shop.newHeat();
    const count = 1 + Math.floor(shop.random() * 4);
    return Array.from({ length: count }, () =>
      tryOut(group, [90, 90, 90, 45, 135][Math.floor(shop.random() * 5)] ?? 90, heat),
    );
  });
  const question = {
    angle: wanted,
    diameter: own.diameter,
    former: own.former,
    grade: "B500B",
    yield: 500,
    machine: "M1",
  };
  const byFit: Trial[] = [];
  const byPlain: Trial[] = [];
  sums.forEach((sum) => {
    const told = compensatedAngle(calibrate([...log, ...byFit]), question);
    if (isRefusal(told)) throw new Error("the simulation asked for no bend");
    const bentTo = Math.round(told.angle);
    // the rule itself, however far from what was tried it is carried
    const springback = calibrate(byPlain).groups[0]?.plain ?? null;
    const plainBentTo = springback === null ? null : Math.round(wanted + springback);
    for (let bar = 0; bar < BARS; bar += 1) {
      const released = bentTo - shop.bendOneBar(own, bentTo, shop.newHeat());
      const reading = shop.read(released, { blunders: false }) - (bentTo - told.angle);
      sum.fit += Math.abs(released - wanted);
      sum.covered += reading >= told.low && reading <= told.high ? 1 : 0;
      sum.bars += 1;
      if (plainBentTo === null) continue;
      sum.plain += Math.abs(plainBentTo - shop.bendOneBar(own, plainBentTo, shop.newHeat()) - wanted);
    }
    byFit.push(tryOut(own, triedAt ?? bentTo, shop.newHeat()));
    byPlain.push(tryOut(own, triedAt ?? plainBentTo ?? wanted, shop.newHeat()));
  });
}
