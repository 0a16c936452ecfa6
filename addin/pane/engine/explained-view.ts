/** Why each column and each row of a sheet was read as it was. */
export interface ExplainedView {
  /** why totals wait for the user; null where they do not */
  readonly held: string | null;
  readonly columns: readonly {
    readonly letter: string;
    readonly header: string;
    readonly why: string;
    /** rows that agree, of those that could be tested; null where none could */
    readonly kept: number | null;
    readonly tested: number | null;
  }[];
  /** rows that follow one another, of one class and for one reason, together */
  readonly rows: readonly {
    /** the sheet's own number, from 1 */
    readonly first: number;
    readonly last: number;
    readonly class: string;
    readonly why: string;
  }[];
}
