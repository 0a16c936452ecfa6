import type { Looked } from "../bar/looked";
import type { SheetFacts } from "../bar/sheet-facts";
import type { ScheduleReading } from "../schedule/bar-row";
import type { ScheduleSession } from "../schedule/schedule-session";
import type { AuditQuestion } from "./audit-question";
import type { AuditReport } from "./audit-report";
import type { Finding } from "./finding";
import type { HiddenByLimit, WatchedLimit } from "./limit-watch";
import type { RowRule, Rule, SheetRule } from "./rule";
import type { RuleContext } from "./rule-context";

/** What is kept of one sheet so that an edit re-judges only what it can have changed. */
export interface SheetState {
  readonly session: ScheduleSession;
  readonly facts: SheetFacts;
  /** by place in `facts.bars`; undefined where a bar has none */
  readonly rowFindings: readonly (readonly Finding[] | undefined)[];
  /** by place in `facts.bars`: what a limit changed in the workbook keeps from being found */
  readonly hiddenByLimits: readonly (readonly HiddenByLimit[] | undefined)[];
  /** by place among the rules for sheets */
  sheetFindings: readonly FoundOnSheet[];
  /** false where it is only read beside the sheet that is */
  readonly isJudged: boolean;
  /** where a helper judges rows: puts the findings of all rows in their place */
  readonly finish?: () => void;
}

export interface FoundOnSheet {
  readonly found: readonly Finding[];
  readonly looked: Looked;
}

/** All that an audit knows. */
export interface AuditState {
  readonly question: Required<AuditQuestion>;
  readonly context: RuleContext;
  readonly rules: readonly Rule[];
  readonly rowRules: readonly RowRule[];
  readonly sheetRules: readonly SheetRule[];
  readonly watched: readonly WatchedLimit[];
  readonly sheets: readonly SheetState[];
  /** about the Shop sheet */
  readonly shopFindings: readonly Finding[];
}

/** The bars of a sheet as an audit judged them; undefined where they are not those that were read. */
export function factsJudged(
  all: readonly SheetFacts[],
  { sheet, reading }: { readonly sheet: { readonly name: string }; readonly reading: ScheduleReading },
): SheetFacts | undefined {
  const facts = all.find(({ name }) => name === sheet.name);
  return facts?.reading.bars === reading.bars ? facts : undefined;
}

/** What an audit tells, and what it takes to carry it on after an edit. */
export interface Audit {
  readonly report: AuditReport;
  readonly state: AuditState;
}
