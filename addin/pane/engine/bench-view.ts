import type { CellEdit } from "../../workbook/workbook-port";

/** A bar of the schedule to be chosen at the bench. */
export interface MarkView {
  /** the sheet's own row, from 1; its column where the bars stand in columns */
  readonly row: number;
  /** where that row begins */
  readonly cell: string;
  readonly mark: string;
  readonly member: string | null;
  readonly pour: string | null;
  /** size and length, which tell bars of one mark apart */
  readonly what: string;
  /** why it is not to be made, with its place; null for a bar that is */
  readonly gone: string | null;
}

/** One bend of a ticket, in working order; words and figures as a person at the machine sets them. */
export interface BendView {
  readonly step: string;
  /** what to do with the bar before this bend; blank where nothing */
  readonly before: string;
  /** where the former's middle goes, from the end that is named */
  readonly stop: string;
  readonly wanted: string;
  /** degrees to bend to; null where a trial comes first */
  readonly bendTo: string | null;
  /** "89.1 to 90.9" */
  readonly released: string | null;
}

/** What a trial of this bar is of: filled in already. */
export interface TrialOfBar {
  readonly machine: string | null;
  readonly machines: readonly string[];
  readonly size: string;
  readonly grade: string | null;
  /** mm or as the standard writes it, one each former of the bar */
  readonly formers: readonly string[];
}

/** The ticket of one mark, big enough for a phone. */
export interface TicketView {
  readonly row: number;
  readonly mark: string;
  readonly what: string;
  readonly place: string;
  /** as typed in the row */
  readonly remark: string | null;
  readonly cut: string;
  readonly svg: string | null;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly bends: readonly BendView[];
  /** why there is no order or no angle, and on what the angles rest */
  readonly words: readonly string[];
  /** what holds the bar back: unsafe or unbendable */
  readonly holds: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
  readonly trial: TrialOfBar | null;
}

/** A bend that somebody made and measured. */
export interface TrialEntry {
  readonly machine: string;
  readonly size: string;
  readonly former: string;
  readonly grade: string | null;
  readonly heat: string;
  /** degrees */
  readonly bentTo: number;
  readonly released: number;
  /** YYYY-MM-DD */
  readonly date: string;
}

/** A fact of a machine that nobody has written down. */
export interface MissingFact {
  readonly machine: string;
  readonly question: string;
  readonly hint: string;
  readonly cell: string;
  /** several values with commas between */
  readonly isList: boolean;
}

/** Cells of the Shop sheet to write. */
export interface ShopEdits {
  readonly shop: string;
  readonly edits: readonly CellEdit[];
}
