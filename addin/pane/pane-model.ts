import type { Severity } from "../../core/audit/finding";
import { settingsFromText, settingsToText } from "../../core/audit/settings-text";
import type { Sheet } from "../../core/schedule/sheet";
import { isShopSheet } from "../../core/shop/is-shop-sheet";
import { hasFindingsName } from "../workbook/own-findings-sheet";
import { SETTING_NAMES } from "../workbook/setting-names";
import type { CellEdit, WorkbookPort } from "../workbook/workbook-port";
import type { Arrangement } from "./arrange-findings";
import type { AuditDesk } from "./desk/audit-desk";
import type { AuditView, FindingView } from "./desk/audit-view";
import { type Besides, NO_BESIDES } from "./desk/besides";
import { editsOf, type FixKind, fixProof, isSafeFix, needsLook, stillStanding } from "./fixes-of-view";
import { type AppliedFix, EMPTY_STATE, type PaneState } from "./pane-state";
import type { SettingsEdit } from "./settings-edits";

/** ms of quiet after an edit before it is judged, so that a paste or a fill is judged once */
const QUIET = 150;
/** other sheets that are read beside the one that is checked, each a request of its own */
const MOST_BESIDES = 12;

interface EditedRows {
  readonly firstRow: number;
  readonly lastRow: number;
}

/** What the pane does, without a page: its state, and the actions that change it. */
export class PaneModel {
  #state: PaneState = EMPTY_STATE;
  readonly #views = new Map<string, AuditView>();
  /** sheets whose check holds no longer as a whole, such as under another standard */
  readonly #outdated = new Set<string>();
  /** rows edited since the last judgement, by sheet */
  readonly #edits = new Map<string, EditedRows>();
  /** sheets read for what stands on several, as they were when last read */
  readonly #besideCopies = new Map<string, Sheet>();
  #quiet: ReturnType<typeof setTimeout> | undefined;
  /** the row whose bar was asked for last */
  #barWanted = { sheet: "", row: -1 };
  /** one judgement at a time */
  #turn: Promise<unknown> = Promise.resolve();
  readonly #listeners = new Set<() => void>();

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly desk: AuditDesk,
  ) {}

  get state(): PaneState {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Reads the workbook's sheets and standard, and follows what the user selects and edits. */
  async start(): Promise<void> {
    await this.#guard(() => this.#readWorkbook());
    this.workbook.onSelection(({ sheet, row }) => void this.#follow(sheet, row));
    this.workbook.onChange((place) => this.#noteEdit(place));
  }

  /** Another workbook was opened: nothing of the last one holds. */
  async workbookReplaced(): Promise<void> {
    this.#views.clear();
    this.#outdated.clear();
    this.#edits.clear();
    this.#besideCopies.clear();
    await this.desk.forget();
    this.#set({ ...EMPTY_STATE, shown: this.#state.shown });
    await this.#guard(() => this.#readWorkbook());
  }

  /** Sheets came or went: the list follows, and nothing else changes. */
  async sheetsChanged(): Promise<void> {
    this.#besideCopies.clear();
    this.#set({ sheets: (await this.workbook.sheets()).filter(({ visible }) => visible) });
  }

  /** Shows what is known of a sheet: its last check, or that it was not checked yet. */
  async chooseSheet(sheet: string): Promise<void> {
    if (sheet === this.#state.sheet) return;
    const isColoured = await this.workbook.hasFlags(sheet);
    const view = this.#views.get(sheet) ?? null;
    this.#set({
      sheet,
      view,
      bar: null,
      looked: null,
      arrangement: { ...this.#state.arrangement, rule: null, member: null },
      ...this.#staleness(sheet),
      fixes: [],
      isColoured,
      notice: null,
      current: null,
    });
  }

  /** Keeps the standard in the workbook and recalculates every BAR formula with it. */
  async chooseStandard(standard: string): Promise<void> {
    if (standard === this.#state.standard) return;
    await this.#guard(async () => {
      this.#set({ standard, work: { label: "Recalculating BAR formulas", done: null } });
      await this.workbook.saveSetting(SETTING_NAMES.standard, standard);
      const count = await this.workbook.recalculate();
      const formulas = count === 1 ? "1 BAR formula" : `${count} BAR formulas`;
      for (const sheet of this.#views.keys()) this.#outdated.add(sheet);
      const { sheet } = this.#state;
      this.#set({
        ...(sheet === null ? {} : this.#staleness(sheet)),
        notice: { kind: "done", text: `${formulas} recalculated with ${standard}` },
      });
    });
  }

  /** Audits the chosen sheet and colours the rows that have findings. */
  async check(): Promise<void> {
    const { sheet } = this.#state;
    if (sheet === null) return;
    await this.#guard(async () => {
      this.#set({ work: { label: `Reading ${sheet}`, done: null }, notice: null });
      await this.#inTurn(() => this.#audit(sheet));
      await this.#colour();
    });
  }

  async colour(): Promise<void> {
    await this.#guard(() => this.#colour());
  }

  async removeColours(): Promise<void> {
    const { sheet } = this.#state;
    if (sheet === null) return;
    await this.#guard(async () => {
      this.#set({ work: { label: "Taking the colours away", done: null } });
      await this.workbook.clearFlags(sheet);
      this.#set({
        isColoured: false,
        notice: { kind: "done", text: "Colours removed: your own formats are as they were" },
      });
    });
  }

  toggleSeverity(severity: Severity): void {
    const shown = new Set(this.#state.shown);
    if (!shown.delete(severity)) shown.add(severity);
    this.#set({ shown });
  }

  arrange(change: Partial<Arrangement>): void {
    this.#set({ arrangement: { ...this.#state.arrangement, ...change } });
  }

  async goTo(finding: FindingView): Promise<void> {
    if (finding.cell === null) return;
    const { cell, sheet, key } = finding;
    await this.#guard(async () => {
      await this.workbook.goTo(sheet, cell);
      this.#set({ current: key });
      if (finding.row !== null) await this.#showBar(sheet, finding.row - 1);
    });
  }

  /** Opens the look at a fix that changes steel, or closes it; only what is looked at can be written. */
  look(finding: FindingView | null): void {
    this.#set({ looked: finding?.key ?? null });
  }

  /** Writes one fix, a safe one or the one that is looked at, and judges its rows again. */
  async applyFix(finding: FindingView): Promise<void> {
    const isLooked = needsLook(finding) && this.#state.looked === finding.key;
    if (!isLooked && !isSafeFix(finding)) return;
    await this.#write([finding], finding.fix?.label ?? "");
    this.look(null);
  }

  /** Writes every safe fix of a rule in one step and judges the rows again. */
  async applyKind({ findings, rule }: FixKind): Promise<void> {
    await this.#write(findings.filter(isSafeFix), rule);
  }

  /** A step written elsewhere in the pane joins those that can be taken back, the last first. */
  keepStep(step: AppliedFix): void {
    this.#set({ fixes: [...this.#state.fixes, step] });
  }

  /** Takes the last fix back, unless its cells were edited since. */
  async undoFix(): Promise<void> {
    const last = this.#state.fixes.at(-1);
    if (last === undefined) return;
    await this.#guard(async () => {
      const undone = await last.undo();
      this.#set({ fixes: this.#state.fixes.slice(0, -1) });
      if (!undone) {
        const text = `${last.cells} was edited since, so nothing was taken back: undo your own edit first`;
        this.#set({ notice: { kind: "problem", text } });
        return;
      }
      await this.#judgeWritten(last.sheet, last.edits);
      this.#set({ notice: { kind: "done", text: `Taken back in ${last.cells}: ${last.label}` } });
    });
  }

  async #write(wanted: readonly FindingView[], label: string): Promise<void> {
    const sheet = wanted[0]?.sheet;
    if (sheet === undefined) return;
    await this.#guard(async () => {
      await this.#inTurn(() => this.#recheck(sheet));
      const before = this.#outdated.has(sheet) ? undefined : this.#views.get(sheet);
      const findings = stillStanding(wanted, before);
      if (findings.length === 0) {
        throw new Error("the sheet has changed since this was found, so nothing was written: check again");
      }
      const edits = editsOf(findings);
      const cells = cellList(edits);
      this.#set({ work: { label: `Writing ${cells}`, done: null } });
      const undo = await this.workbook.writeCells(sheet, edits);
      this.#set({ fixes: [...this.#state.fixes, { sheet, label, cells, edits, undo }] });
      await this.#judgeWritten(sheet, edits);
      const proof = fixProof(findings, before, this.#views.get(sheet));
      this.#set({ notice: { ...proof, text: `Done in ${cells}: ${label}. ${proof.text}` } });
    });
  }

  async #judgeWritten(sheet: string, edits: readonly CellEdit[]): Promise<void> {
    const rows = edits.map(({ cell }) => Number(/\d+$/.exec(cell)?.[0]) - 1);
    for (const row of rows) this.#noteEdit({ sheet, firstRow: row, lastRow: row });
    clearTimeout(this.#quiet);
    await this.#inTurn(() => this.#recheck(sheet));
  }

  /** Keeps a decision on how the workbook is checked in the workbook, and checks by it. */
  async decide(edit: SettingsEdit, said: string): Promise<void> {
    const { sheet } = this.#state;
    if (sheet === null) return;
    await this.#guard(async () => {
      const settings = settingsFromText(await this.workbook.setting(SETTING_NAMES.audit));
      if (settings.problem !== undefined) {
        throw new Error(
          `settings kept in the workbook could not be read: ${settings.problem}. Put the name ${SETTING_NAMES.audit} right, or delete it, then decide again`,
        );
      }
      await this.workbook.saveSetting(SETTING_NAMES.audit, settingsToText(edit(settings)));
      for (const known of this.#views.keys()) this.#outdated.add(known);
      const before = this.#views.get(sheet)?.flags;
      await this.#inTurn(() => this.#audit(sheet));
      const { view } = this.#state;
      if (this.#state.isColoured && view && !sameFlags(before ?? [], view.flags)) await this.#colour();
      this.#set({ notice: { kind: "done", text: said } });
    });
  }

  say(text: string): void {
    this.#set({ notice: { kind: "done", text } });
  }

  report(problem: unknown): void {
    this.#set({
      notice: { kind: "problem", text: problem instanceof Error ? problem.message : String(problem) },
    });
  }

  async #readWorkbook(): Promise<void> {
    const sheets = (await this.workbook.sheets()).filter(({ visible }) => visible);
    const active = await this.workbook.activeSheet();
    const sheet = sheets.some(({ name }) => name === active) ? active : (sheets[0]?.name ?? null);
    const standard = (await this.workbook.setting(SETTING_NAMES.standard)) ?? "";
    const isColoured = sheet !== null && (await this.workbook.hasFlags(sheet));
    this.#set({ sheets, sheet, standard, isColoured });
  }

  async #audit(sheet: string): Promise<void> {
    this.#edits.delete(sheet);
    const copy = await this.workbook.read(sheet);
    this.#set({ work: { label: `Checking ${copy.rowCount} rows`, done: null } });
    const settings = await this.workbook.setting(SETTING_NAMES.audit);
    const shopSheet = this.#state.sheets.find(({ name }) => isShopSheet(name) && name !== sheet);
    const shop = shopSheet === undefined ? null : await this.workbook.read(shopSheet.name);
    const besides = await this.besides(sheet);
    const { standard } = this.#state;
    const view = await this.desk.audit({ sheet: copy, shop, besides, standard, settings });
    this.#outdated.delete(sheet);
    this.#show(view);
  }

  /** The other sheets, read once until they are edited; a workbook of very many is not read through. */
  async besides(sheet: string): Promise<Besides> {
    const names = this.#state.sheets.map(({ name }) => name);
    const others = names.filter((name) => name !== sheet && !isShopSheet(name));
    if (others.length > MOST_BESIDES) return NO_BESIDES;
    for (const name of others) {
      if (!this.#besideCopies.has(name)) this.#besideCopies.set(name, await this.workbook.read(name));
    }
    const place = names.indexOf(sheet);
    const copies = (list: readonly string[]): Sheet[] =>
      list.flatMap((name) => (others.includes(name) ? (this.#besideCopies.get(name) ?? []) : []));
    return { before: copies(names.slice(0, place)), behind: copies(names.slice(place + 1)) };
  }

  #noteEdit({ sheet, firstRow, lastRow }: EditedRows & { readonly sheet: string }): void {
    this.#besideCopies.delete(sheet);
    if (isShopSheet(sheet)) {
      // what the yard owns can alter the judgement of any row
      for (const known of this.#views.keys()) this.#outdated.add(known);
      if (this.#state.view !== null) this.#set(this.#staleness(this.#state.view.sheet));
    }
    if (!this.#views.has(sheet)) return;
    const known = this.#edits.get(sheet) ?? { firstRow, lastRow };
    this.#edits.set(sheet, {
      firstRow: Math.min(known.firstRow, firstRow),
      lastRow: Math.max(known.lastRow, lastRow),
    });
    if (sheet === this.#state.sheet && !this.#state.isStale) this.#set(this.#staleness(sheet));
    clearTimeout(this.#quiet);
    this.#quiet = setTimeout(() => void this.#recheckEdits(), QUIET);
  }

  /** Judges again what the edits since the last judgement can have changed; lists and colours follow. */
  async #recheckEdits(): Promise<void> {
    try {
      for (const sheet of [...this.#edits.keys()]) await this.#inTurn(() => this.#recheck(sheet));
    } catch (problem) {
      this.report(problem);
    }
  }

  async #recheck(sheet: string): Promise<void> {
    const rows = this.#edits.get(sheet);
    const before = this.#views.get(sheet);
    if (rows === undefined || before === undefined || this.#outdated.has(sheet)) return;
    this.#edits.delete(sheet);
    try {
      const view = await this.desk.recheck({ sheet: await this.workbook.read(sheet), ...rows });
      if (!this.#views.has(sheet)) return;
      this.#show(view);
      if (!sameFlags(before.flags, view.flags) && (await this.workbook.hasFlags(sheet)))
        await this.workbook.showFlags(sheet, view.flags);
    } catch (problem) {
      this.#outdated.add(sheet);
      if (sheet === this.#state.sheet) this.#set(this.#staleness(sheet));
      throw problem;
    }
  }

  /** A judgement of a sheet stands; the list shows it where the sheet is the chosen one. */
  #show(view: AuditView): void {
    const { sheet } = view;
    this.#views.set(sheet, view);
    if (sheet !== this.#state.sheet) return;
    this.#set({ view, ...this.#staleness(sheet) });
    const { bar } = this.#state;
    if (bar !== null) void this.#showBar(sheet, bar.row - 1, true);
  }

  #staleness(sheet: string): Pick<PaneState, "isStale" | "needsCheck"> {
    const needsCheck = this.#outdated.has(sheet);
    return { isStale: needsCheck || this.#edits.has(sheet), needsCheck };
  }

  #inTurn(act: () => Promise<void>): Promise<void> {
    const done = this.#turn.then(act);
    this.#turn = done.catch(() => {});
    return done;
  }

  async #colour(): Promise<void> {
    const { view } = this.#state;
    if (view === null) return;
    const label = "Colouring rows";
    this.#set({ work: { label, done: 0 } });
    await this.workbook.showFlags(view.sheet, view.flags, (done) => this.#set({ work: { label, done } }));
    this.#set({ isColoured: view.flags.length > 0 });
  }

  /** The pane shows the sheet that the user works on. */
  async #follow(sheet: string, row: number): Promise<void> {
    const isOffered = this.#state.sheets.some(({ name }) => name === sheet);
    // the Shop sheet and the findings are looked up beside a schedule, whose list stays
    const isAside = (isShopSheet(sheet) || hasFindingsName(sheet)) && this.#state.view !== null;
    if (isOffered && !isAside && this.#state.work === null) await this.chooseSheet(sheet);
    await this.#showBar(sheet, row);
  }

  async #showBar(sheet: string, row: number, isNew = false): Promise<void> {
    if (!isNew) this.#barWanted = { sheet, row };
    if (sheet !== this.#state.view?.sheet) return;
    if (this.#state.bar?.row === row + 1 && !isNew) return;
    const bar = await this.desk.bar(sheet, row);
    // another row may have been selected since
    const wanted = this.#barWanted;
    if (sheet === this.#state.view?.sheet && wanted.sheet === sheet && wanted.row === row) this.#set({ bar });
  }

  async #guard(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (problem) {
      this.report(problem);
    } finally {
      this.#set({ work: null });
    }
  }

  #set(change: Partial<PaneState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}

function sameFlags(a: AuditView["flags"], b: AuditView["flags"]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function cellList(edits: readonly CellEdit[]): string {
  return edits.length > 5 ? `${edits.length} cells` : edits.map(({ cell }) => cell).join(", ");
}
