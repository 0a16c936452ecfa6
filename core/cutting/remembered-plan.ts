import { isRefusal, type Refusal } from "../units/refusal";
import type { CuttingPlan } from "./cutting-plan";
import type { CuttingQuestion } from "./cutting-question";
import { planCutting } from "./plan-cutting";

const plans = new Map<string, CuttingPlan>();
/** sizes of a few schedules */
const MOST = 100;
/** Limits are taken in steps of this ratio, so that another size's effort seldom makes this a new question. */
const STEP = 1.25;

/**
 * The plan of `planCutting`, remembered: a formula is asked again with each count that is edited, and the
 * other sizes stay as they were, also one that the clock cut short.
 */
export function rememberedPlan(asked: CuttingQuestion): CuttingPlan | Refusal {
  const question = { ...asked, timeLimit: STEP ** Math.floor(Math.log(asked.timeLimit) / Math.log(STEP)) };
  const key = JSON.stringify(question);
  const known = plans.get(key);
  if (known !== undefined) return known;
  const plan = planCutting(question);
  if (isRefusal(plan)) return plan;
  const [oldest] = plans.keys();
  if (plans.size >= MOST && oldest !== undefined) plans.delete(oldest);
  plans.set(key, plan);
  return plan;
}
