import type { ListLine } from "../../model/arrange-findings";

/** What stands where the list of findings does. */
export const SHOWS = {
  findings: "Findings",
  alike: "Safe fixes",
  questions: "Questions for the designer",
  passOn: "Pass on",
  decisions: "Accepted, limits",
  reading: "How it was read",
  cautions: "Cautions",
} as const;

export type Show = keyof typeof SHOWS;

/** A correction that the user is putting together. */
interface CorrectionDraft {
  column: string;
  kind: string;
  unit: string;
}

/** What the check's part of the pane remembers between renderings. */
export interface CheckMemory {
  show: Show;
  /** the sheet and the standard are open to be chosen */
  isSetUpOpen: boolean;
  areFiltersOpen: boolean;
  /** finding whose rule, source and acceptance are open, by key */
  opened: string | null;
  /** what is being decided, asked for reason and name */
  deciding: string | null;
  /** rules whose findings stand one by one */
  readonly unfolded: Set<string>;
  isBarFolded: boolean;
  /** px; null is as high as fits */
  barHeight: number | null;
  /** the focus goes to the current finding once it is drawn */
  takesFocus: boolean;
  /** as last drawn */
  lines: readonly ListLine[];
  readonly draft: CorrectionDraft;
  /** the workbook that all this was about */
  book: number;
  redraw(): void;
}

export function newCheckMemory(redraw: () => void): CheckMemory {
  return {
    show: "findings",
    isSetUpOpen: false,
    areFiltersOpen: false,
    opened: null,
    deciding: null,
    unfolded: new Set(),
    isBarFolded: false,
    barHeight: null,
    takesFocus: false,
    lines: [],
    draft: { column: "", kind: "", unit: "" },
    book: 0,
    redraw,
  };
}

/** Another workbook was opened: what was open in the last one is shut, and the rooms keep their sizes. */
export function turnTo(memory: CheckMemory, book: number): void {
  if (memory.book === book) return;
  const { isBarFolded, barHeight, redraw } = memory;
  Object.assign(memory, newCheckMemory(redraw), { isBarFolded, barHeight, book });
}
