import type { Provenance } from "../../standards/citation";
import type { RowWords } from "../cells/row-words.data";
import type { ColumnKind } from "../column-kind";

/** Words that stand over a column. `ignored` is a known column that holds nothing of the bar. */
export interface HeaderWords {
  readonly kind: ColumnKind | "ignored";
  /** Words that also stand over other columns: they give way to any other word of their kind. */
  readonly weak?: true;
  /** what a weak word means where its kind is taken */
  readonly otherwise?: ColumnKind;
  /** a word that numbers the rows where it stands first, and counts the bars where it does not */
  readonly serial?: true;
  /** lower case, without accents, points and units */
  readonly words: readonly string[];
}

/** What one word of a heading of several words says. */
export type WordPart =
  | "count"
  | "member"
  | "total"
  | "length"
  | "mass"
  | "size"
  | "per"
  | "one"
  | "metre"
  | "bar";

/** The words of one language: whole headings, the words that headings are made of, and the words of rows. */
export interface LanguageWords {
  readonly language: string;
  /** of its words, as they stand in bar schedules in the language */
  readonly provenance: Provenance;
  readonly columns: readonly HeaderWords[];
  readonly parts: Partial<Record<WordPart, readonly string[]>>;
  readonly rows?: readonly RowWords[];
}
