import type { BarFacts } from "../bar/bar-facts";
import { isRefusal } from "../units/refusal";
import type { RowNeed, RowRule } from "./rule";

const BIT: Readonly<Record<RowNeed, number>> = {
  remark: 1,
  problem: 2,
  varying: 4,
  lap: 8,
  spacing: 16,
  "refused shape": 32,
  "broken limit": 64,
  shop: 128,
  "closed link": 256,
  "plain bar": 512,
  "unknown size": 1024,
  "slip of unit": 2048,
  "other length": 4096,
};

/** shapes, their dimensions, lengths and bends: of a sheet that is meant by another standard they are not judged */
const OF_STANDARD = /^(?:SHAPE|DIM|BEND|LEN10[12])/;
const FOREIGN = 8192;

/** Which needs of rules a bar meets, as bits. */
function needsMet(facts: BarFacts, hasShop: boolean): number {
  const { row } = facts;
  let met = hasShop ? BIT.shop : 0;
  if (row.remark !== null) met |= BIT.remark;
  if (row.problems !== null) met |= BIT.problem;
  if (row.varying) met |= BIT.varying;
  if (row.lap) met |= BIT.lap;
  // a remark may say it
  if (row.spacing || row.remark !== null) met |= BIT.spacing;
  if (isRefusal(facts.resolved)) met |= BIT["refused shape"];
  if (facts.brokenLimits.length > 0) met |= BIT["broken limit"];
  if (facts.definition?.closed === true) met |= BIT["closed link"];
  if (facts.isPlain) met |= BIT["plain bar"];
  if (facts.bar === null || facts.bar.cite.provenance === "common practice") met |= BIT["unknown size"];
  const length = facts.lengthJudgement.kind;
  if (length === "slip" || row.problems !== null) met |= BIT["slip of unit"];
  if (length === "differs") met |= BIT["other length"];
  return met;
}

/** The rules that can speak of a bar, and their checks in the same order. */
export interface RulesOfBar {
  readonly rules: readonly RowRule[];
  /** a method looked up on rule objects of many forms costs more than most rules do */
  readonly checks: readonly RowRule["checkRow"][];
}

/**
 * Picks for each bar the rules that can speak of it: most bars have neither a remark nor a fault, and then a
 * third of the rules need not be asked.
 */
export class RulesOfRow {
  readonly #picked = new Map<number, RulesOfBar>();

  constructor(
    private readonly rules: readonly RowRule[],
    private readonly hasShop: boolean,
  ) {}

  of(facts: BarFacts): RulesOfBar {
    const isForeign = facts.sheet.habits.standardMeant !== null;
    const met = needsMet(facts, this.hasShop) | (isForeign ? FOREIGN : 0);
    let picked = this.#picked.get(met);
    if (picked === undefined) {
      picked = this.#pick(met);
      this.#picked.set(met, picked);
    }
    return picked;
  }

  #pick(met: number): RulesOfBar {
    const isForeign = (met & FOREIGN) !== 0;
    const rules = this.rules.filter(
      ({ needs, code }) =>
        (needs === undefined || (met & BIT[needs]) !== 0) && !(isForeign && OF_STANDARD.test(code)),
    );
    return { rules, checks: rules.map(({ checkRow }) => checkRow) };
  }
}
