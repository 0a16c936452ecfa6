import { bendOrder } from "../../core/bending/bend-order";
import { calibrate } from "../../core/bending/calibrate";
import { compensatedAngle } from "../../core/bending/compensated-angle";
import type { Machine } from "../../core/bending/machine";
import type { Trial } from "../../core/bending/trial";
import { barDrawing } from "../../core/shapes/bar-drawing";
import { barSvg } from "../../core/shapes/bar-svg";
import type { PlanarPath } from "../../core/shapes/path";
import { simulateShops } from "../core/bending/simulate-shops";
import { simulatedShop, trialOf } from "../core/bending/simulated-shop";
import type { Bench } from "./bench";

const GROUPS = 50;
const TRIALS_OF_A_GROUP = 10;
const MACHINE: Machine = {
  name: "bench",
  rated: [],
  formers: null,
  pins: [30],
  orbitRadius: 99,
  backRestDistance: 90,
  largestAngle: 190,
  guardRadius: 1200,
};
const SEVEN = bar([150, 300, 300, 300, 300, 300, 300, 150], [90, 90, -90, -90, 90, 90, -90]);
const NINE = bar(
  [150, 300, 300, 300, 300, 300, 300, 300, 300, 150],
  [90, 90, -90, -90, 90, 90, -90, -90, 90],
);
const LINK = bar([130, 200, 200, 200, 200, 130], [135, 90, 90, 90, 135]);
const DRAWINGS = 100;

const bench: Bench = {
  name: "trial log of 500 in 50 groups, order of bends, drawings",
  async run() {
    const trials = manyTrials();
    const fit = median(5, () => calibrate(trials));
    const calibration = calibrate(trials);
    const [first] = trials;
    const ask = median(20, () =>
      compensatedAngle(calibration, {
        angle: 90,
        diameter: first?.diameter ?? 16,
        former: first?.former ?? 64,
        grade: "B500B",
        yield: 500,
        machine: "M1",
      }),
    );
    const draw = median(3, () => {
      for (let at = 0; at < DRAWINGS; at += 1) {
        barSvg(barDrawing({ path: LINK, diameter: 10, radius: 20 }), {
          width: 360,
          height: 200,
          title: "link",
        });
      }
    });
    const [, one, , three] = simulateShops(200, 90, null);
    return {
      figures: {
        trials: trials.length,
        groups: calibration.groups.length,
        "fit, ms": round(fit),
        "one compensated angle, ms": round(ask),
        "order of 7 bends, first search, ms": round(once(() => search(SEVEN))),
        "order of 7 bends, ms": round(median(9, () => search(SEVEN))),
        "order of 9 bends, ms": round(median(5, () => search(NINE))),
        "order of a closed link of 5, ms": round(median(9, () => search(LINK))),
        "drawing of a closed link, ms": round(draw / DRAWINGS),
        "simulated error at 90, 1 trial, fit / plain": pair(one),
        "simulated error at 90, 3 trials, fit / plain": pair(three),
      },
    };
  },
};

export default bench;

function manyTrials(): Trial[] {
  const shop = simulatedShop(11, GROUPS);
  let row = 0;
  return shop.groups.flatMap((group) =>
    Array.from({ length: TRIALS_OF_A_GROUP }, (_, trial) => {
      row += 1;
      const bentTo = [90, 98, 45, 135][trial % 4] ?? 90;
      const released = shop.read(bentTo - shop.bendOneBar(group, bentTo, shop.newHeat()), { blunders: true });
      return trialOf(group, row, bentTo, released);
    }),
  );
}

function search(path: PlanarPath): void {
  bendOrder({
    path,
    diameter: 12,
    former: 48,
    machine: MACHINE,
    bentTo: path.turns.map((turn) => Math.abs(turn.angle) + 5),
  });
}

function bar(legs: readonly number[], turns: readonly number[]): PlanarPath {
  return {
    kind: "planar",
    legs: legs.map((length) => ({ length, free: false, letter: null })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane: true,
  };
}

function once(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function median(runs: number, work: () => void): number {
  const times = Array.from({ length: runs }, () => once(work));
  return times.sort((a, b) => a - b)[runs >> 1] ?? 0;
}

function pair(row: { fit: number; plain: number } | undefined): string {
  return row === undefined ? "" : `${row.fit.toFixed(2)} / ${row.plain.toFixed(2)}`;
}

function round(ms: number): number {
  return Math.round(ms * 10) / 10;
}
