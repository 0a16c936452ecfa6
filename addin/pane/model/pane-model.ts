import type { Severity } from "../../../core/audit/finding";
import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";
import { hasShopName } from "../../../core/shop/has-shop-name";
import { counted } from "../../../core/units/counted";
import { hasFindingsName } from "../../workbook/own-findings-sheet";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { WorkbookPort } from "../../workbook/workbook-port";
import type { FindingView } from "../engine/audit-view";
import type { Engine } from "../engine/engine";
import { type Arrangement, listedFindings } from "./arrange-findings";
import { aboutOf, type Decision, placeOfFinding } from "./decision";
import { FixSteps, standsIn } from "./fix-steps";
import { FollowedSheets } from "./followed-sheets";
import { Judge, type Judged } from "./judge";
import { Observed } from "./observed";
import type { PaneHost } from "./pane-host";
import { EMPTY_STATE, type PaneState } from "./pane-state";
import type { Papers } from "./papers";
import { GivenUp, Patience } from "./patience";
import { keepPlace, lastPlace, type Place } from "./place";
import type { SettingsEdit } from "./settings-edits";

/** ms in which what is told of sheets is taken as one change */
const TOGETHER = 50;
/** ms after which work that has not moved offers to be stopped */
const SLOW = 3_000;

/** What the pane does, without a page: its state, and the actions that change it. */
export class PaneModel extends Observed<PaneState> {
  readonly #sheets: FollowedSheets;
  /** Fixes, looked at before they are written, and the way back. */
  readonly fixes: FixSteps;
  readonly #patience = new Patience();
  readonly #judge: Judge;
  #slow: ReturnType<typeof setTimeout> | undefined;
  /** the row whose bar was asked for last */
  #barWanted = { sheet: "", row: -1 };
  /** pages and sheets of the findings; null until what makes them is loaded */
  papers: Papers | null = null;

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly engine: Engine,
  ) {
    super({ ...EMPTY_STATE, place: lastPlace() });
    this.#judge = new Judge(workbook, engine, this.#patience, {
      asked: () => ({
        sheet: this.state.sheet,
        sheets: this.#sheets.all.filter(
          ({ name, visible }) => visible || this.state.readsHidden || hasShopName(name),
        ),
        standard: this.state.standard,
      }),
      doing: (label) => this.#work(label),
      stands: (judged) => this.#stands(judged),
      stalenessChanged: (sheet) => {
        if (sheet === this.state.sheet) this.set(this.#staleness(sheet));
      },
      failed: (problem) => this.report(problem),
    });
    const host: PaneHost = {
      workbook,
      engine,
      patience: this.#patience,
      judge: this.#judge,
      state: () => this.state,
      set: (change) => this.set(change),
      guard: (act) => this.#guard(act),
      quietly: (act) => this.#quietly(act),
      work: (label, done) => this.#work(label, done),
      say: (text) => this.say(text),
      chooseSheet: (sheet) => this.chooseSheet(sheet),
    };
    this.#sheets = new FollowedSheets(host);
    this.fixes = new FixSteps(host);
  }

  /** Reads the workbook's sheets and standard, and follows what the user selects, edits and does to sheets. */
  async start(): Promise<void> {
    await this.#guard(() => this.#readWorkbook());
    this.workbook.onSelection(({ sheet, row, column }) => void this.#follow(sheet, row, column));
    this.workbook.onChange((place) => this.#judge.edited(place));
    let soon: ReturnType<typeof setTimeout> | undefined;
    this.workbook.onSheets(() => {
      clearTimeout(soon);
      soon = setTimeout(() => void this.#quietly(() => this.sheetsChanged()), TOGETHER);
    });
  }

  /** Another workbook was opened: nothing of the last one holds. */
  async workbookReplaced(): Promise<void> {
    this.#judge.clear();
    this.#sheets.all = [];
    const { shown, place, book } = this.state;
    this.set({ ...EMPTY_STATE, shown, place, book: book + 1 });
    await this.#guard(() => this.#readWorkbook());
  }

  /** Ends what is under way where nobody answers. What was asked for may still be done later by who was asked. */
  stop(): void {
    const label = this.state.work?.label;
    this.engine.stop();
    this.#judge.stopped();
    const what = label === undefined ? "" : `: ${label.toLowerCase()}`;
    this.#patience.giveUp(
      new Error(
        `stopped${what}. Where the workbook does not answer, finish the cell that is being edited, then try again`,
      ),
    );
  }

  /** Sheets came, went, moved or have other names: the pane follows, and what is known of a sheet stays its own. */
  async sheetsChanged(): Promise<void> {
    await this.#sheets.changed();
  }

  /** Reads hidden sheets as others, or leaves them out again. */
  readHidden(readsHidden: boolean): void {
    this.#sheets.readHidden(readsHidden);
  }

  /** Shows what is known of a sheet: its last check, or that it was not checked yet. */
  async chooseSheet(sheet: string): Promise<void> {
    if (sheet === this.state.sheet) return;
    const isColoured = await this.#patience.wait(this.workbook.hasFlags(sheet));
    const view = this.#judge.view(sheet) ?? null;
    this.set({
      sheet,
      view,
      bar: null,
      looked: null,
      follows: null,
      explained: null,
      arrangement: { ...this.state.arrangement, rule: null, member: null, pour: null },
      ...this.#staleness(sheet),
      fixes: [],
      isColoured,
      notice: null,
      current: null,
    });
    if (view !== null && this.#judge.isStale(sheet)) await this.#judge.upToDate(sheet);
  }

  /** Keeps the standard in the workbook, recalculates every BAR formula with it, and judges anew what is in sight. */
  async chooseStandard(standard: string): Promise<void> {
    if (standard === this.state.standard) return;
    await this.#guard(async () => {
      await this.#patience.wait(this.workbook.saveSetting(SETTING_NAMES.standard, standard));
      // the list is of the former standard until it is judged anew
      this.set({ standard, isStale: this.state.view !== null });
      this.#work("Recalculating BAR formulas");
      const recalculated = this.#patience.wait(this.workbook.recalculate());
      const count = await recalculated.finally(() => this.#judge.basisChanged());
      const formulas = counted(count, "BAR formula");
      const { sheet, view } = this.state;
      if (sheet !== null && view !== null) await this.#judge.upToDate(sheet);
      const judged = view === null ? "" : `${sheet} judged by ${standard}`;
      const follow = count === 0 ? "" : `${formulas} recalculated with ${standard}`;
      this.say([judged, follow].filter((part) => part !== "").join("; ") || `The standard is ${standard}`);
    });
  }

  /** Audits the chosen sheet and colours the rows that have findings. */
  async check(): Promise<void> {
    if (this.state.sheet === null) return;
    await this.#guard(async () => {
      this.set({ notice: null });
      this.#work(`Reading ${this.state.sheet}`);
      await this.sheetsChanged();
      const { sheet } = this.state;
      if (sheet === null) return;
      this.#work(`Reading ${sheet}`);
      await this.#judge.check(sheet);
      await this.#colour();
    });
  }

  async colour(): Promise<void> {
    await this.#guard(() => this.#colour());
  }

  async removeColours(): Promise<void> {
    const { sheet } = this.state;
    if (sheet === null) return;
    await this.#guard(async () => {
      this.#work("Taking the colours away");
      await this.#patience.wait(this.workbook.clearFlags(sheet));
      this.set({
        isColoured: false,
        notice: { kind: "done", text: "Colours removed: your own formats are as they were" },
      });
    });
  }

  toggleSeverity(severity: Severity): void {
    const shown = new Set(this.state.shown);
    if (!shown.delete(severity)) shown.add(severity);
    this.set({ shown });
  }

  arrange(change: Partial<Arrangement>): void {
    this.set({ arrangement: { ...this.state.arrangement, ...change } });
  }

  async goTo(finding: FindingView): Promise<void> {
    if (finding.cell === null) return;
    const { cell, sheet, key } = finding;
    await this.#guard(async () => {
      await this.#patience.wait(this.workbook.goTo(sheet, cell));
      this.set({ current: key });
      if (finding.row !== null) await this.#showBar(sheet, finding.row - 1);
    });
  }

  askAboutFindings(name: string | null): void {
    this.set({ asksAboutFindings: name });
  }

  choosePlace(place: Place): void {
    keepPlace(place);
    this.set({ place });
  }

  /** The findings that the list shows, in its order. */
  listed(): readonly FindingView[] {
    const { view, shown, arrangement } = this.state;
    return view === null ? [] : listedFindings(view.findings, shown, arrangement);
  }

  /** Goes to the next finding of the list, or the one before. */
  async step(by: 1 | -1): Promise<void> {
    const listed = this.listed();
    const now = listed.findIndex(({ key }) => key === this.state.current);
    const next = now < 0 ? (by > 0 ? 0 : listed.length - 1) : now + by;
    const finding = listed[Math.max(0, Math.min(listed.length - 1, next))];
    if (finding === undefined) return;
    // also one that is about no cell
    this.set({ current: finding.key });
    await this.goTo(finding);
  }

  /** Finds out why each row and column of the sheet in sight was read as it was. */
  async explain(): Promise<void> {
    const { view } = this.state;
    if (view === null) return;
    await this.#quietly(async () => {
      this.set({ explained: await this.#patience.wait(this.engine.explain(view.sheet)) });
    });
  }

  /** Finds out what a decision would keep from being told, before it is taken. */
  async lookAhead(decision: Decision): Promise<void> {
    const { sheet } = this.state;
    if (sheet === null) return;
    const about = aboutOf(decision);
    this.set({ ahead: null });
    await this.#quietly(async () => {
      const asked =
        decision.kind === "waiver" ? { ...decision, finding: placeOfFinding(decision.finding) } : decision;
      const words = await this.#patience.wait(this.engine.ahead(sheet, asked));
      this.set({ ahead: { about, words } });
    });
  }

  /** Keeps a decision on how the workbook is checked in the workbook, and checks by it. */
  async decide(edit: SettingsEdit, said: string): Promise<void> {
    const { sheet } = this.state;
    if (sheet === null) return;
    await this.#guard(async () => {
      const kept = await this.#patience.wait(this.workbook.setting(SETTING_NAMES.audit));
      const settings = settingsFromText(kept);
      if (settings.problem !== undefined) {
        throw new Error(
          `settings kept in the workbook could not be read: ${settings.problem}. Put the name ${SETTING_NAMES.audit} right, or delete it, then decide again`,
        );
      }
      await this.#patience.wait(
        this.workbook.saveSetting(SETTING_NAMES.audit, settingsToText(edit(settings))),
      );
      this.#judge.basisChanged();
      await this.#judge.upToDate(sheet);
      this.set({ notice: { kind: "done", text: said } });
    });
  }

  /** Has a sheet checked, where it is not or no longer, so that the engine can make pages of it. */
  async checked(sheet: string, isReadAnew = false): Promise<void> {
    await this.#judge.upToDate(sheet, isReadAnew);
  }

  say(text: string): void {
    this.set({ notice: { kind: "done", text } });
  }

  report(problem: unknown): void {
    if (problem instanceof GivenUp) return;
    this.set({
      notice: { kind: "problem", text: problem instanceof Error ? problem.message : String(problem) },
    });
  }

  async #readWorkbook(): Promise<void> {
    this.#sheets.all = await this.#patience.wait(this.workbook.sheets());
    this.set(this.#sheets.inSight());
    const { sheets } = this.state;
    const active = await this.#patience.wait(this.workbook.activeSheet());
    const sheet = sheets.some(({ name }) => name === active) ? active : (sheets[0]?.name ?? null);
    const standard = (await this.#patience.wait(this.workbook.setting(SETTING_NAMES.standard))) ?? "";
    const isColoured = sheet !== null && (await this.#patience.wait(this.workbook.hasFlags(sheet)));
    this.set({ sheet, standard, isColoured });
  }

  /** A judgement stands: list, bar, colours and what can be taken back follow. */
  async #stands({ view, copy, before }: Judged): Promise<void> {
    const { sheet } = view;
    const { fixes, notice, bar } = this.state;
    const standing = fixes.filter((fix) => fix.sheet !== sheet || standsIn(copy, fix));
    // what the user took back in the workbook is no longer ours to take back
    if (standing.length < fixes.length)
      this.set({ fixes: standing, ...(notice?.kind === "done" ? { notice: null } : {}) });
    if (sheet === this.state.sheet) {
      this.set({ view, explained: null, ...this.#staleness(sheet) });
      if (bar !== null) void this.#quietly(() => this.#showBar(sheet, bar.row - 1, true));
    }
    if (before === undefined || JSON.stringify(before.flags) === JSON.stringify(view.flags)) return;
    if (await this.#patience.wait(this.workbook.hasFlags(sheet)))
      await this.#patience.wait(this.workbook.showFlags(sheet, view.flags));
  }

  #staleness(sheet: string): Pick<PaneState, "isStale" | "needsCheck"> {
    return { isStale: this.#judge.isStale(sheet), needsCheck: this.#judge.needsCheck(sheet) };
  }

  async #colour(): Promise<void> {
    const { view } = this.state;
    if (view === null) return;
    const label = "Colouring rows";
    this.#work(label, 0);
    await this.#patience.wait(
      this.workbook.showFlags(view.sheet, view.flags, (done) => {
        if (this.state.work?.label === label) this.#work(label, done);
      }),
    );
    this.set({ isColoured: view.flags.length > 0 });
  }

  /** The pane shows the sheet that the user works on. */
  async #follow(sheet: string, row: number, column: number): Promise<void> {
    await this.#quietly(async () => {
      if (!this.#sheets.all.some(({ name }) => name === sheet)) await this.sheetsChanged();
      const isOffered = this.state.sheets.some(({ name }) => name === sheet);
      // the Shop sheet and the findings are looked up beside a schedule, whose list stays
      const isAside = (hasShopName(sheet) || hasFindingsName(sheet)) && this.state.view !== null;
      if (isOffered && !isAside && this.state.work === null) await this.chooseSheet(sheet);
      await this.#showBar(sheet, this.state.view?.isTurned === true ? column : row);
    });
  }

  async #showBar(sheet: string, row: number, isNew = false): Promise<void> {
    if (!isNew) this.#barWanted = { sheet, row };
    if (sheet !== this.state.view?.sheet) return;
    if (this.state.bar?.row === row + 1 && !isNew) return;
    const bar = await this.#patience.wait(this.engine.bar(sheet, row));
    // another row may have been selected since
    const wanted = this.#barWanted;
    if (sheet === this.state.view?.sheet && wanted.sheet === sheet && wanted.row === row) this.set({ bar });
  }

  async #guard(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (problem) {
      this.report(problem);
    } finally {
      clearTimeout(this.#slow);
      this.set({ work: null });
    }
  }

  /** Of what nobody asked for, only a failure is told. */
  async #quietly(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (problem) {
      this.report(problem);
    }
  }

  /** Says what is being done; once nothing has moved for a while, it can be stopped. */
  #work(label: string, done: number | null = null): void {
    clearTimeout(this.#slow);
    const isSlow = this.state.work?.isSlow === true;
    this.set({ work: { label, done, isSlow } });
    this.#slow = setTimeout(() => {
      const { work } = this.state;
      if (work !== null) this.set({ work: { ...work, isSlow: true } });
    }, SLOW);
  }
}
