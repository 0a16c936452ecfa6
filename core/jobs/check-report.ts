import type { RowCounts } from "../audit";
import type { Finding, Fix } from "../audit/finding";
import { barsInRows } from "../audit/not-told";
import { type SeverityCounts, severityCounts } from "../audit/severity-counts";
import { explainReading, explainRows, type ReadingExplained, type RowExplained } from "../schedule";
import type { NotInTotal } from "../totals/row-mass";
import type { CheckedBook } from "./check";

/** A finding as it is handed on: what is not of the sheet itself is left out. */
export type ToldFinding = Omit<Finding, "rows" | "also" | "fix"> & {
  readonly fix:
    | (Omit<Fix, "edits"> & {
        readonly edits: readonly { readonly cell: string; readonly to: string | number | null }[];
      })
    | null;
};

/** The audit of one book as plain data, in the shape that scripts rely on. */
export interface CheckReport {
  readonly standard: string;
  readonly rows: RowCounts;
  readonly sheets: readonly {
    readonly sheet: string;
    readonly header: number | null;
    readonly rows: RowCounts;
  }[];
  readonly reading: readonly (ReadingExplained & { readonly rows?: readonly RowExplained[] })[];
  readonly findings: readonly ToldFinding[];
  readonly waivers: readonly {
    readonly rule: string;
    readonly sheet: string | null;
    readonly row: number | null;
    readonly reason: string;
    readonly by: string;
    readonly date: string;
    /** rows of bars */
    readonly bars: number;
    /** bars that those rows ask for; null where a count is not known */
    readonly pieces: number | null;
  }[];
  readonly counts: SeverityCounts;
  readonly notInTotal: readonly NotInTotal[];
}

/** The report of a checked book; with `explain` a class and a reason for each row. */
export function checkReport({ report, tonnage, schedules }: CheckedBook, explain: boolean): CheckReport {
  const sheets = report.sheets.map(({ sheet, header, rows }) => ({ sheet, header, rows }));
  const { standard, rows, findings } = report;
  const waivers = report.waivers.map(({ rule, sheet, row, reason, by, date, bars, hidden }) => ({
    rule,
    sheet,
    row,
    reason,
    by,
    date,
    bars,
    pieces: barsInRows(hidden),
  }));
  const reading = schedules.map(({ sheet, reading: own }) => ({
    ...explainReading(sheet, own),
    ...(explain ? { rows: explainRows(sheet, own) } : {}),
  }));
  const told = findings.map(({ rows: _, toldEach: _each, also: _also, fix, ...finding }) => ({
    ...finding,
    fix: fix === null ? null : { ...fix, edits: fix.edits.map(({ cell, to }) => ({ cell, to })) },
  }));
  const counts = severityCounts(findings);
  const { notInTotal } = tonnage;
  return { standard: standard.id, rows, sheets, reading, findings: told, waivers, counts, notInTotal };
}
