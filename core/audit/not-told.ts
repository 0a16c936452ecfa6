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
  /** those of the bars of which something unsafe is not told */
  readonly unsafe: number;
}

/** How many bars findings are about, and how many of them are unsafe. */
export function barsOf(findings: readonly Finding[]): { readonly bars: number; readonly unsafe: number } {
  return {
    bars: rowsOf(findings),
    unsafe: rowsOf(findings.filter(({ severity }) => severity === "unsafe")),
  };
}

function rowsOf(findings: readonly Finding[]): number {
  return new Set(findings.flatMap((finding) => rowsBehind(finding).map((row) => `${row} ${finding.sheet}`)))
    .size;
}
