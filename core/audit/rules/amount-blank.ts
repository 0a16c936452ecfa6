import type { BarFacts } from "../../bar/bar-facts";
import { metresAlone } from "../../bar/metres-alone";
import { perMetreOf } from "../../bar/row-identities";
import { saying } from "../../bar/said-words";
import type { SheetFacts } from "../../bar/sheet-facts";
import type { ColumnKind } from "../../schedule/bar-row";
import { headingsWithoutMembers } from "../headings-without-members";
import { defineRule, type MessageValue } from "../rule";

const COUNTS = ["total", "each", "members"] as const;
/** share of the rows that must fill a column before a blank in it is a blank forgotten */
const USUAL = 0.6;
const MM_PER_METRE = 1000;

export default defineRule({
  code: "SUM110",
  name: "amount-blank",
  severity: "off-standard",
  docs: {
    summary:
      "The number of bars, the size or the length is blank or nought, so that the row stands in no total.",
    why: "A total that is silently short is the costliest slip: the steel is missed on site, when the member waits for it.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 2000, length: 2000, members: 2, each: 10, total: 20 },
          { size: "H16", shape: "00", A: 3000, length: 3000, members: 2, each: 10, total: 20 },
          { size: "H16", shape: "00", A: 4000, length: 4000, members: null, each: null, total: null },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 2000, length: 2000, members: 2, each: 10, total: 20 },
          { size: "H16", shape: "00", A: 3000, length: 3000, members: 2, each: 10, total: null },
        ],
      },
    ],
  },
  messages: {
    blank: "{what} is blank: the row stands in no total",
    follows: "{what} is blank: the row stands in no total; {value} would follow from {from}",
    beside: "{what} is blank; {value} would follow from {from}",
    joined: "{what} is not read in this cell: the row stands in no total; {value} would follow from {from}",
    zero: "{what} is 0: the row adds nothing to any total",
    unsaid: "the number of members is blank in this heading, while {others} others have it",
    weighed: "{what} is blank: only the typed mass of the row is in the totals",
  },
  fixes: { value: { label: "write {value}", safety: "needs-review" } },
  checkSheet(sheet, _context, report) {
    for (const { field, of, among, what, from } of BESIDE) {
      const beside = sheet.answers.those(of);
      const isRare = beside.length > 0 && beside.length <= RARE * sheet.answers.count(among);
      for (const { facts, answer: value } of isRare && usualFields(sheet).has(field) ? beside : []) {
        const fix = { id: "value" as const, edits: [{ at: field, to: value }] };
        const values = { what, value, from };
        report({ messageId: "beside", severity: "doubtful", row: facts, at: field, values, fix });
      }
    }
    const { blanks: headings, others } = headingsWithoutMembers(sheet);
    for (const place of headings)
      report({ messageId: "unsaid", severity: "doubtful", place, values: { others } });
    for (const { facts, answer: field } of sheet.answers.those(zeroAmount)) {
      const values = { what: field === "length" ? "the length" : "the number of bars" };
      report({ messageId: "zero", severity: "doubtful", row: facts, at: field, values });
    }
    const open = sheet.answers.those(lacksAmount);
    if (open.length === 0) return;
    const usual = usualFields(sheet);
    const blanks = open.map(({ facts }) => ({ facts, field: blankOf(facts, usual) }));
    const missing = blanks.filter(({ field }) => field !== null).length;
    // where most rows lack it the column was not read: another rule says so
    if (missing * 2 > sheet.answers.length) return;
    blanks.forEach(({ facts, field }) => {
      if (field === null) return;
      const found = field === "size" ? null : followed(facts, field, perMetreOf(facts));
      const what = field === "size" ? "the size" : field === "length" ? "the length" : "the number of bars";
      if (found === null) {
        const isWeighed = facts.row.mass !== null && facts.count !== null;
        report({ messageId: isWeighed ? "weighed" : "blank", row: facts, at: field, values: { what } });
        return;
      }
      const value: MessageValue = field === "length" ? { mm: found.value } : found.value;
      const isJoined = facts.typed(field) !== null;
      if (isJoined) {
        report({ messageId: "joined", row: facts, at: field, values: { what, value, from: found.from } });
        return;
      }
      report({
        messageId: "follows",
        row: facts,
        at: field,
        values: { what, value, from: found.from },
        fix: { id: "value", edits: [{ at: field, to: found.value }] },
      });
    });
  },
});

/** share of the rows like it in which a number may be blank before it is meant to be */
const RARE = 0.2;

/** The number in each that total and members give, where its cell is blank. */
function eachBeside(facts: BarFacts): number | null {
  return facts.row.members === 1 ? null : eachFollowing(facts);
}

/** Of one member the total says as much, and many lists leave the number in each blank there. */
function eachOfOne(facts: BarFacts): number | null {
  return facts.row.members === 1 ? eachFollowing(facts) : null;
}

function eachFollowing(facts: BarFacts): number | null {
  const { members, each, total } = facts.row;
  if (each !== null || members === null || total === null || members < 1) return null;
  if (!facts.has("each") || !facts.has("members") || !isBlank(facts, "each")) return null;
  const value = total / members;
  return Number.isInteger(value) && value > 0 ? value : null;
}

/** The total that members and each give, where its cell alone is blank: sums below it go without the row. */
function totalBeside(facts: BarFacts): number | null {
  const { members, each, total } = facts.row;
  if (total !== null || members === null || each === null || facts.row.struckThrough) return null;
  // the members may stand in a heading
  if (!facts.has("total") || !isBlank(facts, "total")) return null;
  const value = members * each;
  return value > 0 ? value : null;
}

/** The members that total and number in each give, where their cell is blank; of one member many lists leave it so. */
function membersBeside(facts: BarFacts): number | null {
  const { members, each, total } = facts.row;
  if (members !== null || each === null || total === null || each < 1 || facts.row.struckThrough) return null;
  if (!facts.has("members") || !isBlank(facts, "members")) return null;
  const value = total / each;
  return Number.isInteger(value) && value > 1 ? value : null;
}

const isOfOne = ({ row }: BarFacts): boolean => row.members === 1;
const isBar = (): boolean => true;
const EACH = { field: "each", what: "the number in each", from: "the total and the members" } as const;
const TOTAL = {
  field: "total",
  what: "the total number",
  from: "members times bars in each",
} as const;
const MEMBERS = {
  field: "members",
  what: "the number of members",
  from: "the total and the number in each",
} as const;
const BESIDE = [
  { ...EACH, of: eachBeside, among: isBar },
  { ...EACH, of: eachOfOne, among: isOfOne },
  { ...TOTAL, of: totalBeside, among: isBar },
  { ...MEMBERS, of: membersBeside, among: isBar },
] as const;

function lacksAmount(facts: BarFacts): true | null {
  const { row, count } = facts;
  if (metresAlone(facts) !== null) return null;
  return count === null || row.size === null || row.length === null ? true : null;
}

/** A nought where an amount belongs; not in a row that is taken out, or that says so. */
function zeroAmount(facts: BarFacts): ColumnKind | null {
  const { row } = facts;
  const count = row.total === 0 ? "total" : row.each === 0 ? "each" : row.members === 0 ? "members" : null;
  const field = count ?? (row.length === 0 && row.dims[0] !== 0 ? "length" : null);
  if (field === null || row.superseded === true || row.struckThrough) return null;
  return facts.inWords(saysTakenOut) ? null : field;
}

const saysTakenOut = saying(/\b(?:delet\w*|omit\w*|cancel\w*|void\w*|nil|not used|none|removed|deduct\w*)\b/);

const FIELDS = [...COUNTS, "size", "length"] as const;

function usualFields({ answers }: SheetFacts): ReadonlySet<ColumnKind> {
  const unfilled = answers.those(unfilledFields);
  return new Set(
    FIELDS.filter((field) => {
      const filled = answers.length - unfilled.filter(({ answer }) => answer.includes(field)).length;
      return filled >= answers.length * USUAL;
    }),
  );
}

function unfilledFields({ row }: BarFacts): readonly ColumnKind[] | null {
  const unfilled = FIELDS.filter((field) => row[field] === null);
  return unfilled.length === 0 ? null : unfilled;
}

/** The blank cell that keeps the row out of every total; null where there is none, or another rule tells of it. */
function blankOf(facts: BarFacts, usual: ReadonlySet<ColumnKind>): ColumnKind | null {
  const { row } = facts;
  if (row.superseded === true || row.struckThrough || row.varying) return null;
  if (facts.count === null) {
    const field = COUNTS.find((one) => usual.has(one) && row[one] === null && isBlank(facts, one));
    if (field !== undefined && !hasUnreadCount(facts)) return field;
  }
  if (row.size === null && usual.has("size") && isBlank(facts, "size")) return "size";
  const isOpen = row.length === null && facts.cut === null && usual.has("length");
  return isOpen && isBlank(facts, "length") ? "length" : null;
}

/** Nothing stands in the cell: what cannot be read is told apart. Of a cell with several things another one of them may stand there. */
function isBlank(facts: BarFacts, field: ColumnKind): boolean {
  const { table, size, length } = facts.row;
  const column = table.columns.get(field)?.column;
  const isOther = (kind: "size" | "length", value: unknown): boolean =>
    kind !== field && value !== null && table.columns.get(kind)?.column === column;
  if (column !== undefined && (isOther("size", size) || isOther("length", length))) return true;
  const typed = facts.typed(field);
  return typed === null || (typeof typed === "string" && typed.trim() === "");
}

function hasUnreadCount({ row }: BarFacts): boolean {
  return row.problems?.some(({ field }) => (COUNTS as readonly ColumnKind[]).includes(field)) ?? false;
}

/** What two neighbours of the blank cell give. */
function followed(
  { row, count }: BarFacts,
  field: ColumnKind,
  perMetre: number | null,
): { value: number; from: string } | null {
  const { length, totalLength = null, mass } = row;
  if (field === "length") {
    if (totalLength !== null && count !== null && count > 0)
      return { value: totalLength / count, from: "the total length" };
    return null;
  }
  if (length === null || length <= 0) return null;
  const ofOne = field === "each" && row.members !== null ? row.members : 1;
  if (
    field === "members" ||
    (field === "total" && row.members !== null && row.each === null && row.members > 1)
  )
    return null;
  const byLength = totalLength === null ? null : totalLength / length / ofOne;
  if (byLength !== null && isNearWhole(byLength))
    return { value: Math.round(byLength), from: "the total length" };
  const byMass =
    mass === null || perMetre === null ? null : mass / ((length / MM_PER_METRE) * perMetre) / ofOne;
  return byMass !== null && isNearWhole(byMass) ? { value: Math.round(byMass), from: "the mass" } : null;
}

function isNearWhole(value: number): boolean {
  return value >= 1 && Math.abs(value - Math.round(value)) <= NEAR_WHOLE * value;
}

/** masses of a size differ by about 1 % from table to table */
const NEAR_WHOLE = 0.012;
