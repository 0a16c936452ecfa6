/** What made a row what it was taken for, in the order in which it is looked for. */
export type RowReasonCode =
  // the whole row
  | "header"
  | "nothing-filled"
  | "header-again"
  | "column-numbers"
  | "sizes-of-sums"
  | "outside-of-tables"
  | "bar-without-heads"
  // its part under one table
  | "beside-the-table"
  | "left-out-columns"
  | "remark-in-summary"
  | "bar-after-summary"
  | "summary-line"
  | "size-count-length"
  | "sum-word"
  | "sum-by-size"
  | "wastage-word"
  | "foot-of-columns"
  | "behind-the-list"
  | "title-or-foot"
  | "group-word"
  | "member-heading"
  | "size-heading"
  | "text-alone"
  | "accessory"
  | "row-cancelled"
  | "size-unread"
  | "fields-of-a-bar"
  | "size-and-mark"
  | "no-field"
  | "numbers-alone"
  | "sums-of-list"
  | "another-table"
  | "sum-of-members"
  | "sum-of-rows"
  | "mark-alone"
  | "size-alone"
  | "no-name"
  | "no-field-read";

export interface RowReason {
  readonly code: RowReasonCode;
  /** the words of the row that it rests on */
  readonly values?: { readonly words: string };
}
