import type { CuttingQuestion } from "../../../core/cutting";

/** A made-up instance small enough that every pattern can be listed. */
export interface Instance {
  readonly name: string;
  readonly question: CuttingQuestion;
}

/** A small generator of our own, so that instances stay the same everywhere. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

function pieces(seed: number, kinds: number, shortest: number, longest: number, most: number) {
  const random = seededRandom(seed);
  return Array.from({ length: kinds }, () => ({
    length: Math.round((shortest + random() * (longest - shortest)) / 25) * 25,
    count: 1 + Math.floor(random() * most),
  }));
}

const unlimited = (...lengths: number[]) =>
  lengths.map((length) => ({ length, count: null, remnant: false }));
const plain = { endCrop: 0, kerf: 0, timeLimit: 2000 };

/** One stock length of 12 m, as is common practice; pieces of the middling lengths that are hard to fit. */
const ONE_STOCK = [3, 4, 7, 11, 12, 17, 19, 23, 29, 31, 37, 41].map(
  (seed): Instance => ({
    name: `12 m stock, seed ${seed}`,
    question: { ...plain, pieces: pieces(seed, 7, 2200, 6500, 24), stock: unlimited(12000) },
  }),
);

const SEVERAL_STOCKS = [5, 13, 43, 47, 53, 59].map(
  (seed, index): Instance => ({
    name: `several stock lengths, some few, seed ${seed}`,
    question: {
      ...plain,
      pieces: pieces(seed, 6, 1800, 5800, 15),
      stock: [
        { length: 12000, count: index % 2 === 0 ? 9 : null, remnant: false },
        { length: 9000, count: index % 2 === 0 ? null : 6, remnant: false },
        { length: 6000, count: null, remnant: false },
      ],
    },
  }),
);

const SAWN = [61, 67, 71].map(
  (seed): Instance => ({
    name: `sawn with a 3 mm kerf and 40 mm end crop, seed ${seed}`,
    question: {
      pieces: pieces(seed, 6, 2000, 6000, 18),
      stock: unlimited(12000),
      endCrop: 40,
      kerf: 3,
      timeLimit: 2000,
    },
  }),
);

export const INSTANCES: readonly Instance[] = [...ONE_STOCK, ...SEVERAL_STOCKS, ...SAWN];

/** Bought in 12 m, with remnants on hand that cost nothing. */
export const WITH_REMNANTS: readonly Instance[] = [73, 79, 83, 89, 97, 101].map(
  (seed): Instance => ({
    name: `12 m stock and remnants on hand, seed ${seed}`,
    question: {
      ...plain,
      pieces: pieces(seed, 6, 1800, 5800, 12),
      stock: [
        ...unlimited(12000),
        ...pieces(seed + 1, 3, 2000, 8000, 5).map((rest) => ({ ...rest, remnant: true })),
      ],
    },
  }),
);
