import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { ColumnKind } from "../schedule/bar-row";
import type { Cell, Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import type { Citation } from "../standards/citation";
import type { FixSafety, Outcome, Severity } from "./finding";
import type { Limits } from "./limits";
import type { OwnContext, RuleContext } from "./rule-context";
import type { SettingsFacts } from "./settings-facts";

/** A value of a message with its dimension; the words are made where they are read, in the unit of the standard. */
export type MessageValue = string | number | { readonly mm: number } | { readonly kg: number };

export type MessageValues = Readonly<Record<string, MessageValue>>;

/** What a rule's example row holds, by column. Mark and counts are filled in where they are not given. */
export type ExampleRow = Readonly<Partial<Record<ColumnKind, Cell>>>;

/** A small schedule; `sheets` stands for a workbook of several. */
export interface Example {
  readonly rows?: readonly ExampleRow[];
  readonly sheets?: Readonly<Record<string, readonly ExampleRow[]>>;
  /** id; BS8666:2005 unless given */
  readonly standard?: string;
  readonly limits?: Partial<Limits>;
  /** the settings kept in the workbook, as their text; `limits` is not looked at then */
  readonly kept?: string;
  /** rows of the workbook's Shop sheet, from A1 */
  readonly shop?: readonly (readonly Cell[])[];
  /** rows of the workbook's sheet Standard, from A1 */
  readonly own?: readonly (readonly Cell[])[];
  /** rows of plain cells under the bars, such as a total line, laid under the columns named */
  readonly foot?: readonly ExampleRow[];
}

export interface RuleDocs {
  readonly summary: string;
  readonly why: string;
  readonly failing: readonly Example[];
  readonly passing: readonly Example[];
}

export interface ReportedFix<FixId extends string = string> {
  readonly id: FixId;
  /** a length in mm, a mass in kg: put into the column's own unit where it is written */
  readonly edits: readonly { readonly at: ColumnKind; readonly to: string | number | null }[];
}

export interface RowReport<MessageId extends string = string, FixId extends string = string> {
  /** `broken` unless said; a finding that rests on a source that is not sure is `unsure` whatever is said */
  readonly outcome?: Outcome;
  /** the rule's own unless said */
  readonly severity?: Severity;
  readonly messageId: MessageId;
  /** the column at fault */
  readonly at: ColumnKind;
  readonly values?: MessageValues;
  readonly cite?: Citation | null;
  readonly fix?: ReportedFix<FixId>;
}

export interface SheetReport<MessageId extends string = string, FixId extends string = string>
  extends Omit<RowReport<MessageId, FixId>, "at"> {
  readonly at?: ColumnKind;
  /** the bar at fault; without it and without a place the finding is sheet-wide */
  readonly row?: BarFacts;
  /** a cell of a row that is no bar, within the used range, from 0 */
  readonly place?: { readonly row: number; readonly column: number };
}

interface RuleBase<MessageId extends string, FixId extends string> {
  /** never used again once a rule is gone */
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly docs: RuleDocs;
  /** asks something that one answer settles for every row that it is asked of */
  readonly asksOnce?: boolean;
  /** lower case, no full stop; names the value, the limit and the unit */
  readonly messages: Readonly<Record<MessageId, string>>;
  readonly fixes?: Readonly<Record<FixId, { readonly label: string; readonly safety: FixSafety }>>;
}

/** What a bar must have for some rule to say anything of it. */
export type RowNeed =
  | "remark"
  | "problem"
  | "varying"
  | "lap"
  | "spacing"
  | "refused shape"
  | "broken limit"
  | "shop"
  | "closed link"
  | "plain bar"
  | "unknown size"
  | "slip of unit"
  | "other length";

/** Judges one bar by itself, so that an edit re-judges one row. */
export interface RowRule<MessageId extends string = string, FixId extends string = string>
  extends RuleBase<MessageId, FixId> {
  /** the rule is not asked of a bar without it; a bar without it is none of the rule's failing examples */
  readonly needs?: RowNeed;
  /** figures of which it asks that a workbook may change: without it what a change hides is not found */
  readonly limits?: readonly (keyof Limits)[];
  checkRow(facts: BarFacts, context: RuleContext, report: (found: RowReport<MessageId, FixId>) => void): void;
}

/** Judges what only several bars, a total line or several sheets show. */
export interface SheetRule<MessageId extends string = string, FixId extends string = string>
  extends RuleBase<MessageId, FixId> {
  checkSheet(
    sheet: SheetFacts,
    context: RuleContext,
    report: (found: SheetReport<MessageId, FixId>) => void,
  ): void;
}

/** About the Shop sheet: one of its cells, or the sheet as a whole. */
export type ShopReport<MessageId extends string = string> = Omit<
  SheetReport<MessageId>,
  "at" | "row" | "fix"
>;

/** Judges what the Shop sheet itself says. */
export interface ShopRule<MessageId extends string = string, FixId extends string = string>
  extends RuleBase<MessageId, FixId> {
  checkShop(shop: Workshop, context: RuleContext, report: (found: ShopReport<MessageId>) => void): void;
}

/** Judges what the sheet Standard itself says. */
export interface OwnRule<MessageId extends string = string, FixId extends string = string>
  extends RuleBase<MessageId, FixId> {
  checkOwn(own: OwnContext, report: (found: ShopReport<MessageId>) => void): void;
}

/** About the settings: shown on a sheet, at a bar where there is one. */
export type SettingsReport<MessageId extends string = string> = Omit<
  SheetReport<MessageId>,
  "place" | "fix"
> & { readonly sheet: Sheet };

/** Judges what the workbook keeps of its user's decisions, once all findings are made. */
export interface SettingsRule<MessageId extends string = string, FixId extends string = string>
  extends RuleBase<MessageId, FixId> {
  checkSettings(kept: SettingsFacts, report: (found: SettingsReport<MessageId>) => void): void;
}

export type Rule = RowRule | SheetRule | ShopRule | OwnRule | SettingsRule;

/**
 * Declares one rule: facts in, findings out. A rule words no sentence, touches no cell address and
 * does not know which edition it runs under.
 */
export function defineRule<MessageId extends string, FixId extends string = never>(
  rule: RowRule<MessageId, FixId>,
): RowRule<MessageId, FixId>;
export function defineRule<MessageId extends string, FixId extends string = never>(
  rule: SheetRule<MessageId, FixId>,
): SheetRule<MessageId, FixId>;
export function defineRule<MessageId extends string, FixId extends string = never>(
  rule: ShopRule<MessageId, FixId>,
): ShopRule<MessageId, FixId>;
export function defineRule<MessageId extends string, FixId extends string = never>(
  rule: OwnRule<MessageId, FixId>,
): OwnRule<MessageId, FixId>;
export function defineRule<MessageId extends string, FixId extends string = never>(
  rule: SettingsRule<MessageId, FixId>,
): SettingsRule<MessageId, FixId>;
export function defineRule(rule: Rule): Rule {
  return rule;
}

export function isRowRule(rule: Rule): rule is RowRule {
  return "checkRow" in rule;
}

export function isSheetRule(rule: Rule): rule is SheetRule {
  return "checkSheet" in rule;
}

export function isShopRule(rule: Rule): rule is ShopRule {
  return "checkShop" in rule;
}

export function isOwnRule(rule: Rule): rule is OwnRule {
  return "checkOwn" in rule;
}

export function isSettingsRule(rule: Rule): rule is SettingsRule {
  return "checkSettings" in rule;
}
