import { SEVERITIES, type Severity } from "../../../core/audit/finding";
import type { CellEdit, SheetSummary, UndoStep } from "../../workbook/workbook-port";
import type { AuditView, BarView } from "../engine/audit-view";
import type { ExplainedView } from "../engine/explained-view";
import type { FollowView } from "../engine/follow-view";
import { type Arrangement, AS_CHECKED } from "./arrange-findings";
import type { Place } from "./place";

/** Work that lasts: what is being done, and how much of it; null where that is not known. */
export interface Work {
  readonly label: string;
  /** nobody has answered for a while */
  readonly isSlow?: boolean;
  readonly done: number | null;
}

/** A line for the user: something went right, or it did not and the words say what to do. */
export interface Notice {
  readonly kind: "done" | "problem";
  readonly text: string;
}

/** A fix that stands in the sheet and can be taken back. */
export interface AppliedFix {
  readonly sheet: string;
  readonly label: string;
  readonly cells: string;
  readonly edits: readonly CellEdit[];
  readonly undo: UndoStep;
  /** not all of the cells may have been written */
  readonly isPart?: true;
}

export interface PaneState {
  /** counts the workbooks that were opened in place of one another */
  readonly book: number;
  /** sheets that are read: those in sight, and hidden ones where the user asked for them */
  readonly sheets: readonly SheetSummary[];
  /** names of the hidden sheets */
  readonly hidden: readonly string[];
  readonly readsHidden: boolean;
  /** the yard's own sheet, hidden or not; null where there is none */
  readonly shopSheet: string | null;
  readonly sheet: string | null;
  /** as the workbook says it; blank is the default */
  readonly standard: string;
  readonly work: Work | null;
  readonly notice: Notice | null;
  readonly view: AuditView | null;
  /** the view is not of the sheet as it is: an edit is being judged, or a whole check is due */
  readonly isStale: boolean;
  /** only a whole check can bring the view up to date */
  readonly needsCheck: boolean;
  readonly isColoured: boolean;
  readonly shown: ReadonlySet<Severity>;
  readonly arrangement: Arrangement;
  readonly fixes: readonly AppliedFix[];
  readonly bar: BarView | null;
  /** the finding last jumped to, by key */
  readonly current: string | null;
  /** the findings whose fix is looked at, by key; null where none is */
  readonly looked: readonly string[] | null;
  /** what follows from the fixes that are looked at; null until it is known */
  readonly follows: FollowView | null;
  /** what the decision that is being taken would keep from being told, and which decision it is */
  readonly ahead: { readonly about: string; readonly words: string } | null;
  /** why the sheet in sight was read as it was; null until that is asked for */
  readonly explained: ExplainedView | null;
  /** A findings sheet of ours that somebody has written on stands in the workbook. */
  readonly asksAboutFindings: string | null;
  readonly place: Place;
}

export const EMPTY_STATE: PaneState = {
  book: 0,
  sheets: [],
  hidden: [],
  readsHidden: false,
  shopSheet: null,
  sheet: null,
  standard: "",
  work: null,
  notice: null,
  view: null,
  isStale: false,
  needsCheck: false,
  isColoured: false,
  shown: new Set(SEVERITIES),
  arrangement: AS_CHECKED,
  fixes: [],
  bar: null,
  current: null,
  looked: null,
  follows: null,
  ahead: null,
  explained: null,
  asksAboutFindings: null,
  place: "check",
};
