import type { Finding } from "../audit/finding";
import type { CutRow } from "../cutting/cut-row";
import { counted } from "../units/counted";

/** Pieces of a row that may hurt somebody, or that cannot be bent as it stands. */
export interface NotToMake {
  readonly size: string;
  readonly mark: string | null;
  readonly count: number;
  readonly sheet: string;
  /** address of its length */
  readonly cell: string;
  /** the worst finding of the row */
  readonly why: string;
}

type Told = Pick<Finding, "severity" | "outcome" | "sheet" | "row" | "message" | "behind">;

/** The rows of a cut list that are unsafe or cannot be bent for certain, by the findings of their sheets. */
export function piecesNotToMake(rows: readonly CutRow[], findings: readonly Told[]): NotToMake[] {
  const worst = new Map<string, { readonly why: string; readonly isUnsafe: boolean }>();
  for (const { severity, outcome, sheet, row: own, message, behind = [] } of findings) {
    if (outcome !== "broken" || (severity !== "unsafe" && severity !== "unbendable")) continue;
    const told = behind.length > 0 ? behind : own === null ? [] : [{ row: own, message }];
    for (const { row, message: why } of told) {
      const key = JSON.stringify([sheet, row]);
      const isUnsafe = severity === "unsafe";
      const known = worst.get(key);
      if (known === undefined || (isUnsafe && !known.isUnsafe)) worst.set(key, { why, isUnsafe });
    }
  }
  return rows.flatMap(({ size, mark, count, sheet, cell }) => {
    const found = worst.get(JSON.stringify([sheet, Number(/\d+$/.exec(cell)?.[0])]));
    return found === undefined ? [] : [{ size, mark, count, sheet, cell, why: found.why }];
  });
}

/** "H16, mark 01, 10 bars, Slab!G5: former 40 mm is below the least 64 mm for H16" */
export function notToMakeText(
  { size, mark, count, sheet, cell, why }: NotToMake,
  namesSheet: boolean,
): string {
  const place = namesSheet ? `${sheet}!${cell}` : cell;
  const named = [size, mark === null ? null : `mark ${mark}`, counted(count, "bar"), place];
  return `${named.filter((part) => part !== null).join(", ")}: ${why}`;
}
