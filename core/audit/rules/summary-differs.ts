import type { BarFacts } from "../../bar/bar-facts";
import { perMetreOf } from "../../bar/row-identities";
import type { Standard } from "../../standards/port";
import { defineRule } from "../rule";
import { type SizedLine, type SizedSum, sizedLines } from "../sized-sums";

/** share of a line's sums that must agree before the others are wrong, and how many */
const SHARE = 0.6;
const FEWEST = 2;
/** sums of rounded figures against figures rounded once; printed masses per metre of one size against each other */
const ROUNDED = 0.0005;
const OTHER_TABLE = 0.012;
const MM_PER_METRE = 1000;
const KG_PER_TONNE = 1000;

export default defineRule({
  code: "SUM111",
  name: "summary-differs",
  severity: "off-standard",
  docs: {
    summary: "A sum by bar size is not that of the bars of that size in the list.",
    why: "Steel is ordered by size from this line: one size is short on site, another is paid for twice. It takes a list with a summary by size: no small table can show it.",
    failing: [],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }] }],
  },
  messages: {
    differs: "the {what} of {size} is given as {typed}, but the bars of the list make {sum}",
  },
  checkSheet(sheet, context, report) {
    for (const line of sizedLines(sheet, context.standard)) {
      const measure = measureOf(line, context.standard);
      if (measure === null) continue;
      for (const sum of line.sums) {
        if (isNear(sum, measure) || isOpen(line, sum.diameter)) continue;
        const [own] = measure.values(sum.diameter);
        report({
          messageId: "differs",
          place: { row: sum.row, column: sum.column },
          values: { what: measure.what, size: sum.size, typed: sum.typed, sum: shown(own ?? 0) },
        });
      }
    }
  },
});

interface Measure {
  readonly what: string;
  /** as a share of the sum: what is right all the same */
  readonly within: number;
  /** what the sum of a size may be */
  values(diameter: number): readonly number[];
}

/** What a line gives: the measure that most of its sums agree with. */
function measureOf(line: SizedLine, standard: Standard): Measure | null {
  let best: Measure | null = null;
  let most = 0;
  for (const measure of measures(line.stretches, standard)) {
    const agreeing = line.sums.filter((sum) => isNear(sum, measure)).length;
    if (agreeing <= most) continue;
    best = measure;
    most = agreeing;
  }
  return most >= FEWEST && most >= SHARE * line.sums.length ? best : null;
}

/** A bar of the size lacks its count or its length: another rule tells that, and no sum can be told. */
function isOpen({ stretches }: SizedLine, diameter: number): boolean {
  return stretches.every((bars) =>
    bars.some((facts) => facts.diameter === diameter && !facts.row.struckThrough && lengthOf(facts) === null),
  );
}

function isNear({ typed, diameter }: SizedSum, { values, within }: Measure): boolean {
  const decimals = /\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0;
  const half = 0.5000001 * 10 ** -decimals;
  const sums = values(diameter);
  if (sums.length === 0) return typed === 0;
  return sums.some((sum) => Math.abs(typed - sum) <= half + within * Math.abs(sum));
}

function measures(stretches: SizedLine["stretches"], { bars }: Standard): Measure[] {
  const perMetre = (diameter: number) =>
    bars.filter((bar) => bar.diameter === diameter).map(({ massPerMetre }) => massPerMetre);
  const of = (figure: (facts: BarFacts) => number | null, per: number) => (diameter: number) =>
    stretches.map((bars) => sumOf(bars, diameter, figure) / per).filter((sum) => sum > 0);
  const typedMass = ({ row }: BarFacts): number | null => row.mass;
  return [
    { what: "mass", within: ROUNDED, values: of(typedMass, 1) },
    { what: "mass", within: ROUNDED, values: of(typedMass, KG_PER_TONNE) },
    { what: "length", within: ROUNDED, values: of(lengthOf, MM_PER_METRE) },
    { what: "length", within: ROUNDED, values: of(lengthOf, 1) },
    { what: "number", within: 0, values: of(({ count }) => count, 1) },
    { what: "mass", within: OTHER_TABLE, values: of(massOf, 1) },
    { what: "mass", within: OTHER_TABLE, values: of(massOf, KG_PER_TONNE) },
    { what: "mass per metre", within: OTHER_TABLE, values: perMetre },
  ];
}

function sumOf(
  bars: readonly BarFacts[],
  diameter: number,
  figure: (facts: BarFacts) => number | null,
): number {
  let sum = 0;
  for (const facts of bars) {
    if (facts.diameter !== diameter || facts.row.struckThrough) continue;
    const value = figure(facts);
    if (value === null) return Number.NaN;
    sum += value;
  }
  return sum;
}

function lengthOf({ row, count, lengthInForce }: BarFacts): number | null {
  if (row.totalLength !== null && row.totalLength !== undefined) return row.totalLength;
  return count === null || lengthInForce === null ? null : count * lengthInForce;
}

function massOf(facts: BarFacts): number | null {
  const length = lengthOf(facts);
  const perMetre = perMetreOf(facts);
  return length === null || perMetre === null ? null : (length / MM_PER_METRE) * perMetre;
}

function shown(sum: number): number {
  return Math.round(sum * 1000) / 1000;
}
