import type { RowReason, RowReasonCode } from "./row-reason";

const TEXTS: Readonly<Record<RowReasonCode, string>> = {
  header: "it belongs to the header",
  "nothing-filled": "nothing stands in it",
  "header-again": "it says the header again",
  "column-numbers": "it numbers the columns",
  "sizes-of-sums": "bar sizes over sums",
  "outside-of-tables": "it stands outside the columns or the rows of the schedules",
  "bar-without-heads":
    "size, count and length of a bar stand in it, under no heads of a table that could be read: write heads over it",
  "beside-the-table":
    "size and numbers stand in it, all beside the columns of the table: move a bar under them, clear what is none",
  "left-out-columns": "only columns that are left out are filled",
  "remark-in-summary": "one cell among sums",
  "bar-after-summary": "a bar follows the sums: mark, size and more stand in it",
  "summary-line": "it stands under the head of a block of sums",
  "size-count-length": "size, count and shape or length stand in it as numbers or codes",
  "sum-word": 'the words "{words}" make it a sum',
  "sum-by-size": "a size and what there is of it: a line of an abstract",
  "wastage-word": 'the words "{words}" speak of wastage',
  "foot-of-columns": "it sums columns: words that name sums, or numbers under several bar sizes",
  "behind-the-list": "it stands below the last bar and holds little of one",
  "title-or-foot": 'the words "{words}" belong to a title block or a foot',
  "group-word": 'the word "{words}" heads a group of rows',
  "member-heading": 'the words "{words}" name a member that the bars below belong to',
  "size-heading": 'the words "{words}" name the size of the bars below',
  "text-alone": "one text alone, which says something of the bar above",
  accessory: "it lists an accessory, not a bar",
  "row-cancelled":
    "its words say that the bar is no more, and neither size nor count nor length stands in it",
  "size-unread":
    "neither its size nor its count nor its length could be read; a remark or order line belongs outside the columns of the bars",
  "fields-of-a-bar": "two or more of size, shape, count, length and dimensions stand in it",
  "size-and-mark": "size and mark stand in it",
  "no-field": "no field of a bar stands in it",
  "numbers-alone": "only numbers stand in it, without size, mark or shape",
  "sums-of-list": "its numbers are what the bars above add up to, by size, by member or in all",
  "another-table":
    "it stands in rows that are unlike the bars above in nearly every cell: a table of sums, or of something else, and no bars; write heads over bars, and put sums on a sheet of their own",
  "sum-of-members": "it says how many members the bars above are made for, beside so many times their amount",
  "sum-of-rows": 'beside the words "{words}" only what rows above add up to can stand',
  "mark-alone": "a mark, but neither size, count, length nor shape beside it",
  "size-alone": "a size, but neither mark, count, length nor shape beside it",
  "no-name": "neither mark nor size",
  "no-field-read": "no field of a bar could be made out",
};

/** Why a row was taken for what it was, in words. */
export function rowReasonText({ code, values }: RowReason): string {
  return TEXTS[code].replace("{words}", () => values?.words ?? "");
}
