import type { Refusal } from "../units/refusal";

/** A row of a schedule or list that asks for bars of one length. */
export interface CutRow {
  /** as typed */
  readonly size: string;
  /** as typed; null where the row says none */
  readonly grade: string | null;
  readonly mark: string | null;
  /** mm, cut length */
  readonly length: number;
  readonly count: number;
  readonly sheet: string;
  /** address of its length, or of what stands for it */
  readonly cell: string;
  /** the reference of its schedule; where it has none the sheet stands for it */
  readonly schedule?: string | null;
  /** the sheet's own row, where it is known beside the cell */
  readonly row?: number;
  /** why its shape alone cannot be made as it stands */
  readonly unmade?: string;
}

/** Bars that are in no plan, and why; without mark and cell it is a whole size. */
export interface RefusedRow {
  readonly size: string;
  readonly grade: string | null;
  readonly mark: string | null;
  readonly sheet: string | null;
  readonly cell: string | null;
  /** the sheet's own row, where it is known beside the cell */
  readonly row?: number;
  /** mm; null where it is not known */
  readonly length: number | null;
  readonly count: number | null;
  /** mm, the longest stock; null where the reason is another */
  readonly longestStock: number | null;
  readonly reason: Refusal;
}
