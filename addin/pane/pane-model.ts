import type { Severity } from "../../core/audit/finding";
import type { AuditDesk } from "./desk/audit-desk";
import type { AuditView, FindingView } from "./desk/audit-view";
import { EMPTY_STATE, type PaneState } from "./pane-state";
import { SETTING_NAMES } from "./setting-names";
import type { WorkbookPort } from "./workbook-port";

/** What the pane does, without a page: its state, and the actions that change it. */
export class PaneModel {
  #state: PaneState = EMPTY_STATE;
  readonly #views = new Map<string, AuditView>();
  /** sheets edited, or given another standard, since their check */
  readonly #edited = new Set<string>();
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
    this.workbook.onChange(({ sheet }) => {
      if (this.#state.work !== null || !this.#views.has(sheet)) return;
      this.#edited.add(sheet);
      if (sheet === this.#state.sheet) this.#set({ isStale: true });
    });
  }

  /** Another workbook was opened: nothing of the last one holds. */
  async workbookReplaced(): Promise<void> {
    this.#views.clear();
    this.#edited.clear();
    await this.desk.forget();
    this.#set({ ...EMPTY_STATE, shown: this.#state.shown });
    await this.#guard(() => this.#readWorkbook());
  }

  /** Shows what is known of a sheet: its last check, or that it was not checked yet. */
  async chooseSheet(sheet: string): Promise<void> {
    if (sheet === this.#state.sheet) return;
    const isColoured = await this.workbook.hasFlags(sheet);
    const view = this.#views.get(sheet) ?? null;
    const isStale = this.#edited.has(sheet);
    this.#set({ sheet, view, bar: null, isStale, fixes: [], isColoured, notice: null, current: null });
  }

  /** Keeps the standard in the workbook and recalculates every BAR formula with it. */
  async chooseStandard(standard: string): Promise<void> {
    if (standard === this.#state.standard) return;
    await this.#guard(async () => {
      this.#set({ standard, work: { label: "Recalculating BAR formulas", done: null } });
      await this.workbook.saveSetting(SETTING_NAMES.standard, standard);
      const count = await this.workbook.recalculate();
      const formulas = count === 1 ? "1 BAR formula" : `${count} BAR formulas`;
      for (const sheet of this.#views.keys()) this.#edited.add(sheet);
      this.#set({
        isStale: this.#state.view !== null,
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
      const copy = await this.workbook.read(sheet);
      this.#set({ work: { label: `Checking ${copy.rowCount} rows`, done: null } });
      const settings = await this.workbook.setting(SETTING_NAMES.audit);
      const view = await this.desk.audit({ sheet: copy, standard: this.#state.standard, settings });
      this.#views.set(sheet, view);
      this.#edited.delete(sheet);
      this.#set({ view, isStale: false, current: null });
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

  async goTo(finding: FindingView): Promise<void> {
    if (finding.cell === null) return;
    const { cell, sheet, key } = finding;
    await this.#guard(async () => {
      await this.workbook.goTo(sheet, cell);
      this.#set({ current: key });
      if (finding.row !== null) await this.#showBar(sheet, finding.row - 1);
    });
  }

  /** Writes a safe fix and checks again. */
  async applyFix(finding: FindingView): Promise<void> {
    const { fix, sheet } = finding;
    if (fix === null || fix.safety !== "safe") return;
    await this.#guard(async () => {
      const undo = await this.workbook.writeCells(sheet, fix.edits);
      const cells = fix.edits.map(({ cell }) => cell).join(", ");
      this.#set({ fixes: [...this.#state.fixes, { label: fix.label, cells, undo }] });
    });
    await this.check();
    this.#set({ notice: { kind: "done", text: `Done in ${cellList(fix.edits)}: ${fix.label}` } });
  }

  /** Takes the last fix back, unless its cells were edited since. */
  async undoFix(): Promise<void> {
    const last = this.#state.fixes.at(-1);
    if (last === undefined) return;
    const undone = await last.undo();
    this.#set({ fixes: this.#state.fixes.slice(0, -1) });
    if (undone) await this.check();
    this.#set({
      notice: undone
        ? { kind: "done", text: `Taken back in ${last.cells}: ${last.label}` }
        : {
            kind: "problem",
            text: `${last.cells} was edited since, so nothing was taken back: undo your own edit first`,
          },
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
    if (isOffered && this.#state.work === null) await this.chooseSheet(sheet);
    await this.#showBar(sheet, row);
  }

  async #showBar(sheet: string, row: number): Promise<void> {
    if (sheet !== this.#state.view?.sheet) return;
    if (this.#state.bar?.row === row + 1 && !this.#state.isStale) return;
    const bar = await this.desk.bar(sheet, row);
    if (sheet === this.#state.view?.sheet) this.#set({ bar });
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

function cellList(edits: readonly { readonly cell: string }[]): string {
  return edits.map(({ cell }) => cell).join(", ");
}
