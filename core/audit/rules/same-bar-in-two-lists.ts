import type { BarFacts } from "../../bar/bar-facts";
import { TWICE } from "../../bar/identities.data";
import { MarkIndex } from "../../bar/mark-index";
import { firstDifference } from "../../bar/same-bar";
import type { SheetFacts } from "../../bar/sheet-facts";
import { BookRevisions } from "../book-revisions";
import { isOneList, listsRepeated } from "../lists-repeated";
import { defineRule } from "../rule";

export default defineRule({
  code: "MARK104",
  name: "same-bar-in-two-lists",
  severity: "doubtful",
  docs: {
    summary: "The same bar of the same member and mark, or a whole list of bars, stands in two lists.",
    why: "Starters are often listed with the foundation and again with the column, and then cut twice. A list to order or cut by, kept beside the schedule, counts all of its steel again.",
    failing: [
      {
        sheets: {
          Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
          Column: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        },
      },
    ],
    passing: [
      {
        sheets: {
          Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
          Column: [{ member: "C1", mark: "S2", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        },
      },
    ],
  },
  messages: {
    list: "{rows} of {of} rows{list} repeat bars of {where}, by mark, size, length and number: {mass} of steel may be counted twice; hide or take out the list that only repeats",
    twice: "mark {mark} of {member} stands in {where} too: is it counted twice?",
    runsOn:
      "mark {mark} stands in {where} too, the same bar and as many, while the other marks run on: is it entered twice?",
  },
  checkSheet(sheet, _context, report) {
    const { sheets } = sheet.book;
    if (sheets.length === 1 && isOneList(sheet)) return;
    const seen = new MarkIndex<BarFacts>();
    const revisions = sheets.length === 1 ? null : BookRevisions.of(sheet.book);
    const isOld = (one: SheetFacts): boolean => revisions !== null && revisions.laterSheets(one) !== null;
    // an older revision of a sheet is no other list
    const others = isOld(sheet) ? [] : sheets.slice(0, sheets.indexOf(sheet)).filter((one) => !isOld(one));
    for (const other of others) {
      for (const facts of other.bars) keepFirst(seen, facts);
    }
    const told = new Set<BarFacts>();
    for (const { at, of, again, where, kg, isOfSameMember } of listsRepeated(others, sheet)) {
      for (const facts of again) told.add(facts);
      const list = at === null ? "" : ` of the list at ${at}`;
      const values = { rows: again.size, of, list, where, mass: { kg } };
      report({ messageId: "list", ...(isOfSameMember ? {} : { outcome: "unsure" }), values });
    }
    for (const { first, again } of repeatedOn(others, sheet)) {
      if (told.has(again)) continue;
      const where = `sheet ${first.sheet.sheet.name}, row ${first.sheet.sheet.top + first.row.row + 1}`;
      const values = { mark: again.row.mark ?? "", where };
      report({ messageId: "runsOn", outcome: "unsure", row: again, at: "mark", values });
    }
    for (const facts of sheet.bars) {
      const first = keepFirst(seen, facts);
      if (first === null || first === facts || told.has(facts)) continue;
      const sameList = first.sheet === facts.sheet && first.row.table === facts.row.table;
      if (sameList || firstDifference(first.row, facts.row) !== null) continue;
      if (first.row.revision !== facts.row.revision) continue;
      const list = first.sheet === facts.sheet ? "" : `sheet ${first.sheet.sheet.name}, `;
      const where = `${list}row ${first.sheet.sheet.top + first.row.row + 1}`;
      const values = { mark: facts.row.mark ?? "", member: facts.row.member ?? "", where };
      report({ messageId: "twice", row: facts, at: "mark", values });
    }
  },
});

function keepFirst(seen: MarkIndex<BarFacts>, facts: BarFacts): BarFacts | null {
  const { markKey, row } = facts;
  return markKey === null || row.member === null ? null : seen.keep(row.member, markKey, facts);
}

/** Bars without a member that repeat those of sheets before, where marks run on from sheet to sheet. */
function repeatedOn(
  others: readonly SheetFacts[],
  sheet: SheetFacts,
): readonly { readonly first: BarFacts; readonly again: BarFacts }[] {
  const { leastOfAlike, mostRepeated } = TWICE.value;
  const own = sheet.bars.filter(hasMarkAlone);
  const before = new Map<string | null, BarFacts>();
  for (const other of others)
    for (const facts of other.bars) if (hasMarkAlone(facts)) before.set(facts.markKey, facts);
  if (own.length < leastOfAlike || before.size < leastOfAlike) return [];
  const pairs = own.flatMap((again) => {
    const first = before.get(again.markKey);
    return first === undefined ? [] : [{ first, again }];
  });
  if (pairs.length > Math.max(1, mostRepeated * own.length)) return [];
  return pairs.filter(
    ({ first, again }) =>
      first.count !== null &&
      first.count === again.count &&
      first.row.revision === again.row.revision &&
      !first.row.struckThrough &&
      !again.row.struckThrough &&
      firstDifference(first.row, again.row) === null,
  );
}

/** The member is none that a cell says: the sheet's name stands for it. */
function hasMarkAlone({ markKey, row, sheet }: BarFacts): boolean {
  return markKey !== null && (row.member === null || row.member === sheet.sheet.name);
}
