import { toMillimetres } from "../../units/convert-length";
import { exactProduct } from "../../units/exact-product";
import { defineRefusal, isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import type { Bar, EndLeg, FormerQuestion } from "../port";
import { findFormer, resolveUse } from "./find-former";
import { fitsCondition } from "./fits-condition";
import { multipleBase } from "./multiple-base";
import { resolveGrade } from "./resolve-grade";
import { rowCitation } from "./row-citation";
import type { EndLegRow, StandardTables } from "./standard-tables";

const endLegNotHeld = defineRefusal(
  "end-leg-not-held",
  "not-held",
  `{standard} holds no least end leg for a {diameter} mm bar for use {use}: ask the designer`,
);

/** The least end leg, overall: the printed figure, or the printed straight + r + d. */
export function findEndLeg(
  question: FormerQuestion,
  tables: StandardTables,
  bars: readonly Bar[],
): Cited<EndLeg> | Refusal {
  const { diameter } = question;
  const use = resolveUse(question.use, tables);
  if (isRefusal(use)) return use;
  const former = findFormer(question, tables, bars);
  if (isRefusal(former)) return former;
  const grade = resolveGrade(question.grade, use, tables);
  if (isRefusal(grade)) return grade;
  for (const { cite, rows } of tables.endLegs) {
    const row = rows.find((one) => fitsCondition(one, { diameter, use, grade }, bars));
    if (row !== undefined)
      return { value: endLegOf(row, diameter, former.value / 2, tables, bars), cite: rowCitation(cite, row) };
  }
  return endLegNotHeld({ standard: tables.id, diameter, use });
}

function endLegOf(
  row: EndLegRow,
  diameter: number,
  radius: number,
  tables: StandardTables,
  bars: readonly Bar[],
): EndLeg {
  const straight = straightOf(row, multipleBase(diameter, tables, bars), tables.unit);
  if (row.outside !== undefined) return { outside: toMillimetres(row.outside, tables.unit), straight };
  const outside = (straight ?? 0) + radius + diameter;
  const step = toMillimetres(row.roundedUpTo ?? 0, tables.unit);
  return { outside: step === 0 ? outside : Math.ceil(outside / step) * step, straight };
}

function straightOf(row: EndLegRow, multiple: number, unit: StandardTables["unit"]): number | null {
  if (row.straightPerDiameter === undefined) return null;
  return Math.max(
    exactProduct(row.straightPerDiameter, multiple),
    toMillimetres(row.leastStraight ?? 0, unit),
  );
}
