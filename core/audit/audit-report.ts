import type { RowClass, ScheduleReading } from "../schedule/bar-row";
import type { Standard } from "../standards/port";
import type { Waiver } from "./audit-settings";
import type { Finding } from "./finding";
import type { NotTold } from "./not-told";

export type RowCounts = Readonly<
  Record<"bars" | "headings" | "totals" | "notes" | "blank" | "unread", number>
>;

export interface AuditedSheet {
  readonly sheet: string;
  readonly reading: ScheduleReading;
  /** the sheet's own row number of the first header, from 1; null where none was found */
  readonly header: number | null;
  readonly rows: RowCounts;
}

/** What an audit found, in order of sheet, row and severity; a sheet-wide finding stands before its rows. */
export interface AuditReport {
  readonly standard: Standard;
  readonly sheets: readonly AuditedSheet[];
  readonly findings: readonly Finding[];
  /** the same with each row's own in place of one that stands for many: for what is said of one bar */
  readonly byRow: readonly Finding[];
  /** the sheet read as the Shop sheet and not as a schedule; null where the book has none */
  readonly shopSheet: string | null;
  /** the sheet Standard, whose figures and shapes are in force; null where the book has none */
  readonly ownSheet: string | null;
  /** sums over the sheets; every row of each used range is in one class */
  readonly rows: RowCounts;
  /** what is not told because somebody said so: waivers, rules turned off, limits changed */
  readonly waivers: readonly NotTold[];
  /** waivers that no finding answers to any longer */
  readonly outdatedWaivers: readonly Waiver[];
}

const CLASS_NAMES: Readonly<Record<RowClass, keyof RowCounts>> = {
  bar: "bars",
  heading: "headings",
  total: "totals",
  note: "notes",
  blank: "blank",
  unread: "unread",
};

const counted = new WeakMap<readonly RowClass[], RowCounts>();

export function countRows(classes: readonly RowClass[]): RowCounts {
  const known = counted.get(classes);
  if (known !== undefined) return known;
  const counts = { bars: 0, headings: 0, totals: 0, notes: 0, blank: 0, unread: 0 };
  for (const rowClass of classes) counts[CLASS_NAMES[rowClass]] += 1;
  counted.set(classes, counts);
  return counts;
}

export function sumRowCounts(sheets: readonly { readonly rows: RowCounts }[]): RowCounts {
  const sum = { bars: 0, headings: 0, totals: 0, notes: 0, blank: 0, unread: 0 };
  for (const { rows } of sheets) {
    for (const name of Object.keys(sum) as (keyof RowCounts)[]) sum[name] += rows[name];
  }
  return sum;
}
