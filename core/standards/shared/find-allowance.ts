import { toMillimetres } from "../../units/convert-length";
import { defineRefusal, isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import type { Bar, EndAllowance, FormerQuestion } from "../port";
import { fitsCondition } from "./fits-condition";
import { resolveGrade } from "./resolve-grade";
import { rowCitation } from "./row-citation";
import type { StandardTables } from "./standard-tables";

const allowanceNotHeld = defineRefusal(
  "allowance-not-held",
  "not-held",
  "{standard} holds no h and n for a {diameter} mm bar: write its ends out as turns and legs",
);

/** h and n of the length formulas for a bar, mm; null where the document's formulas have none. */
export function findAllowance(
  { id, unit, allowances, ...tables }: StandardTables,
  { diameter, use, grade: named }: FormerQuestion,
  bars: readonly Bar[],
): Cited<EndAllowance> | Refusal | null {
  if (allowances === null) return null;
  const grade = resolveGrade(named, use, { id, unit, allowances, ...tables });
  if (isRefusal(grade)) return grade;
  const row = allowances.rows.find((one) => fitsCondition(one, { diameter, use, grade }, bars));
  if (row === undefined) return allowanceNotHeld({ standard: id, diameter });
  const [hook, bend] = [toMillimetres(row.hookAllowance, unit), toMillimetres(row.bendAllowance, unit)];
  return { value: { hook, bend }, cite: rowCitation(allowances.cite, row) };
}
