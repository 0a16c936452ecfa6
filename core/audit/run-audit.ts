import { AnswersOfBars } from "../bar/answers-of-bars";
import { BarFacts } from "../bar/bar-facts";
import { samePerMetre } from "../bar/identity-habits";
import { breakingRows } from "../bar/row-identities";
import { type BookFacts, SheetFacts } from "../bar/sheet-facts";
import { sameHabits } from "../bar/sheet-habits";
import { isFindingsSheet } from "../own/own-papers";
import { isOwnSheet } from "../own/own-sheet";
import { readOwn } from "../own/read-own";
import { standardOfBook } from "../own/standard-of-book";
import type { BarRow } from "../schedule/bar-row";
import type { ScheduleSession } from "../schedule/schedule-session";
import type { Sheet } from "../schedule/sheet";
import { isShopSheet } from "../shop/is-shop-sheet";
import { Workshop } from "../shop/workshop";
import { asOpen } from "./as-open";
import type { AuditQuestion } from "./audit-question";
import { type AuditedSheet, type AuditReport, countRows, sumRowCounts } from "./audit-report";
import { DEFAULT_SETTINGS } from "./audit-settings";
import type { Audit, AuditState, FoundOnSheet, SheetState } from "./audit-state";
import type { Finding } from "./finding";
import { findingRank } from "./finding-rank";
import { judgeOfRows } from "./judge-of-rows";
import { type Change, type KeptRows, keptRows } from "./kept-rows";
import { type HiddenByLimit, hiddenByLimits, watchedLimits } from "./limit-watch";
import { limitsInForce } from "./limits";
import { sheetFinding } from "./make-finding";
import { withSuperseded } from "./mark-superseded";
import { withOneCause } from "./one-cause";
import { withOneOfRow } from "./one-of-row";
import { withOneOfSize } from "./one-of-size";
import { withOwnSizes } from "./own-sizes";
import { openAsCorrected } from "./read-as-corrected";
import { beginApart, type RowsHelper } from "./rows-apart";
import {
  isOwnRule,
  isRowRule,
  isSettingsRule,
  isSheetRule,
  isShopRule,
  type RowRule,
  type Rule,
  type SheetReport,
  type SheetRule,
  type ShopReport,
} from "./rule";
import type { RuleContext } from "./rule-context";
import anotherDocumentNamed from "./rules/another-document-named";
import { RULES } from "./rules/index";
import type { SettingsFacts } from "./settings-facts";
import { showsStandard } from "./shows-standard";
import { type ToldSheet, withWhatFollows } from "./what-follows";
import { Withholding } from "./withhold";

const NO_PLACES: ReadonlySet<number> = new Set();

/**
 * Reads every sheet and runs every rule; what the workbook's user said is not to be told stands in
 * `waivers`. Never throws for what stands in a
 * cell: what cannot be read is a finding of its own.
 *
 * @example runAudit({ sheets: [sheet], standard }).findings[0]?.message
 */
export function runAudit(asked: AuditQuestion): AuditReport {
  return openAudit({ ...asked, isOnce: true }).report;
}

/** The same, to be carried on by `recheck`. */
export function openAudit(asked: AuditQuestion): Audit {
  const question = {
    ...{ settings: DEFAULT_SETTINGS, rules: RULES, only: null },
    ...{ isStandardAssumed: false, isStandardNamed: false, isOnce: false, helper: null, meanwhile: null },
    ...asked,
  };
  const { settings, only } = question;
  const { rules } = question;
  const ownSheet = question.sheets.find(isOwnSheet);
  const own = ownSheet === undefined ? null : { sheet: ownSheet, problems: readOwn(ownSheet).problems };
  const standard = standardOfBook(question.standard, question.sheets);
  const shopSheet = question.sheets.find(isShopSheet);
  const shop = shopSheet === undefined ? null : new Workshop(shopSheet, standard);
  const limits = limitsInForce(settings.limits, standard, shop?.shop ?? null);
  const context: RuleContext = {
    standard,
    isStandardAssumed: question.isStandardAssumed === true,
    isStandardNamed: question.isStandardNamed === true,
    limits,
    shop,
    own,
  };
  const [rowRules, sheetRules] = [rules.filter(isRowRule), rules.filter(isSheetRule)];
  const watched = watchedLimits(settings.limits, context, rules);
  const sheets = question.sheets
    .filter((sheet) => sheet !== shopSheet && sheet !== ownSheet)
    .filter((sheet) => sheet.name === only || !isFindingsSheet(sheet))
    .map((sheet) => {
      const isJudged = only === null || sheet.name === only;
      const session = openAsCorrected(sheet, standard, settings, question.isOnce);
      const helper = question.rules === RULES ? question.helper : null;
      const asked = isJudged ? { rules: rowRules, watched, helper } : { rules: [], watched: [] };
      return { ...judgeRows(sheet, session, context, asked), isJudged };
    });
  const shopFindings = [...judgeShop(context, rules), ...judgeOwn(context, rules)];
  const state = { question, context, rules, rowRules, sheetRules, watched, sheets, shopFindings };
  judgeBook(state);
  const audited = auditedSheets(state);
  question.meanwhile?.(
    audited,
    sheets.map(({ facts }) => facts),
  );
  for (const { finish } of sheets) finish?.();
  return { report: reportOf(state, audited), state };
}

/**
 * The audit after one sheet changed in rows `firstRow` to `lastRow` of its used range, from 0.
 * Other rows keep their findings unless the reading of them, or the sheet's habits, changed.
 */
export function recheck({ state }: Audit, changed: Sheet, firstRow: number, lastRow: number): Audit {
  const { shop, own } = state.context;
  if ([shop?.sheet?.name, own?.sheet.name].includes(changed.name)) {
    // what the yard owns and what was looked up can alter the judgement of any row
    return openAudit({ ...state.question, sheets: replaced(state.question.sheets, changed) });
  }
  const place = state.sheets.findIndex(({ facts, isJudged }) => isJudged && facts.name === changed.name);
  if (place < 0) {
    throw new RangeError(`no sheet "${changed.name}" was audited in this report: run the whole audit`);
  }
  const before = state.sheets[place] as SheetState;
  const { settings } = state.question;
  const { standard } = state.context;
  const session =
    before.session.reread(changed, firstRow, lastRow) ?? openAsCorrected(changed, standard, settings, false);
  const asked = { rules: state.rowRules, watched: state.watched };
  const after = judgeRows(changed, session, state.context, asked, { before, firstRow, lastRow });
  const sheets = state.sheets.map((sheet, index) => (index === place ? after : sheet));
  const next: AuditState = {
    ...state,
    question: { ...state.question, sheets: replaced(state.question.sheets, changed) },
    sheets,
  };
  const isOfBars = session.readAgain !== null;
  judgeBook(next, { before, after, isOfBars });
  return { report: reportOf(next), state: next };
}

function replaced(sheets: readonly Sheet[], changed: Sheet): readonly Sheet[] {
  return sheets.map((sheet) => (sheet.name === changed.name ? changed : sheet));
}

function judgeSheet(rule: SheetRule, facts: SheetFacts, context: RuleContext): FoundOnSheet {
  const said: SheetReport[] = [];
  const looked = facts.lookedAt(() => rule.checkSheet(facts, context, (one) => void said.push(one)));
  return { found: said.map((one) => sheetFinding(rule, facts.sheet, context.standard.unit, one)), looked };
}

/** Judges all bars, or begins to: what a helper judges meanwhile is in its place once `finish` was called. */
function judgeRows(
  sheet: Sheet,
  session: ScheduleSession,
  context: RuleContext,
  { rules, watched, helper }: RowsAsked,
  change?: Change,
): SheetState {
  const kept = change === undefined ? null : keptRows(sheet, session, context.standard, change);
  const facts = factsOf(sheet, session, context, kept);
  const { bars } = facts;
  const rowFindings: (readonly Finding[] | undefined)[] = new Array(bars.length);
  const hidden: (readonly HiddenByLimit[] | undefined)[] = [];
  const isWatching = watched.length > 0;
  const judge = judgeOfRows(rules, context);
  const judgeAt = (index: number): void => {
    const row = bars[index] as BarFacts;
    const found = judge(row);
    rowFindings[index] = found;
    if (isWatching) hidden[index] = hiddenByLimits(watched, row, found ?? []);
  };
  const state = { session, facts, rowFindings, hiddenByLimits: hidden, sheetFindings: [], isJudged: true };
  const helped = helper == null || isWatching ? null : beginApart(helper, facts, context);
  if (helped !== null) {
    const take = (index: number, found: readonly Finding[]): void => {
      rowFindings[index] = found;
    };
    return { ...state, finish: () => helped.finish(judgeAt, take) };
  }
  const again = kept === null ? null : rowsJudgedAgain(facts, kept);
  for (let index = 0; index < bars.length; index += 1) {
    const old = kept === null || again === null || again.has(index) ? -1 : kept.place(index);
    if (old < 0) judgeAt(index);
    else {
      rowFindings[index] = kept?.before.rowFindings[old];
      if (isWatching) hidden[index] = kept?.before.hiddenByLimits[old];
    }
  }
  return state;
}

interface RowsAsked extends Pick<AuditState, "watched"> {
  readonly rules: readonly RowRule[];
  readonly helper?: RowsHelper | null;
}

/** The sheet's facts; a bar that reads as before an edit keeps its own. */
function factsOf(
  sheet: Sheet,
  { reading }: ScheduleSession,
  { standard }: RuleContext,
  kept: KeptRows | null,
): SheetFacts {
  const old = kept?.before.facts;
  const facts = new SheetFacts(sheet, reading, old?.habits, kept?.codesMeant);
  const bars: BarFacts[] = new Array(reading.bars.length);
  for (let index = 0; index < bars.length; index += 1) {
    const row = reading.bars[index] as BarRow;
    const place = kept?.place(index) ?? -1;
    const known = place < 0 ? undefined : old?.bars[place];
    bars[index] =
      known === undefined ? new BarFacts(row, facts, standard, index) : known.movedTo(row, facts, index);
  }
  facts.answers = new AnswersOfBars(bars, kept?.inPlace);
  return facts;
}

/** Places of bars that are judged again though they read as before; null for all, where the sheet's habits changed. */
function rowsJudgedAgain(facts: SheetFacts, { before }: KeptRows): ReadonlySet<number> | null {
  const [habits, old] = [facts.habits, before.facts.habits];
  if (habits === old) return NO_PLACES;
  if (!sameHabits(habits, old)) return null;
  if (samePerMetre(habits.identities, old.identities)) return NO_PLACES;
  if (facts.bars.length !== before.facts.bars.length) return null;
  return new Set(
    [
      breakingRows(facts.answers, habits.identities),
      breakingRows(before.facts.answers, old.identities),
    ].flatMap((broken) => broken.map(({ place }) => place)),
  );
}

function judgeShop(context: RuleContext, rules: readonly Rule[]): readonly Finding[] {
  const { shop, standard } = context;
  if (shop === null || shop.sheet === null) return [];
  const { sheet } = shop;
  const found: Finding[] = [];
  for (const rule of rules.filter(isShopRule)) {
    rule.checkShop(shop, context, (said: ShopReport) => {
      found.push(sheetFinding(rule, sheet, standard.unit, said));
    });
  }
  return inOrder(found);
}

function judgeOwn({ own, standard }: RuleContext, rules: readonly Rule[]): readonly Finding[] {
  if (own === null) return [];
  const found: Finding[] = [];
  for (const rule of rules.filter(isOwnRule)) {
    rule.checkOwn(own, (said: ShopReport) => {
      found.push(sheetFinding(rule, own.sheet, standard.unit, said));
    });
  }
  return inOrder(found);
}

interface EditedSheet {
  readonly before: SheetState;
  readonly after: SheetState;
  /** false where titles, sums or notes may say something else too, which is not written down as looked at */
  readonly isOfBars: boolean;
}

/** Sheet-scoped rules, once every sheet's index can be asked; after an edit those for which something changed. */
function judgeBook(state: AuditState, edit: EditedSheet | null = null): void {
  const book: BookFacts = { sheets: state.sheets.map(({ facts }) => facts) };
  for (const { facts } of state.sheets) facts.book = book;
  for (const sheet of state.sheets.filter(({ isJudged }) => isJudged)) {
    const before = edit === null ? [] : (sheet === edit.after ? edit.before : sheet).sheetFindings;
    const stands = ({ looked }: FoundOnSheet): boolean =>
      sheet === edit?.after ? edit.isOfBars && sheet.facts.standsAsIn(looked) : !looked.isBeside;
    sheet.sheetFindings = state.sheetRules.map((rule, at) => {
      const old = before[at];
      return old !== undefined && stands(old) ? old : judgeSheet(rule, sheet.facts, state.context);
    });
  }
}

function reportOf(state: AuditState, audited = auditedSheets(state)): AuditReport {
  const { context, shopFindings } = state;
  const sheets = state.sheets.filter(({ isJudged }) => isJudged);
  const withholding = new Withholding(state);
  const conventions = new Set(
    state.rules.filter((rule) => rule.ofConvention === true).map(({ code }) => code),
  );
  const told = sheets.map((sheet) => {
    const isAssumed = state.question.isStandardAssumed === true && !showsStandard(sheet.facts, context);
    const all = orderedFindings(sheet).filter((finding) => withholding.tells(finding, sheet.facts));
    const sure = isAssumed
      ? all.map((finding) => (conventions.has(finding.code) ? asNote(finding) : finding))
      : withOwnSizes(all, context);
    return { facts: sheet.facts, told: withOneOfRow(withOneOfSize(sure), sheet.facts) };
  });
  const { isStandardAssumed, isStandardNamed } = context;
  const isAsked = isStandardAssumed && !isStandardNamed && told.some(asksForStandard);
  const bySheet = withWhatFollows(told, context.standard).map((all) => (isAsked ? all.map(asOpen) : all));
  const asksOnce = new Set(state.rules.filter((rule) => rule.asksOnce === true).map(({ code }) => code));
  const grouped = sheets.map(({ facts }, index) =>
    withOneCause(bySheet[index] ?? [], facts.bars.length, asksOnce, facts.sheet.isTurned).filter(
      (finding) => finding.rows === undefined || withholding.tells(finding, facts),
    ),
  );
  const ofShop = shopFindings.filter((finding) => withholding.tells(finding, null));
  const shopSheet = context.shop?.sheet ?? null;
  const outdated = withholding.waivers.outdated(
    sheets.map(({ facts }) => facts),
    shopSheet,
  );
  const ofSettings = judgeSettings(state, outdated, withholding.notObeyed).filter((finding) =>
    withholding.tells(finding, null),
  );
  const byRow = sheets.flatMap(({ facts }, index) =>
    withSettings(bySheet[index] ?? [], ofSettings, facts.name),
  );
  const findings = sheets.flatMap(({ facts }, index) =>
    withSettings(inOrder([...(grouped[index] ?? [])]), ofSettings, facts.name),
  );
  const ofShopSheet = withSettings(ofShop, ofSettings, shopSheet?.name ?? null);
  return {
    standard: context.standard,
    sheets: audited,
    findings: findings.concat(ofShopSheet),
    byRow: byRow.concat(ofShopSheet),
    shopSheet: shopSheet?.name ?? null,
    ownSheet: context.own?.sheet.name ?? null,
    rows: sumRowCounts(audited),
    waivers: withholding.notTold(),
    outdatedWaivers: outdated.map(({ waiver }) => waiver),
  };
}

function asksForStandard({ told }: ToldSheet): boolean {
  return told.some(({ code }) => code === anotherDocumentNamed.code);
}

/** What a standard that nobody chose would say of a sheet that shows no sign of it. */
function asNote(finding: Finding): Finding {
  return { ...finding, severity: "note", outcome: "unsure" };
}

function auditedSheets({ sheets }: AuditState): readonly AuditedSheet[] {
  return sheets.filter(({ isJudged }) => isJudged).map(auditedSheet);
}

function auditedSheet({ facts }: SheetState): AuditedSheet {
  const { name, sheet } = facts;
  const reading = withSuperseded(facts, facts.book);
  const header = reading.tables[0]?.headerTop;
  return {
    sheet: name,
    reading,
    header: header === undefined || sheet.isTurned === true ? null : sheet.top + header + 1,
    rows: countRows(reading.rowClasses),
  };
}

function judgeSettings(
  { question, context, rules, sheets: all }: AuditState,
  outdated: SettingsFacts["outdated"],
  notObeyed: SettingsFacts["notObeyed"],
): readonly Finding[] {
  const { settings } = question;
  const sheets = all.filter(({ isJudged }) => isJudged);
  const firstSheet = (sheets.find(({ facts }) => facts.reading.tables.length > 0) ?? sheets[0])?.facts.sheet;
  if (firstSheet === undefined) return [];
  const found: Finding[] = [];
  for (const rule of rules.filter(isSettingsRule)) {
    rule.checkSettings({ settings, outdated, notObeyed, firstSheet }, (said) => {
      found.push(sheetFinding(rule, said.sheet, context.standard.unit, said));
    });
  }
  return found;
}

function withSettings(
  found: readonly Finding[],
  ofSettings: readonly Finding[],
  sheet: string | null,
): readonly Finding[] {
  const own = ofSettings.filter((finding) => finding.sheet === sheet);
  return own.length === 0 ? found : inOrder([...found, ...own]);
}

function orderedFindings({ rowFindings, sheetFindings }: SheetState): readonly Finding[] {
  const all = sheetFindings.flatMap(({ found }) => found);
  for (const found of rowFindings) if (found !== undefined) all.push(...found);
  return inOrder(all);
}

function inOrder(findings: Finding[]): readonly Finding[] {
  return findings.sort((a, b) => (a.row ?? 0) - (b.row ?? 0) || findingRank(a) - findingRank(b));
}
