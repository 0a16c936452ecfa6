import type { Looked } from "../bar/looked";
import type { SheetFacts } from "../bar/sheet-facts";
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
}

export interface FoundOnSheet {
  readonly found: readonly Finding[];
  readonly looked: Looked;
}

/** All that an audit knows, kept beside its report. */
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

const states = new WeakMap<AuditReport, AuditState>();

export function keepState(report: AuditReport, state: AuditState): void {
  states.set(report, state);
}

/** Undefined for a report that no audit of this program made. */
export function stateOf(report: AuditReport): AuditState | undefined {
  return states.get(report);
}
