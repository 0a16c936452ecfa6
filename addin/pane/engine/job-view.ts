/** A workbook as somebody gave it. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The checked sheet together with the schedules of other files. */
export interface JobView {
  /** files that were read */
  readonly files: number;
  /** schedules that count, the checked sheet among them */
  readonly schedules: number;
  readonly groupedBy: string;
  readonly lines: readonly { readonly name: string; readonly tonnes: string }[];
  /** null while totals of a schedule wait for its user, and the note says so */
  readonly total: string | null;
  /** what only all of them together show, with its places */
  readonly findings: readonly { readonly words: string; readonly places: readonly string[] }[];
  readonly notes: readonly string[];
}
