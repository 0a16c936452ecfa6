import type { BarFacts } from "../bar/bar-facts";
import type { BarKind } from "../bar/bar-kind";
import type { RowNeed, RowRule } from "./rule";
import type { RuleContext } from "./rule-context";

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
  if (facts.isShapeRefused) met |= BIT["refused shape"];
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
 * Picks for each bar the rules that can speak of it: most bars have neither a remark nor a fault, and a size, grade,
 * shape and words of which most rules say nothing.
 */
export class RulesOfRow {
  /** by the kind of bar; null for kinds that are not kept */
  readonly #picked = new Map<BarKind | null, Map<number, RulesOfBar>>();
  readonly #ofWords: readonly RowRule[];
  /** which of the rules that go by words speak of these, as bits */
  readonly #speaking: (words: string) => number;

  constructor(
    private readonly rules: readonly RowRule[],
    private readonly context: RuleContext,
  ) {
    this.#ofWords = rules.filter(({ ofWords }) => ofWords !== undefined).slice(0, MOST_OF_WORDS);
    this.#speaking = (words) =>
      this.#ofWords.reduce((bits, { ofWords }, at) => (isSaid(ofWords?.(words)) ? bits + 2 ** at : bits), 0);
  }

  of(facts: BarFacts): RulesOfBar {
    const isForeign = facts.sheet.habits.standardMeant !== null;
    const met = needsMet(facts, this.context.shop !== null) | (isForeign ? FOREIGN : 0);
    const key = met + facts.inWords(this.#speaking) * NEEDS;
    const kind = facts.kind.isKept ? facts.kind : null;
    let ofKind = this.#picked.get(kind);
    if (ofKind === undefined) {
      ofKind = new Map();
      this.#picked.set(kind, ofKind);
    }
    let picked = ofKind.get(key);
    if (picked === undefined) {
      picked = this.#pick(met, facts);
      ofKind.set(key, picked);
    }
    return picked;
  }

  #pick(met: number, facts: BarFacts): RulesOfBar {
    const isForeign = (met & FOREIGN) !== 0;
    const bits = facts.inWords(this.#speaking);
    const rules = this.rules.filter((rule) => {
      const { needs, code } = rule;
      if (needs !== undefined && (met & BIT[needs]) === 0) return false;
      if (isForeign && OF_STANDARD.test(code)) return false;
      const at = this.#ofWords.indexOf(rule);
      if (at >= 0 && Math.floor(bits / 2 ** at) % 2 === 0) return false;
      return !facts.kind.isKept || rule.ofKind === undefined || rule.ofKind(facts, this.context);
    });
    return { rules, checks: rules.map(({ checkRow }) => checkRow) };
  }
}

/** as many as a number holds beside the needs */
const MOST_OF_WORDS = 30;
const NEEDS = 2 ** 14;

function isSaid(answer: unknown): boolean {
  return answer !== false && answer !== null && answer !== undefined;
}
