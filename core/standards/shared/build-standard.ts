import { toMillimetres } from "../../units/convert-length";
import { isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import type { FormerQuestion, HookTurn, Standard, Use } from "../port";
import { barsOf } from "./bars-of";
import { findEndLeg } from "./find-end-leg";
import { findFormer } from "./find-former";
import { findHook } from "./find-hook";
import { sizeReader } from "./read-size";
import { ANSWERS_REMEMBERED } from "./remembered.data";
import type { StandardTables } from "./standard-tables";

/**
 * The standard that answers from printed tables. Answers are remembered, so that a schedule of many
 * rows pays for each question once; the same question gives the same object.
 */
export function buildStandard(tables: StandardTables): Standard {
  const bars = barsOf(tables.bars);
  const mm = (length: number) => toMillimetres(length, tables.unit);
  const inMillimetres = (length: Cited<number> | null) => length && { ...length, value: mm(length.value) };
  const former = remember(
    ({ diameter, use, coating, grade }: FormerQuestion) =>
      coating === undefined && grade === undefined
        ? `${diameter}|${use}`
        : `${diameter}|${use}|${coating}|${grade}`,
    (question) => findFormer(question, tables, bars),
  );
  const formulaRadius = remember(
    (question: readonly [number, Use]) => question.join("|"),
    ([diameter, use]) => findFormulaRadius(tables, diameter, () => former({ diameter, use })),
  );
  const endLeg = remember(
    (question: readonly [number, Use]) => question.join("|"),
    ([diameter, use]) => findEndLeg(diameter, use, tables, bars),
  );
  const hook = remember(
    (question: readonly [HookTurn, number, Use]) => question.join("|"),
    ([turn, diameter, use]) => findHook(turn, diameter, use, tables, bars),
  );
  return {
    id: tables.id,
    title: tables.title,
    unit: tables.unit,
    bars,
    grades: tables.grades,
    uses: tables.uses,
    readSize: sizeReader(tables, bars),
    former,
    formulaRadius: (diameter, use) => formulaRadius([diameter, use]),
    endLeg: (diameter, use) => endLeg([diameter, use]),
    hook: (turn, diameter, use) => hook([turn, diameter, use]),
    shapes: new Map(tables.shapes.map((shape) => [shape.code, shape])),
    lengthRounding: { ...tables.lengthRounding, step: mm(tables.lengthRounding.step) },
    dimensionStep: inMillimetres(tables.dimensionStep),
    straightBetweenBends: tables.straightBetweenBends,
    manyBends: tables.manyBends,
    tolerances: tables.tolerances && {
      ...tables.tolerances,
      value: tables.tolerances.value.map((row) => ({
        ...row,
        upTo: mm(row.upTo),
        plus: mm(row.plus),
        minus: mm(row.minus),
      })),
    },
    coldBending: tables.coldBending,
    rebending: tables.rebending,
    supply: {
      straightSupplyRadius: (diameter) => inMillimetres(straightSupplyRadius(tables, diameter)),
      transportWidth: inMillimetres(tables.supply.transportWidth),
      stockLength: inMillimetres(tables.supply.stockLength),
      largestCurveFormer: inMillimetres(tables.supply.largestCurveFormer),
    },
    siteDeductions: tables.siteDeductions,
  };
}

/** The printed r of the formulas where there is one; else half the former. */
function findFormulaRadius(
  { formulaRadii, unit }: StandardTables,
  diameter: number,
  former: () => Cited<number> | Refusal,
): Cited<number> | Refusal {
  const printed = formulaRadii?.rows.find((row) => row.diameter === diameter);
  if (formulaRadii !== null && printed !== undefined) {
    return { value: toMillimetres(printed.radius, unit), cite: formulaRadii.cite };
  }
  const least = former();
  return isRefusal(least) ? least : { value: least.value / 2, cite: least.cite };
}

function straightSupplyRadius({ supply }: StandardTables, diameter: number): Cited<number> | null {
  const row = supply.straightSupplyRadius?.rows.find((one) => one.diameter === diameter);
  return row === undefined ? null : { value: row.radius, cite: supply.straightSupplyRadius!.cite };
}

function remember<Question, Answer>(
  keyOf: (question: Question) => string,
  answer: (question: Question) => Answer,
) {
  const remembered = new Map<string, Answer>();
  return (question: Question): Answer => {
    const key = keyOf(question);
    const known = remembered.get(key);
    if (known !== undefined) return known;
    if (remembered.size >= ANSWERS_REMEMBERED) remembered.clear();
    const fresh = answer(question);
    remembered.set(key, fresh);
    return fresh;
  };
}
