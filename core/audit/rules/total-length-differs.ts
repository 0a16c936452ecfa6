import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";
import { isTogether } from "../several-products";

const ALLOWED = 0.002;
const SLIPS = [10, 100, 1000, 0.1, 0.01, 0.001];
/** Above it no number is the length of a row's bars. */
const MOST_MM = 1e12;

export default defineRule({
  code: "SUM108",
  name: "total-length-differs",
  severity: "off-standard",
  docs: {
    summary: "The total length is not the number of bars times the length of one.",
    why: "Where masses are worked out from total lengths, this is the number that is bought and paid for.",
    failing: [
      {
        rows: [
          { size: "H16", length: 2000, members: 1, each: 10, total: 10, totalLength: 20 },
          { size: "H16", length: 3000, members: 1, each: 10, total: 10, totalLength: 30 },
          { size: "H16", length: 4000, members: 1, each: 10, total: 10, totalLength: 44 },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", length: 2000, members: 1, each: 10, total: 10, totalLength: 20 }] }],
  },
  messages: {
    differs: "total length {typed} is not {count} x {length} = {computed}",
    slip: "the total length {typed} is {count} x {to} and not {count} x {length}: the point of one of the two lengths is misplaced",
  },
  fixes: { computed: { label: "change the total length to {computed}", safety: "needs-review" } },
  checkSheet(sheet, _context, report) {
    if (!sheet.has("totalLength") && !sheet.reading.tables.some(({ bySizeUnit }) => bySizeUnit !== undefined))
      return;
    const judged = sheet.answers.count(isJudged);
    const wrong = sheet.answers.those(isWrong);
    // where most rows differ, the column means something else
    if (wrong.length * 2 > judged) return;
    const isOfOne = sheet.answers.count(followsOfOne) > sheet.answers.count(followsOfAll);
    for (const { facts } of wrong) {
      // several products at once have one cause, which another rule names
      if (isTogether(facts)) continue;
      const many = (isOfOne ? facts.row.each : null) ?? facts.count ?? 0;
      const computed = (facts.row.length ?? 0) * many;
      const to = slipOfLength(facts, computed);
      if (to !== null) {
        const [length, typed] = [facts.row.length ?? 0, facts.row.totalLength ?? 0];
        report({
          messageId: "slip",
          row: facts,
          at: "length",
          values: {
            typed: { mm: typed, typed: true },
            count: many,
            length: { mm: length, typed: true },
            to: { mm: to },
          },
        });
        continue;
      }
      report({
        messageId: "differs",
        row: facts,
        at: "totalLength",
        values: {
          typed: { mm: facts.row.totalLength ?? 0, typed: true },
          count: many,
          length: { mm: facts.row.length ?? 0, typed: true },
          computed: { mm: computed },
        },
        fix: { id: "computed", edits: [{ at: "totalLength", to: computed }] },
      });
    }
  },
});

/** The length with which the total agrees, where only the place of the point parts them. */
function slipOfLength({ row }: BarFacts, computed: number): number | null {
  const factor = SLIPS.find((one) => Math.abs(((row.totalLength ?? 0) * one) / computed - 1) <= ALLOWED);
  return factor === undefined ? null : (row.length ?? 0) / factor;
}

function isJudged(facts: BarFacts): boolean {
  return productOf(facts) !== null && (facts.row.totalLength ?? Number.NaN) < MOST_MM;
}

function isWrong(facts: BarFacts): true | null {
  return isJudged(facts) && !follows(facts) ? true : null;
}

function productOf({ row, count }: BarFacts): number | null {
  return row.length === null || row.length <= 0 || count === null || count <= 0 ? null : row.length * count;
}

/** The total length may be that of one member's bars or of all. */
function follows(facts: BarFacts): boolean {
  const { members, each } = facts.row;
  return followsOfAll(facts) || followsOfOne(facts) || isTimes(facts, members, each);
}

function isTimes(facts: BarFacts, members: number | null, each: number | null): boolean {
  return members !== null && each !== null && isProduct(facts, members * each);
}

const followsOfAll = (facts: BarFacts): boolean => facts.count !== null && isProduct(facts, facts.count);
const followsOfOne = (facts: BarFacts): boolean =>
  facts.row.each !== null && isProduct(facts, facts.row.each);

function isProduct(facts: BarFacts, many: number): boolean {
  const { row } = facts;
  const slack = 0.5000001 * facts.inMillimetres("totalLength", lastDigit(facts.typed("totalLength")));
  // a whole number of metres is no rounded one
  const ofLength = lastDigit(facts.typed("length"));
  const lastOfLength = ofLength === 1 ? 0 : 0.5000001 * facts.inMillimetres("length", ofLength);
  const product = many * (row.length ?? 0);
  return (
    Math.abs((row.totalLength ?? 0) - product) <= Math.max(product * ALLOWED, slack + lastOfLength * many)
  );
}

function lastDigit(typed: unknown): number {
  return 10 ** -(/[.,](\d+)\s*\D*$/.exec(String(typed))?.[1]?.length ?? 0);
}
