/**
 * How far a number may be trusted: somebody read it in a named place; recalled, not yet seen;
 * a fact of the trade with no source; computed from geometry or arithmetic.
 */
export type Provenance = "published" | "memory" | "common practice" | "derived";

/** Where a number comes from. It travels with the number to every finding, derivation and page. */
export interface Citation {
  readonly document: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly provenance: Provenance;
  /** Where it was read. */
  readonly seen?: string;
  /** Sources differ, or the source differs from itself: what was decided, and why. */
  readonly conflict?: string;
}

export interface Cited<T> {
  readonly value: T;
  readonly cite: Citation;
}

/** Rows in printed order, units and precision, without arithmetic. */
export interface PrintedTable<Row> {
  readonly cite: Citation;
  readonly rows: readonly Row[];
}

/** One line: document, edition, clause and trust. */
export function citationText(cite: Citation): string {
  const name = cite.edition === undefined ? cite.document : `${cite.document}:${cite.edition}`;
  const clause = cite.clause === undefined ? "" : `, ${cite.clause}`;
  const conflict = cite.conflict === undefined ? "" : `; sources differ: ${cite.conflict}`;
  return `${name}${clause} (${cite.provenance}${conflict})`;
}
