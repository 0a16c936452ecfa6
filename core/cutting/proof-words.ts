import type { CuttingPlan } from "./cutting-plan";

/** Whether a plan is the least, and if not what bounds it; `printed` is the bound in the reader's unit. */
export function proofWords(plan: CuttingPlan, printed: string): string {
  if (plan.provenLeast) return "proven least";
  const cut = plan.isCutShort ? "; the search was cut short by the clock, asked again it may differ" : "";
  return `no plan buys less than ${printed}${cut}`;
}
