import type { CuttingQuestion } from "../../core/cutting";
import { planCutting } from "../../core/cutting/plan-cutting";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { HARD_INSTANCES } from "../core/cutting/hard-instances";
import { INSTANCES, seededRandom } from "../core/cutting/instances";

function timed(question: CuttingQuestion): string {
  const start = performance.now();
  const plan = planCutting(question);
  const ms = performance.now() - start;
  if (isRefusal(plan)) return refusalText(plan);
  const proof = plan.provenLeast ? "proven least" : "not proven";
  const bars = plan.boundIn === "bars";
  const got = bars ? plan.bars : plan.stockLength / 1000;
  const firstFit = bars ? plan.firstFit.bars : plan.firstFit.stockLength / 1000;
  const bound = bars ? plan.lowerBound : plan.lowerBound / 1000;
  const unit = bars ? "bars" : "m";
  return `${got} ${unit}, bound ${bound}, ${proof}; first-fit ${firstFit}; ${ms.toFixed(0)} ms`;
}

/** 60 lengths on a grid, up to 200 of each, from 12 m stock. */
function large(seed: number, grid: number): CuttingQuestion {
  const random = seededRandom(seed);
  return {
    pieces: Array.from({ length: 60 }, () => ({
      length: Math.round((500 + random() * 7500) / grid) * grid,
      count: 1 + Math.floor(random() * 200),
    })),
    stock: [{ length: 12000, count: null, remnant: false }],
    endCrop: 0,
    kerf: 0,
    timeLimit: 1000,
  };
}

export default {
  name: "cutting plans",
  async run() {
    const figures: Record<string, string> = {};
    for (const { name, question } of INSTANCES) figures[name] = timed(question);
    for (const { name, question, least } of HARD_INSTANCES)
      figures[`${name}: least ${least}`] = timed(question);
    for (const seed of [101, 102, 103]) {
      figures[`60 lengths, about 6,000 pieces, 25 mm grid, seed ${seed}`] = timed(large(seed, 25));
      figures[`60 lengths, about 6,000 pieces, 1 mm grid, seed ${seed}`] = timed(large(seed, 1));
    }
    return { figures };
  },
};
