import { toMillimetres } from "../../units/convert-length";
import { exactProduct } from "../../units/exact-product";
import { defineRefusal, isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import type { Bar, FormerQuestion, Hook, HookTurn } from "../port";
import { findEndLeg } from "./find-end-leg";
import { findFormer, resolveUse } from "./find-former";
import { fitsCondition } from "./fits-condition";
import { multipleBase } from "./multiple-base";
import { resolveGrade } from "./resolve-grade";
import { rowCitation } from "./row-citation";
import type { HookRow, StandardTables } from "./standard-tables";

const hookNotHeld = defineRefusal(
  "hook-not-held",
  "not-held",
  `{standard} holds no hook of {turn} degrees for a {diameter} mm bar for use {use}: write the end out as a turn and a leg`,
);

/** The end hook (stirrup hook for links): former and straight after the bend, mm. */
export function findHook(
  turn: HookTurn,
  question: FormerQuestion,
  tables: StandardTables,
  bars: readonly Bar[],
  given?: number,
): Cited<Hook> | Refusal {
  const { diameter } = question;
  const use = resolveUse(question.use, tables);
  if (isRefusal(use)) return use;
  const grade = resolveGrade(question.grade, use, tables);
  if (isRefusal(grade)) return grade;
  for (const { cite, rows } of tables.hooks) {
    const row = rows.find(
      (one) => one.turns.includes(turn) && fitsCondition(one, { diameter, use, grade }, bars),
    );
    if (row === undefined) continue;
    const former = given ?? formerOf(row, question, tables, bars);
    if (isRefusal(former)) return former;
    const extension = extensionOf(row, turn, question, former, tables, bars);
    return isRefusal(extension)
      ? extension
      : { value: { turn, former, extension }, cite: rowCitation(cite, row) };
  }
  return hookNotHeld({ standard: tables.id, turn, diameter, use });
}

function formerOf(
  { formerPerDiameter }: HookRow,
  question: FormerQuestion,
  tables: StandardTables,
  bars: readonly Bar[],
): number | Refusal {
  if (formerPerDiameter !== undefined) {
    return exactProduct(formerPerDiameter, multipleBase(question.diameter, tables, bars));
  }
  const least = findFormer(question, tables, bars);
  return isRefusal(least) ? least : least.value;
}

function extensionOf(
  row: HookRow,
  turn: HookTurn,
  question: FormerQuestion,
  former: number,
  tables: StandardTables,
  bars: readonly Bar[],
): number | Refusal {
  const { diameter } = question;
  const printed = toMillimetres(row.leastExtension ?? 0, tables.unit);
  const extension = Math.max(
    exactProduct(row.extensionPerDiameter ?? 0, multipleBase(diameter, tables, bars)),
    printed,
  );
  const outsideOfBend = former / 2 + diameter;
  if (row.endLegOf !== undefined) {
    const endLeg = findEndLeg({ ...question, use: row.endLegOf }, tables, bars);
    return isRefusal(endLeg) ? endLeg : Math.max(extension, endLeg.value.outside - outsideOfBend);
  }
  const halfCircle = (Math.PI * (former + diameter)) / 2;
  if (row.lengthOfFullHook) return extension + halfCircle * (1 - turn / 180);
  const arc = (halfCircle * turn) / 180;
  return row.leastAllowance === undefined
    ? extension
    : Math.max(extension, toMillimetres(row.leastAllowance, tables.unit) + outsideOfBend - arc);
}
