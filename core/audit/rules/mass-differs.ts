import type { BarFacts } from "../../bar/bar-facts";
import { perMetreToWeigh } from "../../bar/bar-mass";
import { perLength } from "../per-length";
import { defineRule } from "../rule";
import { isTogether } from "../several-products";

/** Tables of unit mass differ by less than half of this. */
const ALLOWED = 0.01;
const COUNTS = ["members", "each", "total"] as const;
const OF_ANOTHER_TABLE = ALLOWED / 2;
const TWO_DECIMALS = 100;
/** what the rounding of a length or a total leaves */
const ROUNDED_ONCE = 0.001;

export default defineRule({
  code: "MASS101",
  name: "mass-differs",
  severity: "doubtful",
  docs: {
    summary: "The typed mass is not count times length times unit mass.",
    why: "Steel is bought, lifted and paid by mass; a mass that does not follow hides a slip in the row.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 35 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 31.58 },
        ],
      },
    ],
  },
  messages: {
    differs: "mass {mass} is not {count} x {length} x {unitMass} = {computed}",
    ofOne:
      "mass {mass} is that of one bar, while other rows of the sheet have that of all: {count} are {computed}",
  },
  fixes: { computed: { label: "change the mass to {computed}", safety: "needs-review" } },
  checkRow(facts, context, report) {
    if (facts.sheet.habits.standardMeant !== null) return;
    const { mass } = facts.row;
    if (mass === null) return;
    if (isOfAnotherTable(facts, perMetreToWeigh(facts))) return;
    const { massRatio, massEach, bar, lengthInForce } = facts;
    if (massRatio === null || massEach === null || bar === null || lengthInForce === null) return;
    // without a number of bars nothing can be said of the mass of all
    if (facts.count === null && COUNTS.some((field) => facts.has(field))) return;
    const factor = facts.sheet.habits.massFactor ?? 1;
    if (isOfOneBar(facts, mass, massEach * factor)) {
      const computed = massEach * factor * (facts.count ?? 1);
      const fix = {
        id: "computed" as const,
        edits: [{ at: "mass" as const, to: Number(computed.toFixed(3)) }],
      };
      const values = { mass: { kg: mass }, count: facts.count ?? 1, computed: { kg: computed } };
      report({ messageId: "ofOne", at: "mass", values, cite: bar.cite, fix });
      return;
    }
    if (Math.abs(massRatio / factor - 1) <= ALLOWED) return;
    const expected = mass / massRatio;
    if (isOfRoundedTable(facts, mass / factor, expected)) return;
    const slack = halfLastDigit(facts) + expected * OF_ANOTHER_TABLE;
    if (Math.abs(mass - expected * factor) <= slack || agreesWithComputed(facts, mass, factor)) return;
    if (followsTotalLength(facts, mass, factor) || isTogether(facts)) return;
    if (followsPieceMass(facts, mass, massEach * factor) || isOfOneMember(facts, mass, massEach * factor))
      return;
    // of a sheet whose rows have the mass of all their bars no row has that of one
    const isOfAll = facts.sheet.habits.identities.speaking.has("mass") && facts.count !== null;
    const count = isOfAll ? (facts.count ?? 1) : Math.round(expected / massEach);
    const computed = massEach * count;
    const edits = [{ at: "mass" as const, to: Number(computed.toFixed(3)) }];
    report({
      messageId: "differs",
      at: "mass",
      values: {
        mass: { kg: mass },
        count,
        length: { mm: lengthInForce },
        unitMass: perLength(bar.massPerMetre, context.standard.unit),
        computed: { kg: computed },
      },
      cite: bar.cite,
      ...(mayBeTheOther(facts, mass / computed) ? {} : { fix: { id: "computed" as const, edits } }),
    });
  },
});

/** A bar type that the standard does not hold may be of another mass: the sheet's own, where its rows agree on it. */
function isOfAnotherTable(facts: BarFacts, perMetre: number | null): boolean {
  const { bar } = facts;
  if (bar === null || perMetre === null || perMetre === bar.massPerMetre) return false;
  const { massRatio } = facts;
  return massRatio !== null && Math.abs((massRatio * bar.massPerMetre) / perMetre - 1) <= ALLOWED;
}

/**
 * A point in the wrong place, or a count that the row's other counts contradict: the length or the count may be what is
 * wrong, and then the mass is right.
 */
function mayBeTheOther(facts: BarFacts, ratio: number): boolean {
  const { members, each, total } = facts.row;
  if (members !== null && each !== null && total !== null && members * each !== total) return true;
  const tens = Math.log10(ratio);
  const isPointMoved =
    Math.round(tens) !== 0 && Math.abs(tens - Math.round(tens)) < Math.log10(1 + 2 * ALLOWED);
  return isPointMoved && facts.lengthJudgement.kind !== "fits";
}

/** Of a sheet whose rows have the mass of all their bars. */
function isOfOneBar({ sheet, count }: BarFacts, mass: number, each: number): boolean {
  if (!sheet.habits.identities.speaking.has("mass") || count === null || count < 2) return false;
  return Math.abs(mass / each - 1) <= ALLOWED;
}

/** Under a heading that gives the members the masses may be those of one: so they are where the rows of the sheet have none of all. */
function isOfOneMember(facts: BarFacts, mass: number, ofBar: number): boolean {
  const { members, each, table } = facts.row;
  if (members === null || members < 2 || each === null || table.columns.has("members")) return false;
  if (facts.sheet.habits.identities.speaking.has("mass")) return false;
  return Math.abs(mass - ofBar * each) <= halfLastDigit(facts) + mass * ALLOWED;
}

/** Half of the last decimal that was typed, kg. */
function halfLastDigit(facts: BarFacts, field: "mass" | "pieceMass" = "mass"): number {
  const typed = facts.typed(field);
  const decimals = (field === "mass" ? /\.(\d+)/ : /[.,](\d+)/).exec(String(typed))?.[1]?.length ?? 0;
  return 0.5000001 * facts.inMillimetres(field, 10 ** -decimals);
}

/** So many times a mass of one bar that is right as it is rounded: 152 of 0.09 kg are 13.68 kg. */
function followsPieceMass(facts: BarFacts, mass: number, each: number): boolean {
  const { pieceMass = null } = facts.row;
  if (pieceMass === null || Math.abs(pieceMass - each) > halfLastDigit(facts, "pieceMass")) return false;
  return Math.abs(mass - pieceMass * (facts.count ?? 1)) <= halfLastDigit(facts);
}

/** By kg/m of two decimals, as many tables print them: 0.39 or 0.40 for 0.395. */
function isOfRoundedTable(facts: BarFacts, mass: number, expected: number): boolean {
  const perMetre = facts.bar?.massPerMetre ?? Number.NaN;
  const metres = expected / perMetre;
  const near = halfLastDigit(facts) + expected * ROUNDED_ONCE;
  return [Math.floor, Math.ceil].some((round) => {
    const printed = round(perMetre * TWO_DECIMALS) / TWO_DECIMALS;
    return Math.abs(mass - metres * printed) <= near;
  });
}

/** Where the mass follows from the typed total length, that is what is wrong. */
function followsTotalLength({ row, bar }: BarFacts, mass: number, factor: number): boolean {
  const whole = ((row.totalLength ?? 0) / 1000) * (bar?.massPerMetre ?? 0) * factor;
  return whole > 0 && Math.abs(mass / whole - 1) <= ALLOWED;
}

/** Where the typed length is wrong the mass may still follow from the right one. */
function agreesWithComputed(facts: BarFacts, mass: number, factor: number): boolean {
  const { computedLength, bar, count } = facts;
  if (computedLength === null || bar === null || facts.row.length === null) return false;
  const each = (computedLength / 1000) * bar.massPerMetre * factor;
  return [each, each * (count ?? 1)].some((right) => right > 0 && Math.abs(mass / right - 1) <= ALLOWED);
}
