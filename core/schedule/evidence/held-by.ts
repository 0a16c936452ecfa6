import { GRADE, WEIGH } from "./evidence.data";
import type { Agreement } from "./reading-agreement";
import type { ColumnDecision, Weighed, Weighing } from "./weighed";

const AMOUNTS: ReadonlySet<string> = new Set(["mass", "totalLength", "bySize"]);

/** Why totals wait for the user; null where the rows confirm the reading, or nothing can. */
export function heldBy(
  { evidence, words }: Weighing,
  agreement: readonly Agreement[],
  decisions: readonly ColumnDecision[],
): Weighed["held"] {
  const asked = decisions.filter(({ verdict }) => verdict === "ask").map(({ column }) => column);
  if (asked.length > 0) return { why: "units-disagree", columns: asked };
  const { leastBars, holdsBelow } = WEIGH.value;
  const tested = agreement.filter(({ identity, bars }) => AMOUNTS.has(identity) && bars >= leastBars);
  if (tested.length > 0 && tested.every(({ share }) => share < holdsBelow)) {
    return { why: "nothing-agrees", columns: [...new Set(tested.flatMap(({ columns }) => columns))] };
  }
  const isOpen = evidence?.isSymmetric === true && evidence.margin < GRADE.value.margin;
  const { lengthColumn = null, countColumns = [] } = evidence ?? {};
  if (!isOpen || lengthColumn === null || words.has(lengthColumn)) return null;
  return countColumns.some((column) => words.has(column))
    ? null
    : { why: "exchangeable", columns: [lengthColumn, ...countColumns] };
}
