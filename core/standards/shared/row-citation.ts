import type { Citation } from "../citation";

/** The table's citation, with what is in doubt about this row alone. */
export function rowCitation(cite: Citation, { conflict }: { readonly conflict?: string }): Citation {
  if (conflict === undefined) return cite;
  return { ...cite, conflict: cite.conflict === undefined ? conflict : `${conflict}; ${cite.conflict}` };
}
