import type { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";

const NEAR_ONE = 0.01;
const FEWEST_ROWS_FOR_A_HABIT = 5;
const NEARLY_ALL = 0.8;

/** A factor within 0.4 % of which at least four in five typed masses lie, and which is off 1 by over 1 %. */
export function commonMassFactor(answers: AnswersOfBars): number | null {
  const odd = answers.those(oddMassRatio);
  const count = answers.count(hasMassRatio);
  // where most are near 1 the middle one is too
  if (count < FEWEST_ROWS_FOR_A_HABIT || (count - odd.length) * 2 > count + 1) return null;
  const ratios = Float64Array.from(answers.bars, ({ massRatio }) => massRatio ?? Number.NaN).sort();
  const known = ratios.subarray(0, count);
  const median = known[known.length >> 1] as number;
  if (isNearOne(median) || median < 0.8 || median > 1.25) return null;
  const near = known.filter((ratio) => Math.abs(ratio / median - 1) <= 0.004).length;
  return near / known.length >= NEARLY_ALL ? Math.round(median * 1000) / 1000 : null;
}

const isNearOne = (ratio: number): boolean => Math.abs(ratio - 1) <= NEAR_ONE;
const hasMassRatio = ({ row, massEach }: BarFacts): boolean =>
  row.mass !== null && row.mass > 0 && massEach !== null && massEach > 0;
const oddMassRatio = ({ massRatio }: BarFacts): number | null =>
  massRatio === null || isNearOne(massRatio) ? null : massRatio;
