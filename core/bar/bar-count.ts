import { MOST_BARS } from "../schedule/cells/most-bars";
import { defineRefusal, type Refusal } from "../units/refusal";
import type { BarFacts } from "./bar-facts";

const noCount = defineRefusal("bar-count-missing", "value", "no count: write how many bars");
const asksForNone = defineRefusal("bar-count-nought", "value", "its count is 0, so it asks for no bar");
const badCount = defineRefusal(
  "bar-count-bad",
  "value",
  "the count {count} is no number of bars: correct it",
);

/** Bars of a row in all; refuses a count that is not known, nought, or no number of bars. */
export function barCount({ count }: Pick<BarFacts, "count">): number | Refusal {
  if (count === null) return noCount({});
  if (count === 0) return asksForNone({});
  return count > 0 && count < MOST_BARS ? count : badCount({ count });
}
