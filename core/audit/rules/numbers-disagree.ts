import type { BarFacts } from "../../bar/bar-facts";
import type { AmountField, BrokenRow, RowIdentity } from "../../bar/identity-habits";
import { breakingRows, brokenBy, perMetreOf } from "../../bar/row-identities";
import { offMember } from "../../bar/times-of-member";
import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import { isCutFromStock } from "../cut-from-stock";
import { isCountedTwice } from "../row-counts";
import { defineRule, type MessageValue } from "../rule";
import { isTogether, OWN_CELL } from "../several-products";

const WORDS: Readonly<Record<AmountField, string>> = {
  members: "members",
  each: "bars in each",
  total: "total",
  length: "length",
  totalLength: "total length",
  mass: "mass",
  pieceMass: "mass of one bar",
  size: "size",
};
const PRODUCTS: Readonly<Record<RowIdentity, string>> = {
  members: "members x bars in each",
  totalLength: "the total length",
  mass: "the mass",
  massOfTotal: "the mass by total length",
  pieceMass: "the mass of one bar",
};

/** The same of the cell that the product makes. */
const FACTORS: Partial<Record<RowIdentity, string>> = {
  totalLength: "number x length",
  pieceMass: "length and size",
};

export default defineRule({
  code: "SUM109",
  name: "numbers-disagree",
  severity: "off-standard",
  docs: {
    summary:
      "A row breaks the products that most rows of the sheet keep, and one of its cells is the likely cause.",
    why: "Members, bars, length, total length and mass follow from each other. Where several disagree, the cell that the others contradict is the one to look at; a wrong one is cut, bought or paid.",
    failing: [
      {
        rows: [
          { size: "H16", length: 2000, members: 2, each: 10, total: 20, totalLength: 40, mass: 63.2 },
          { size: "H16", length: 3000, members: 2, each: 10, total: 20, totalLength: 60, mass: 94.8 },
          { size: "H16", length: 4000, members: 2, each: 10, total: 20, totalLength: 80, mass: 126.4 },
          { size: "H16", length: 5000, members: 2, each: 10, total: 20, totalLength: 100, mass: 158 },
          { size: "H16", length: 4300, members: 2, each: 10, total: 20, totalLength: 68, mass: 107.4 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H16", length: 2000, members: 2, each: 10, total: 20, totalLength: 40, mass: 63.2 },
          { size: "H16", length: 3400, members: 2, each: 10, total: 20, totalLength: 68, mass: 107.4 },
        ],
      },
    ],
  },
  messages: {
    one: "{what} {typed} does not fit {others}; {expected} would",
    alone: "{what} {typed} does not fit {others}",
    several: "one of {fields} is wrong: they do not fit {others}",
    member:
      "total {typed} is {times} x the number in each, and in the other {others} rows of its member it is {usual} x; {expected} would fit: is it a slip?",
    severalOfMass: "one of {fields} is wrong: they do not fit {others}; number x length makes {made}",
  },
  fixes: { expected: { label: "change it to {expected}", safety: "needs-review" } },
  checkSheet(sheet, _context, report) {
    const off = offMember(sheet);
    if (off !== null) {
      const { each, total } = off.facts.row;
      const expected = (each ?? 0) * off.usual;
      const times = Number(((total ?? 0) / (each ?? 1)).toPrecision(DIGITS));
      report({
        messageId: "member",
        outcome: "unsure",
        row: off.facts,
        at: "total",
        values: { typed: total ?? 0, times, others: off.others, usual: off.usual, expected },
      });
    }
    for (const { facts } of breakingRows(sheet.answers, sheet.habits.identities)) {
      const broken = brokenBy(facts);
      if (broken === null || !isTogether(facts, broken) || isToldByLength(facts, broken)) continue;
      const [suspect] = broken.suspects;
      if (suspect === undefined || isCountedTwice(facts.row)) continue;
      if (broken.broken.every((name) => name === "members") && isCutFromStock(facts)) continue;
      const productsFor = (field: AmountField | null): string =>
        broken.broken
          .map((name) => (OWN_CELL[name] === field ? FACTORS[name] : undefined) ?? PRODUCTS[name])
          .join(" and ");
      if (broken.suspects.length > 1) {
        // what follows from a wrong total may be worked out from it, and clears it of nothing
        const isOfTotal = broken.broken.every((name) => name === "members");
        const suspects = isOfTotal ? [...new Set([...broken.suspects, "total" as const])] : broken.suspects;
        const fields = suspects.map((field) => WORDS[field]).join(", ");
        // where they are as likely, the product that does not come out is the cell to look at
        const ofProduct = broken.broken.map((name) => OWN_CELL[name]);
        const at = ofProduct.find((field) => suspects.includes(field)) ?? suspect;
        const others = productsFor(null);
        const made = broken.broken.every((name) => name === "mass") ? massMade(facts) : null;
        if (made === null) report({ messageId: "several", row: facts, at, values: { fields, others } });
        else
          report({
            messageId: "severalOfMass",
            row: facts,
            at,
            values: { fields, others, made },
          });
        continue;
      }
      const values = {
        what: WORDS[suspect],
        typed: typedValue(facts, suspect),
        others: productsFor(suspect),
      };
      const { expected } = broken;
      if (expected === null || suspect === "size") {
        report({ messageId: "alone", row: facts, at: suspect, values });
        continue;
      }
      report({
        messageId: "one",
        row: facts,
        at: suspect,
        values: { ...values, expected: measured(suspect, expected) },
        fix: { id: "expected", edits: [{ at: suspect, to: expected }] },
      });
    }
  },
});

/** The mass of all bars of the row by their number, length and size, in its column's unit; null where one of them is not known. */
function massMade(facts: BarFacts): string | null {
  const { count, sheet } = facts;
  const { length } = facts.row;
  const perMetre = perMetreOf(facts);
  if (count === null || length === null || perMetre === null) return null;
  const kg = count * (length / MM_PER_UNIT.m) * perMetre * (sheet.habits.massFactor ?? 1);
  const unit = facts.row.table.columns.get("mass")?.unit ?? null;
  const own = unit === "t" || unit === "lb" ? unit : "kg";
  return `${Number((kg / KG_PER_UNIT[own]).toPrecision(DIGITS))} ${own}`;
}

const DIGITS = 4;

/** The dimensions contradict the length already. */
function isToldByLength(facts: BarFacts, { suspects }: BrokenRow): boolean {
  const { kind } = facts.lengthJudgement;
  return suspects[0] === "length" && (kind === "differs" || kind === "slip");
}

function typedValue({ row, sizeName }: BarFacts, field: AmountField): MessageValue {
  if (field === "size") return sizeName;
  const value = measured(field, row[field] ?? 0);
  return typeof value === "object" && "mm" in value ? { ...value, typed: true } : value;
}

function measured(field: AmountField, value: number): MessageValue {
  if (field === "length" || field === "totalLength") return { mm: value };
  return field === "mass" || field === "pieceMass" ? { kg: value } : value;
}
