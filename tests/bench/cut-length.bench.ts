import { WORKSHEET_FUNCTIONS } from "../../core/formulas";
import type { Block } from "../../core/formulas/worksheet-function";

const ROWS = 100_000;
const RUNS = 7;
const SIZES = [8, 10, 12, 16, 20, 25, 32, 40];
/** Ten shapes mixed; each number is a dim of that many steps of a tenth of a millimetre, or a slope. */
const SHAPES: readonly (readonly [string, number, slope?: readonly [at: number, of: number]])[] = [
  ["11", 2],
  ["21", 3],
  ["13", 3],
  ["26", 4, [3, 1]],
  ["51", 3],
  ["31", 4],
  ["41", 5],
  ["33", 3],
  ["12", 3],
  ["15", 3, [1, 2]],
];

/** CUTLENGTH over one block, every row another bar: first call and the median of several. */
export default {
  name: "CUTLENGTH over a block",
  async run() {
    const [shapes, sizes, dims] = block(20_260_101);
    const definition = WORKSHEET_FUNCTIONS.get("CUTLENGTH");
    if (definition === undefined) throw new Error("CUTLENGTH is missing");
    const times: number[] = [];
    let refused = 0;
    let total = 0;
    for (let run = 0; run < RUNS; run += 1) {
      const from = performance.now();
      const answer = definition.call([shapes, sizes, dims], { defaultStandard: "BS8666:2005" });
      times.push(performance.now() - from);
      refused = answer.filter(([cell]) => typeof cell !== "number").length;
      total = answer.reduce((sum, [cell]) => sum + (typeof cell === "number" ? cell : 0), 0);
    }
    const median = [...times].sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? 0;
    return {
      figures: {
        rows: ROWS,
        "first call, ms": Math.round(times[0] ?? 0),
        "median, ms": Math.round(median),
        "rows a second": Math.round(ROWS / (median / 1000)),
        "rows refused": refused,
        "sum of lengths, m": Math.round(total / 1000),
      },
    };
  },
};

function block(seed: number): [Block, Block, Block] {
  const random = generator(seed);
  const shapes: string[][] = [];
  const sizes: string[][] = [];
  const dims: (number | null)[][] = [];
  for (let row = 0; row < ROWS; row += 1) {
    const [code, count, slope] = SHAPES[row % SHAPES.length]!;
    const list: (number | null)[] = Array.from({ length: 6 }, (_, at) =>
      at < count ? 300 + Math.floor(random() * 20_000) / 10 : null,
    );
    if (slope !== undefined) list[slope[0]] = 20 + Math.floor((list[slope[1]] ?? 0) * 5) / 10;
    shapes.push([code]);
    sizes.push([`H${SIZES[Math.floor(random() * SIZES.length)]}`]);
    dims.push(list);
  }
  return [shapes, sizes, dims];
}

function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
