import type { BarRow } from "../bar-row";
import { isFilled, type TableColumns } from "../columns/table-columns";
import type { RowInHand } from "../rows/row-in-hand";
import { type Cell, cellErrorReason, isCellError } from "../sheet";
import { cleanText } from "./clean-text";
import { shortened } from "./longest-text";
import { type CountReading, readCountText } from "./read-count-text";
import type { SizeCell } from "./read-size-cell";

/** What carries over from the rows above. */
export interface Carried {
  member: string | null;
  /** the member that a sub-header row named */
  heading: string | null;
  /** number of members that a sub-header row gave */
  members: number | null;
  /** typed beside the carried member */
  membersTyped: number | null;
  grade: string | null;
}

export function isSameCarried(a: Carried, b: Carried): boolean {
  return (
    a.member === b.member &&
    a.heading === b.heading &&
    a.members === b.members &&
    a.membersTyped === b.membersTyped &&
    a.grade === b.grade
  );
}

type CountKind = "members" | "each" | "total";
type Counted = Extract<CountReading, { is: "value" }>;

const MOST_REMEMBERED = 50_000;

/** Reads members, number in each and total of a row into the row in hand. */
export function countCellsReader(hand: RowInHand, columns: TableColumns) {
  const remembered = new Map<string, CountReading>();
  const above: Record<CountKind, (bar: BarRow) => number | null> = {
    members: (bar) => bar.members,
    each: (bar) => bar.each,
    total: (bar) => bar.total,
  };

  /** Gives a size that was written behind a count, as in 2x3T20. */
  return function counts(cells: readonly Cell[], size: SizeCell | null, carried: Carried): string | null {
    const members = count("members", columns.members, cells);
    const each = count("each", columns.each, cells);
    const total = count("total", columns.total, cells);
    hand.members = numberOf(members);
    hand.each = numberOf(each);
    hand.total = numberOf(total);
    if (isProduct(total) && hand.members === null && hand.each === null) takeProduct(total);
    if (isProduct(each) && hand.members === null) takeProduct(each);
    if (isProduct(members) && hand.each === null) takeProduct(members);
    if (size !== null && size.count !== null && hand.each === null && hand.total === null) {
      hand.total = size.count;
      if (hand.members === null) {
        hand.members = size.members;
        hand.each = size.each;
      }
    }
    if (hand.members !== null) carried.membersTyped = hand.members;
    else if (!isFilled(cells, columns.members)) hand.members = membersBeside(cells, carried);
    if (columns.totalIsOpen) askWhoseCount(cells);
    return sizeBehind(total) ?? sizeBehind(each) ?? sizeBehind(members);
  };

  function askWhoseCount(cells: readonly Cell[]): void {
    const { members, each, total } = hand;
    if (members === null || members < 2 || each !== null || total === null) return;
    const reason = `${total} may count the bars of all ${members} members or of each: no column says which`;
    const said = { guess: "count-of-member", asks: true, reason, proposal: total } as const;
    if (!hand.mayUse("total", columns.total, cells[columns.total] ?? null, said)) hand.total = null;
  }

  function takeProduct(reading: Counted): void {
    hand.members = reading.members;
    hand.each = reading.each;
  }

  function count(field: CountKind, column: number, cells: readonly Cell[]): number | Counted | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number" && Number.isSafeInteger(cell) && cell >= 0) return cell;
    if (typeof cell === "string") return countOfText(field, column, cell);
    hand.unread(field, column, cell, reasonNoCount(cell));
    return null;
  }

  function countOfText(field: CountKind, column: number, cell: string): number | Counted | null {
    let reading = remembered.get(cell);
    if (reading === undefined) {
      reading = readCountText(cleanText(cell), "thousands");
      if (remembered.size > MOST_REMEMBERED) remembered.clear();
      remembered.set(cell, reading);
    }
    switch (reading.is) {
      case "blank":
        return null;
      case "ditto":
        return hand.previous === null ? null : above[field](hand.previous);
      case "unread":
        hand.unread(field, column, cell, reading.reason);
        return null;
      case "same-as":
        return hand.sameAs<number>(field, column, cell, reading.mark, above[field]);
      default:
        if (reading.guess === null) return reading;
    }
    const { guess, asks, reason, value } = reading;
    return hand.mayUse(field, column, cell, { guess, asks, reason, proposal: value }) ? reading : null;
  }

  /** Members not written in the row: a sub-header's, the carried member's, or one where the total says so. */
  function membersBeside(cells: readonly Cell[], carried: Carried): number | null {
    if (carried.members !== null) return carried.members;
    const { each, total } = hand;
    if (each === null) return null;
    const before = carried.membersTyped;
    if (total !== null) {
      if (total === each) return 1;
      return before !== null && before * each === total ? before : null;
    }
    if (isFilled(cells, columns.total)) return null;
    const proposal = before ?? 1;
    const reason =
      before === null
        ? "the number of members is blank and no total is typed: 1 may be meant"
        : `the number of members is blank and no total is typed: ${proposal} may carry down from above`;
    const guess = before === null ? "members-of-one" : "members-carried";
    const column = columns.members >= 0 ? columns.members : columns.each;
    return hand.mayUse("members", column, null, { guess, asks: true, reason, proposal }) ? proposal : null;
  }
}

function reasonNoCount(cell: Cell): string {
  if (isCellError(cell)) return cellErrorReason(cell);
  const what = typeof cell === "number" && cell < 0 ? "is negative" : "is no whole number";
  return `"${shortened(String(cell))}" ${what}, so it is no count of bars`;
}

function numberOf(reading: number | Counted | null): number | null {
  return typeof reading === "object" ? (reading?.value ?? null) : reading;
}

function isProduct(reading: number | Counted | null): reading is Counted {
  return typeof reading === "object" && reading !== null && reading.members !== null;
}

function sizeBehind(reading: number | Counted | null): string | null {
  return typeof reading === "object" ? (reading?.size ?? null) : null;
}
