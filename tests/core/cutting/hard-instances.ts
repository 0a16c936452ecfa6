import type { CuttingQuestion } from "../../../core/cutting";
import type { Instance } from "./instances";
import { seededRandom } from "./instances";

/** An instance cut out of whole bars, so that the least number of bars is known: that many. */
export interface KnownInstance extends Instance {
  readonly least: number;
}

/**
 * Kinds that the cutting-stock literature calls hard, made anew here: every bar cut in exactly three and
 * nothing left over (Falkenauer, Journal of Heuristics 2, 1996), of a thousand units and of many thousands,
 * where hardly a length comes twice, of narrow and of wide lengths, and bars of some thousands of units filled
 * to the end with pieces of a hundred lengths and more.
 */
export const HARD_INSTANCES: readonly KnownInstance[] = [
  ...[20, 40, 83, 167].flatMap((bars) => [1, 2].map((seed) => threes(seed * 1000 + bars, bars, 1000))),
  ...[1, 2, 3].map((seed) => threes(seed, 67, 2500)),
  threes(11, 134, 10_000),
  threes(4, 167, 10_000),
  ...[1, 2].map((seed) => wideThrees(seed, 67, 2500)),
  wideThrees(3, 134, 10_000),
  wideThrees(8, 200, 20_000),
  wideThrees(6, 134, 10_000, { least: 0.1, most: 0.5 }),
  wideThrees(7, 134, 10_000, { least: 0.2, most: 0.6 }),
  ...[1, 2].flatMap((seed) => [
    filled(seed, { bars: 60, stock: 1000, least: 60, parts: [2, 4], slack: 3 }),
    filled(seed + 10, { bars: 80, stock: 1000, least: 20, parts: [2, 4], slack: 0 }),
    filled(seed + 20, { bars: 50, stock: 10_000, least: 500, parts: [2, 5], slack: 0 }),
    filled(seed + 30, { bars: 60, stock: 10_000, least: 1000, parts: [2, 4], slack: 40 }),
    filled(seed + 40, { bars: 30, stock: 1000, least: 150, parts: [4, 6], slack: 0 }),
    filled(seed + 50, { bars: 40, stock: 12_000, least: 800, parts: [2, 6], slack: 20 }),
  ]),
];

function threes(seed: number, bars: number, stock: number): KnownInstance {
  const random = seededRandom(seed);
  const part = stock / 1000;
  const lengths: number[] = [];
  for (let bar = 0; bar < bars; bar += 1) {
    const first = Math.floor(part * 380) + Math.floor(random() * (part * 110 + 1));
    const second = Math.floor(part * 250) + Math.floor(random() * ((stock - first) / 2 - part * 250 + 1));
    lengths.push(first, second, stock - first - second);
  }
  return {
    name: `${bars} bars of ${stock} in exactly three, seed ${seed}`,
    least: bars,
    question: question(lengths, stock),
  };
}

/**
 * Threes of every length from a tenth of the stock on: many bars may hold four, and nearly none of a plan do;
 * none of it do where no piece is over a half.
 */
function wideThrees(
  seed: number,
  bars: number,
  stock: number,
  part = { least: 0.1, most: 0.8 },
): KnownInstance {
  const random = seededRandom(seed);
  const [least, most] = [stock * part.least, stock * part.most];
  const whole = (): number => least + Math.floor(random() * (most - least));
  const lengths: number[] = [];
  while (lengths.length < bars * 3) {
    const [first, second] = [whole(), whole()];
    const third = stock - first - second;
    if (third >= least && third <= most) lengths.push(first, second, third);
  }
  return {
    name: `${bars} bars of ${stock} in three from ${part.least} to ${part.most} of it, seed ${seed}`,
    least: bars,
    question: question(lengths, stock),
  };
}

interface Filling {
  readonly bars: number;
  readonly stock: number;
  readonly least: number;
  readonly parts: readonly [number, number];
  /** units that a bar may leave over */
  readonly slack: number;
}

function filled(seed: number, { bars, stock, least, parts, slack }: Filling): KnownInstance {
  const random = seededRandom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(random() * (to - from + 1));
  const lengths: number[] = [];
  for (let bar = 0; bar < bars; bar += 1) {
    const count = whole(parts[0], parts[1]);
    const room = stock - count * least - whole(0, slack);
    const cuts = Array.from({ length: count - 1 }, () => whole(0, room)).sort((a, b) => a - b);
    [...cuts, room].forEach((cut, at) => {
      lengths.push(least + cut - (cuts[at - 1] ?? 0));
    });
  }
  const over = slack === 0 ? "nothing over" : `at most ${slack} over`;
  return {
    name: `${bars} bars of ${stock} in ${parts[0]} to ${parts[1]}, ${over}, seed ${seed}`,
    least: bars,
    question: question(lengths, stock),
  };
}

function question(lengths: readonly number[], stock: number): CuttingQuestion {
  return {
    pieces: lengths.map((length) => ({ length, count: 1 })),
    stock: [{ length: stock, count: null, remnant: false }],
    endCrop: 0,
    kerf: 0,
    timeLimit: 2000,
  };
}
