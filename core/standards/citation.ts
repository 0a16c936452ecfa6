/**
 * How far a number may be trusted. Sure: somebody read it in a named place; its owner looked it up; the
 * yard or the workbook's owner wrote it down as their own; geometry of what stands there. Not sure:
 * recalled, not yet seen; a fact of the trade with no source; derived by us from other numbers.
 */
export type Provenance =
  | "published"
  | "confirmed"
  | "own"
  | "geometry"
  | "memory"
  | "common practice"
  | "derived";

const SURE: ReadonlySet<Provenance> = new Set(["published", "confirmed", "own", "geometry"]);

/** Whether a finding that rests on it may be told as certain; sources that differ make it not so. */
export function isSure({ provenance, conflict }: Citation): boolean {
  if (provenance === "confirmed" || provenance === "own") return true;
  return SURE.has(provenance) && conflict === undefined;
}

/** Where a number comes from. It travels with the number to every finding, derivation and page. */
export interface Citation {
  readonly document: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly provenance: Provenance;
  /** Where it was read. */
  readonly seen?: string;
  /** Who looked in the owner's copy, and when. */
  readonly by?: string;
  readonly on?: string;
  /** What was held before the owner's figure took its place. */
  readonly was?: string;
  /** Sources differ, or the source differs from itself: what was decided, and why. */
  readonly conflict?: string;
}

/** Of what a finding rests on, the source that makes it least sure; the first where all are sure. */
export function leastSure(first: Citation, ...others: readonly Citation[]): Citation {
  return [first, ...others].find((cite) => !isSure(cite)) ?? first;
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
  return `${name}${clause} (${trustText(cite)}${conflict})`;
}

/** "memory", "confirmed by NAME, DATE", "own, by NAME, DATE; 64 was held". */
export function trustText({ provenance, by, on, was }: Citation): string {
  if (by === undefined) return provenance;
  const who = on === undefined ? by : `${by}, ${on}`;
  if (provenance === "confirmed") return `confirmed by ${who}`;
  return was === undefined ? `${provenance}, by ${who}` : `${provenance}, by ${who}; ${was} was held`;
}
