import type { Citation } from "../citation";

/** The row's own source where it has one; else the table's, with what is in doubt about this row alone. */
export function rowCitation(
  cite: Citation,
  { conflict, cite: own }: { readonly conflict?: string; readonly cite?: Citation },
): Citation {
  if (own !== undefined) return own;
  if (conflict === undefined) return cite;
  return { ...cite, conflict: cite.conflict === undefined ? conflict : `${conflict}; ${cite.conflict}` };
}
