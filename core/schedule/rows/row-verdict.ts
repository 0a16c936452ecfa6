import type { RowClass } from "../bar-row";
import type { RowReason } from "./row-reason";

/** What a row was taken for, and why. */
export interface RowVerdict {
  readonly class: RowClass;
  readonly because: RowReason;
}

export const BLANK: RowVerdict = { class: "blank", because: { code: "nothing-filled" } };
export const HEADER: RowVerdict = { class: "heading", because: { code: "header" } };
export const HEADER_AGAIN: RowVerdict = { class: "heading", because: { code: "header-again" } };
export const COLUMN_NUMBERS: RowVerdict = { class: "heading", because: { code: "column-numbers" } };
export const SIZES_OF_SUMS: RowVerdict = { class: "heading", because: { code: "sizes-of-sums" } };
export const FIRST_OF_SUMS: RowVerdict = { class: "total", because: { code: "summary-line" } };
export const OUTSIDE: RowVerdict = { class: "note", because: { code: "outside-of-tables" } };
export const SUM_OF_MEMBERS: RowVerdict = { class: "total", because: { code: "sum-of-members" } };
export const PLAIN_BAR: RowVerdict = { class: "bar", because: { code: "size-count-length" } };

/** Of the parts of a row the one that ranks highest names the row. */
export const RANK: Readonly<Record<RowClass, number>> = {
  blank: 0,
  note: 1,
  unread: 2,
  heading: 3,
  total: 4,
  bar: 5,
};
