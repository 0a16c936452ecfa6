import { guessed } from "../cells/cell-answer";
import { isFilled } from "../cells/is-filled";
import { type CountAnswer, type CountSaid, readCountCell } from "../cells/read-count-cell";
import type { CountReading } from "../cells/read-count-text";
import type { SizeCell } from "../cells/read-size-cell";
import type { TableColumns } from "../columns/table-columns";
import type { Cell } from "../sheet";
import type { Carried } from "./carried";
import type { RowDraft } from "./row-draft";

/**
 * Members, number in each and total of a row, with what was carried down; gives a size that was written behind
 * a count, as in 2x3T20.
 */
export function settleCounts(
  draft: RowDraft,
  cells: readonly Cell[],
  size: SizeCell | null,
  carried: Carried,
  columns: TableColumns,
  readText: (typed: string) => CountReading,
): string | null {
  const { members: membersAt, each: eachAt, total: totalAt } = columns;
  const members = readCountCell("members", membersAt, cells[membersAt], readText, draft);
  draft.members = draft.takeBare<number>(members);
  const each = readCountCell("each", eachAt, cells[eachAt], readText, draft);
  draft.each = draft.takeBare<number>(each);
  const total = readCountCell("total", totalAt, cells[totalAt], readText, draft);
  draft.total = draft.takeBare<number>(total);
  if (isProduct(total) && draft.members === null && draft.each === null) takeProduct(draft, total);
  // under a heading that gives the members a product may be the bars of one of them
  const isOfOne = carried.members !== null && isProduct(each) && each.members !== carried.members;
  if (isProduct(each) && draft.members === null && !isOfOne) takeProduct(draft, each);
  if (isProduct(members) && draft.each === null) takeProduct(draft, members);
  if (size !== null && size.count !== null && draft.each === null && draft.total === null) {
    // beside a column of totals left blank it counts the bars of each, as in the rows that have both
    const isOfEach = totalAt >= 0 && totalAt !== columns.size && size.members === null;
    if (isOfEach) draft.each = size.count;
    else draft.total = size.count;
    if (draft.members === null && !isOfEach) {
      draft.members = size.members;
      draft.each = size.each;
    }
  }
  draft.membersTyped = draft.members;
  // "3Ø12" beside 2 members and 6 in all: the bars of one
  const isBeside = draft.members !== null && draft.members > 1 && draft.total !== null;
  if (isBeside && draft.each === null && size !== null && size.count !== null && eachAt < 0) {
    draft.each = size.count === draft.total ? null : size.count;
  }
  if (draft.members === null && !isFilled(cells, columns.members)) {
    draft.members = membersBeside(draft, cells, carried, columns);
  }
  const isOpen = carried.members === null ? columns.totalIsOpen : columns.totalIsOpenUnderHeading;
  if (isOpen) askWhoseCount(draft, cells, columns);
  return sizeBehind(total) ?? sizeBehind(each) ?? sizeBehind(members);
}

function askWhoseCount(draft: RowDraft, cells: readonly Cell[], columns: TableColumns): void {
  const { members, each, total } = draft;
  if (members === null || members < 2 || each !== null || total === null) return;
  const reason = `${total} may count the bars of all ${members} members or of each: no column says which`;
  const said = { guess: "count-of-member", asks: true, reason, proposal: total } as const;
  const place = { field: "total", column: columns.total, typed: cells[columns.total] ?? null } as const;
  draft.total = draft.take(guessed(place, total, said, draft));
}

/** Members not written in the row: a sub-header's, the carried member's, or one where the total says so. */
function membersBeside(
  draft: RowDraft,
  cells: readonly Cell[],
  carried: Carried,
  columns: TableColumns,
): number | null {
  if (carried.members !== null) return carried.members;
  const { each, total } = draft;
  if (each === null) return null;
  const before = carried.membersTyped;
  if (total !== null) {
    if (total === each) return 1;
    return before !== null && (before * each === total || columns.membersCarryDown) ? before : null;
  }
  if (isFilled(cells, columns.total)) return null;
  if (before !== null && columns.membersCarryDown) return before;
  const proposal = before ?? 1;
  const reason =
    before === null
      ? "the number of members is blank and no total is typed: 1 may be meant"
      : `the number of members is blank and no total is typed: ${proposal} may carry down from above`;
  const guess = before === null ? "members-of-one" : "members-carried";
  const column = columns.members >= 0 ? columns.members : columns.each;
  const place =
    column >= 0
      ? ({ field: "members", column, typed: null } as const)
      : ({ field: "total", column: columns.total, typed: null } as const);
  return draft.take(guessed(place, proposal, { guess, asks: true, reason, proposal }, draft));
}

function isProduct(answer: CountAnswer): answer is CountSaid {
  return typeof answer === "object" && answer !== null && (answer.members ?? null) !== null;
}

function takeProduct(draft: RowDraft, { members = null, each = null }: CountSaid): void {
  draft.members = members;
  draft.each = each;
}

function sizeBehind(answer: CountAnswer): string | null {
  return typeof answer === "object" ? (answer?.size ?? null) : null;
}
