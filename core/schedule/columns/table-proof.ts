import type { Agreement, ColumnDecision, Weighed } from "../evidence/index";

/** How the rows of a table agree with the reading of its columns. */
export interface TableProof {
  /** the products and sums that could be tested, with the rows that keep them */
  readonly agreement: readonly Agreement[];
  /** columns about which words and arithmetic differ */
  readonly decisions: readonly ColumnDecision[];
  readonly held: Weighed["held"];
  /** some product of counts and lengths stands behind the reading */
  readonly isConfirmed: boolean;
}

/** Rows that agree with a column, of those that could be tested, by the surest product that it takes part in. */
export function shareOfColumn(
  proof: TableProof | null | undefined,
  column: number,
): { readonly kept: number; readonly tested: number } | null {
  const own = (proof?.agreement ?? []).filter(({ columns }) => columns.includes(column));
  const surest = own.reduce<Agreement | null>(
    (best, one) => (best === null || one.tested > best.tested ? one : best),
    null,
  );
  return surest === null ? null : { kept: surest.kept, tested: surest.tested };
}
