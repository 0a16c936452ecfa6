import type { BarFacts } from "../bar/bar-facts";
import type { OfKind } from "../bar/bar-kind";
import type { SheetFacts } from "../bar/sheet-facts";
import type { ColumnKind } from "../schedule/bar-row";
import type { Cell, Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import type { Citation } from "../standards/citation";
import type { PlacesOf } from "../units/refusal";
import type { FixSafety, Outcome, Severity } from "./finding";
import type { Limits } from "./limits";
import type { OwnContext, RuleContext } from "./rule-context";
import type { SettingsFacts } from "./settings-facts";

/** A value of a message with its dimension; the words are made where they are read, in the unit of the standard. */
/** A length is rounded to tenths of a millimetre, but where it is quoted as it was typed. */
export type MessageValue =
  | string
  | number
  | { readonly mm: number; readonly typed?: true }
  | { readonly kg: number };

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
  /** offered only where no other rule finds the bar wrong once it is changed: a figure that is rounded */
  readonly mustHold?: true;
}

/** Templates of a rule's messages by their ids; `{name}` stands for a value. */
export type Messages = Readonly<Record<string, string>>;
export type Fixes = Readonly<Record<string, { readonly label: string; readonly safety: FixSafety }>>;

export type NoFixes = Record<never, never>;

/** The values that a template needs; others may stand beside them. */
type Worded<Places extends string> = string extends Places
  ? { readonly values?: MessageValues }
  : [Places] extends [never]
    ? { readonly values?: MessageValues }
    : { readonly values: Readonly<Record<Places, MessageValue>> & MessageValues };

/** A message with every value that its words need. */
type Said<Words extends Messages, Offers extends Fixes> = {
  [Id in keyof Words & string]: { readonly messageId: Id } & Worded<PlacesOf<Words[Id]>>;
}[keyof Words & string] & { readonly fix?: ReportedFix<keyof Offers & string> };

interface Report {
  /** `broken` unless said; a finding that rests on a source that is not sure is `unsure` whatever is said */
  readonly outcome?: Outcome;
  /** the rule's own unless said */
  readonly severity?: Severity;
  readonly cite?: Citation | null;
}

export type RowReport<Words extends Messages = Messages, Offers extends Fixes = Fixes> = Report & {
  /** the column at fault */
  readonly at: ColumnKind;
  /** other changes with their values, the first that holds in place of one that does not */
  readonly instead?: readonly {
    readonly values: MessageValues;
    readonly fix: ReportedFix<keyof Offers & string>;
  }[];
} & Said<Words, Offers>;

interface OnSheet {
  readonly at?: ColumnKind;
  /** the bar at fault; without it and without a place the finding is sheet-wide */
  readonly row?: BarFacts;
  /** a bar that it is as much about, and the values of the words on its ticket */
  readonly also?: { readonly row: BarFacts; readonly values: MessageValues };
}

interface InCell {
  /** a cell of a row that is no bar, within the used range, from 0 */
  readonly place?: { readonly row: number; readonly column: number };
}

export type SheetReport<Words extends Messages = Messages, Offers extends Fixes = Fixes> = Report &
  OnSheet &
  InCell &
  Said<Words, Offers>;

/** About the Shop sheet or the sheet Standard: one of its cells, or the sheet as a whole. */
export type ShopReport<Words extends Messages = Messages> = Report & InCell & Said<Words, NoFixes>;

/** About the settings: shown on a sheet, at a bar where there is one. */
export type SettingsReport<Words extends Messages = Messages> = Report &
  OnSheet & { readonly sheet: Sheet } & Said<Words, NoFixes>;

interface RuleBase<Words extends Messages, Offers extends Fixes> {
  /** never used again once a rule is gone */
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly docs: RuleDocs;
  /** a convention of the standard: a note where nobody chose the standard and the sheet shows no sign of it */
  readonly ofConvention?: boolean;
  /** asks something that one answer settles for every row that it is asked of */
  readonly asksOnce?: boolean;
  /** messages that are told of each cell, however many are alike: what they tell of is lost elsewhere */
  readonly tellsEach?: readonly (keyof Words & string)[];
  /** lower case, no full stop; names the value, the limit and the unit */
  readonly messages: Words;
  readonly fixes?: Offers;
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
export interface RowRule<Words extends Messages = Messages, Offers extends Fixes = Fixes>
  extends RuleBase<Words, Offers> {
  /** the rule is not asked of a bar without it; a bar without it is none of the rule's failing examples */
  readonly needs?: RowNeed;
  /** false of a size, grade, shape and coating of which the rule says nothing, whatever else a bar of them has */
  ofKind?(bar: OfKind, context: RuleContext): boolean;
  /** answers false, null or nothing to words of a row of which the rule says nothing; one function that is made once */
  readonly ofWords?: (words: string) => unknown;
  /** figures of which it asks that a workbook may change: without it what a change hides is not found */
  readonly limits?: readonly (keyof Limits)[];
  checkRow(facts: BarFacts, context: RuleContext, report: (found: RowReport<Words, Offers>) => void): void;
}

/** Judges what only several bars, a total line or several sheets show. */
export interface SheetRule<Words extends Messages = Messages, Offers extends Fixes = Fixes>
  extends RuleBase<Words, Offers> {
  checkSheet(
    sheet: SheetFacts,
    context: RuleContext,
    report: (found: SheetReport<Words, Offers>) => void,
  ): void;
}

/** Judges what the Shop sheet itself says. */
export interface ShopRule<Words extends Messages = Messages, Offers extends Fixes = Fixes>
  extends RuleBase<Words, Offers> {
  checkShop(shop: Workshop, context: RuleContext, report: (found: ShopReport<Words>) => void): void;
}

/** Judges what the sheet Standard itself says. */
export interface OwnRule<Words extends Messages = Messages, Offers extends Fixes = Fixes>
  extends RuleBase<Words, Offers> {
  checkOwn(own: OwnContext, report: (found: ShopReport<Words>) => void): void;
}

/** Judges what the workbook keeps of its user's decisions, once all findings are made. */
export interface SettingsRule<Words extends Messages = Messages, Offers extends Fixes = Fixes>
  extends RuleBase<Words, Offers> {
  checkSettings(kept: SettingsFacts, report: (found: SettingsReport<Words>) => void): void;
}

export type Rule = RowRule | SheetRule | ShopRule | OwnRule | SettingsRule;

/**
 * Declares one rule: facts in, findings out. A rule words no sentence, touches no cell address and
 * does not know which edition it runs under.
 */
export function defineRule<const Words extends Messages, const Offers extends Fixes = NoFixes>(
  rule: RowRule<Words, Offers>,
): RowRule;
export function defineRule<const Words extends Messages, const Offers extends Fixes = NoFixes>(
  rule: SheetRule<Words, Offers>,
): SheetRule;
export function defineRule<const Words extends Messages, const Offers extends Fixes = NoFixes>(
  rule: ShopRule<Words, Offers>,
): ShopRule;
export function defineRule<const Words extends Messages, const Offers extends Fixes = NoFixes>(
  rule: OwnRule<Words, Offers>,
): OwnRule;
export function defineRule<const Words extends Messages, const Offers extends Fixes = NoFixes>(
  rule: SettingsRule<Words, Offers>,
): SettingsRule;
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
