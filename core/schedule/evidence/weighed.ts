import type { MassTable } from "./mass-tables";
import type { Agreement, TakenColumn } from "./reading-agreement";
import type { IdentityName, RoleEvidence, TableEvidence } from "./table-evidence";
import type { ValueColumn } from "./value-column";
import type { Words } from "./word-reading";

/** How many rows agree, of how many that can be tested. */
export interface Share {
  readonly identity: IdentityName;
  readonly kept: number;
  readonly tested: number;
}

/** One column about which words and arithmetic differ. */
export interface ColumnDecision {
  readonly column: number;
  readonly about: "role" | "unit";
  readonly byWords: TakenColumn | null;
  readonly byArithmetic: TakenColumn;
  readonly grade: RoleEvidence["grade"];
  /** `arithmetic` is taken; `ask` leaves it as the words have it until the user says */
  readonly verdict: "arithmetic" | "ask";
  /** the words said nothing (`fills`), left it open (`refines`, nothing need be said), or said otherwise */
  readonly how: "fills" | "refines" | "contradicts";
  /** rows that agree under the words' reading of this column, and under arithmetic's */
  readonly words: Share | null;
  readonly arithmetic: Share | null;
}

/** The settled reading of a table's columns, what it rests on, and what has to be said. */
export interface Weighed {
  readonly columns: ReadonlyMap<number, TakenColumn & { readonly by: "words" | "arithmetic" | "user" }>;
  readonly decisions: readonly ColumnDecision[];
  /** of the settled reading */
  readonly agreement: readonly Agreement[];
  /** why totals must be held back, or null */
  readonly held: {
    readonly why: "nothing-agrees" | "units-disagree" | "exchangeable" | "members-unsaid";
    readonly columns: readonly number[];
  } | null;
  /** some identity of lengths and counts stands behind the reading */
  readonly isConfirmed: boolean;
  /** columns of amounts that most rows contradict, where another identity confirms the reading */
  readonly disagreeing: readonly Agreement[];
}

/** What is weighed: the rows, the words, and what arithmetic alone makes of the rows. */
export interface Weighing {
  readonly columns: readonly ValueColumn[];
  readonly tables: readonly MassTable[];
  readonly rows: readonly number[];
  readonly words: Words;
  /** of the words' own reading */
  readonly agreement: readonly Agreement[];
  /** with all roles as words have them, units free; null where no units make the products hold */
  readonly asWorded: TableEvidence | null;
  /** null where the words' reading is proved as it stands, or no column can be a length */
  readonly evidence: TableEvidence | null;
}
