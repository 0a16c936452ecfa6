import { toMillimetres } from "../../units/convert-length";
import { isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import { NOTHING_OWN, type OwnStandard } from "../own-standard";
import type { DetailingRule, FormerQuestion, HookTurn, Standard, Use } from "../port";
import { barsOf } from "./bars-of";
import { findAllowance } from "./find-allowance";
import { findDetailing } from "./find-detailing";
import { findEndLeg } from "./find-end-leg";
import { findFormer } from "./find-former";
import { findHook } from "./find-hook";
import { sizeReader } from "./read-size";
import { ANSWERS_REMEMBERED, KINDS_REMEMBERED } from "./remembered.data";
import { rowCitation } from "./row-citation";
import type { StandardTables } from "./standard-tables";

const HOOK_TURNS: readonly HookTurn[] = [90, 135, 180];

/**
 * The standard that answers from printed tables. Answers are remembered, so that a schedule of many
 * rows pays for each question once; the same question gives the same object.
 */
export function buildStandard(tables: StandardTables, own: OwnStandard = NOTHING_OWN): Standard {
  const bars = barsOf(tables.bars);
  const mm = (length: number) => toMillimetres(length, tables.unit);
  const inMillimetres = (length: Cited<number> | null) => length && { ...length, value: mm(length.value) };
  const former = remember((diameter, use, coating, grade) =>
    findFormer(question(diameter, use, coating, grade), tables, bars),
  );
  const formulaRadius = remember((diameter, use, _, grade) =>
    findFormulaRadius(tables, diameter, () => former(diameter, use, undefined, grade)),
  );
  const detailing = remember((diameter, rule: DetailingRule) => findDetailing(tables, rule, diameter));
  const endLeg = remember((diameter, use, _, grade) =>
    findEndLeg(question(diameter, use, undefined, grade), tables, bars),
  );
  const hooks = new Map(
    HOOK_TURNS.map((turn) => [
      turn,
      remember((diameter, use, _, grade) =>
        findHook(turn, question(diameter, use, undefined, grade), tables, bars),
      ),
    ]),
  );
  return {
    id: tables.id,
    title: tables.title,
    caution: tables.caution,
    own,
    unit: tables.unit,
    bars,
    grades: tables.grades,
    uses: tables.uses,
    readSize: sizeReader(tables, bars),
    former: ({ diameter, use, coating, grade }) => former(diameter, use, coating, grade),
    formulaRadius: (diameter, use, grade) => formulaRadius(diameter, use, undefined, grade),
    endLeg: (diameter, use, grade) => endLeg(diameter, use, undefined, grade),
    bendingNeedsEndLegUpTo: tables.bendingNeedsEndLegUpTo,
    hook: (turn, diameter, use, grade, given) =>
      given === undefined
        ? hooks.get(turn)!(diameter, use, undefined, grade)
        : findHook(turn, question(diameter, use, undefined, grade), tables, bars, given),
    endAllowance: (diameter, grade) =>
      findAllowance(tables, question(diameter, "main", undefined, grade), bars),
    shapes: new Map(tables.shapes.map((shape) => [shape.code, shape])),
    shapesInPart: tables.shapesInPart,
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
    rebendingLimit: tables.rebendingLimit,
    supply: {
      straightSupplyRadius: (diameter) => inMillimetres(straightSupplyRadius(tables, diameter)),
      transportWidth: inMillimetres(tables.transportWidth),
      stockLength: inMillimetres(tables.stockLength),
      largestCurveFormer: inMillimetres(tables.largestCurveFormer),
    },
    siteDeductions: tables.siteDeductions,
    detailing: (rule, diameter) => detailing(diameter, rule),
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
    return { value: toMillimetres(printed.radius, unit), cite: rowCitation(formulaRadii.cite, printed) };
  }
  const least = former();
  return isRefusal(least) ? least : { value: least.value / 2, cite: least.cite };
}

function straightSupplyRadius(
  { straightSupplyRadius: table }: StandardTables,
  diameter: number,
): Cited<number> | null {
  const row = table?.rows.find((one) => one.diameter === diameter);
  return table === null || row === undefined
    ? null
    : { value: row.radius, cite: rowCitation(table.cite, row) };
}

type Answer<Value, Kind> = (diameter: number, kind: Kind, coating?: string, grade?: string) => Value;

/** Answers remembered for one kind, coating and grade. */
interface Remembered<Value, Kind> {
  readonly kind: Kind;
  readonly coating: string | undefined;
  readonly grade: string | undefined;
  readonly known: Map<number, Value>;
}

/**
 * Keeps answers by use or rule, and within it by diameter; bars of one kind mostly follow one another. A list has
 * few kinds, which are sooner looked through than put into words.
 */
function remember<Value, Kind extends string = Use>(answer: Answer<Value, Kind>): Answer<Value, Kind> {
  const all: Remembered<Value, Kind>[] = [];
  let last: Remembered<Value, Kind> | undefined;
  return (diameter, kind, coating, grade) => {
    const isAsked = (one: Remembered<Value, Kind>): boolean =>
      one.kind === kind && one.coating === coating && one.grade === grade;
    if (last === undefined || !isAsked(last)) {
      last = all.find(isAsked);
      if (last === undefined) {
        if (all.length >= KINDS_REMEMBERED) all.length = 0;
        last = { kind, coating, grade, known: new Map() };
        all.push(last);
      }
    }
    const { known } = last;
    let value = known.get(diameter);
    if (value === undefined) {
      if (known.size >= ANSWERS_REMEMBERED) known.clear();
      value = answer(diameter, kind, coating, grade);
      known.set(diameter, value);
    }
    return value;
  };
}

function question(diameter: number, use: Use, coating?: string, grade?: string): FormerQuestion {
  return {
    diameter,
    use,
    ...(coating === undefined ? {} : { coating }),
    ...(grade === undefined ? {} : { grade }),
  };
}
