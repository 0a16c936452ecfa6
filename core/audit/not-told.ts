import type { SheetFacts } from "../bar/sheet-facts";
import type { Waiver } from "./audit-settings";
import type { DecidedBy } from "./decided-words";
import { type Finding, rowsBehind } from "./finding";
import type { Limits } from "./limits";

/** What kept a finding from being told. */
export type Withheld =
  | { readonly kind: "waiver"; readonly waiver: Waiver }
  | { readonly kind: "rule off" }
  | { readonly kind: "limit"; readonly limit: keyof Limits; readonly value: number };

/** A decision of the workbook's user because of which something is not told, or may not be. */
export interface NotTold extends DecidedBy {
  readonly because: Withheld;
  /** code of the rule */
  readonly rule: string;
  /** null where it holds for every sheet */
  readonly sheet: string | null;
  /** the sheet's own row number, from 1; null where it holds for more than one */
  readonly row: number | null;
  /** findings that would be told without it */
  readonly findings: readonly Finding[];
  /** rows of bars that those are about */
  readonly bars: number;
  /** those of the rows of which something unsafe is not told */
  readonly unsafe: number;
  /** the same row by row, each with its bars */
  readonly hidden: readonly HiddenRow[];
}

/** A row of bars of which something is not told. */
export interface HiddenRow {
  readonly sheet: string;
  /** the sheet's own row number, from 1 */
  readonly row: number;
  /** bars that the row asks for; null where that is not known */
  readonly bars: number | null;
  readonly isUnsafe: boolean;
}

/** Bars that a row of a sheet asks for, by the sheet's own row number; null where that is not known. */
export type BarsOfRow = (sheet: string, row: number) => number | null;

/** By the facts of the sheets that were read. */
export function barsByFacts(sheets: readonly { readonly facts: SheetFacts }[]): BarsOfRow {
  return (name, row) => {
    const facts = sheets.find(({ facts: one }) => one.name === name)?.facts;
    return facts?.barAt(row - 1 - facts.sheet.top)?.count ?? null;
  };
}

/** How many rows of bars findings are about, how many of them are unsafe, and which they are. */
export function barsOf(
  findings: readonly Finding[],
  barsOfRow: BarsOfRow,
): Pick<NotTold, "bars" | "unsafe" | "hidden"> {
  const byRow = new Map<string, HiddenRow>();
  for (const finding of findings) {
    const { sheet, severity } = finding;
    for (const row of rowsBehind(finding)) {
      const key = `${row} ${sheet}`;
      const known = byRow.get(key);
      const isUnsafe = severity === "unsafe" || known?.isUnsafe === true;
      byRow.set(key, { sheet, row, bars: known?.bars ?? barsOfRow(sheet, row), isUnsafe });
    }
  }
  const hidden = [...byRow.values()];
  return { bars: hidden.length, unsafe: hidden.filter(({ isUnsafe }) => isUnsafe).length, hidden };
}

/** Bars of all these rows; null where those of one are not known. */
export function barsInRows(hidden: readonly HiddenRow[]): number | null {
  return hidden.reduce<number | null>(
    (sum, { bars }) => (sum === null || bars === null ? null : sum + bars),
    0,
  );
}
