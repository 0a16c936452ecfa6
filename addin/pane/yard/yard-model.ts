import { bookedCutsFrom, bookedCutsText, bookedTwice } from "../../../core/cutting/booked-cuts";
import { isShopSheet, SHOP_SHEET, shopTemplate } from "../../../core/shop";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { FINDINGS_SHEET, findingsSheetState, hasFindingsName } from "../../workbook/own-findings-sheet";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { IfSheetIsThere, SheetCell, SheetContent, WorkbookPort } from "../../workbook/workbook-port";
import type { PaneModel } from "../pane-model";
import type { PageHost } from "./page-host";
import type { RemnantView } from "./remnant-view";
import { sameCells } from "./same-cells";
import { TOTALS_MARK } from "./totals-mark";
import type { PageKind, YardDesk, YardQuestion } from "./yard-desk";
import { CLOSED, EMPTY_YARD, type YardState } from "./yard-state";

const TOTALS_SHEET = "Totals";

/** What the yard's side of the pane does: tonnage, pages to print, the Shop sheet, revisions. */
export class YardModel {
  #state: YardState = EMPTY_YARD;
  /** the sheet last seen to hold bars */
  #schedule: string | null = null;
  #sheets: PaneModel["state"]["sheets"] = [];
  /** the sheets as they were when the page in sight was made */
  #madeOf: YardQuestion | null = null;
  readonly #listeners = new Set<() => void>();

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly pane: PaneModel,
    private readonly desk: YardDesk,
    readonly host: PageHost,
  ) {
    pane.subscribe(() => this.#follow());
    this.#follow();
  }

  get state(): YardState {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async reckonTonnage(): Promise<void> {
    await this.#work("Adding up tonnes", async (question) => {
      const totals = await this.desk.totals(question);
      this.#set({ totals, asksAboutTotals: null });
      this.pane.say(`${totals.total} t in ${totals.sheet}`);
    });
  }

  /** Writes the Totals sheet; asks first where one of ours stands there, and never writes over another. */
  async writeTotals(answer: IfSheetIsThere | null = null): Promise<void> {
    await this.#work("Writing the Totals sheet", async (question) => {
      const ours = answer === null ? await this.#ourTotals() : null;
      if (ours !== null) {
        this.#set({ asksAboutTotals: ours });
        return;
      }
      const totals = await this.desk.totals(question);
      const isReplaced = answer === "replace" && (await this.#ourTotals()) !== null;
      const name = await this.workbook.addSheet(
        TOTALS_SHEET,
        totals.content,
        isReplaced ? "replace" : "number",
      );
      this.#set({ totals, asksAboutTotals: null });
      await this.pane.sheetsChanged();
      this.pane.say(`Sheet ${name} follows ${totals.sheet} with live BAR.TONNAGE formulas`);
    });
  }

  /**
   * Writes the findings sheet, in the place of an earlier one that nobody has written on; asks first where
   * somebody has, and never writes over a sheet that is not ours.
   */
  async writeFindings(answer: IfSheetIsThere | null = null): Promise<void> {
    await this.#work("Writing the findings sheet", async (question) => {
      const earlier = await this.#earlierFindings();
      if (earlier === "edited" && answer === null) {
        this.#set({ asksAboutFindings: FINDINGS_SHEET });
        return;
      }
      const content = await this.desk.findings(question);
      const isReplaced = earlier === "untouched" || (earlier === "edited" && answer === "replace");
      const name = await this.workbook.addSheet(FINDINGS_SHEET, content, isReplaced ? "replace" : "number");
      this.#set({ asksAboutFindings: null });
      await this.pane.sheetsChanged();
      this.pane.say(`Sheet ${name} lists what was found in ${question.sheet.name}`);
    });
  }

  keepFindings(): void {
    this.#set({ asksAboutFindings: null });
  }

  keepTotals(): void {
    this.#set({ asksAboutTotals: null });
  }

  /** Adds an empty Shop sheet, or goes to the one that is there. */
  async openShop(): Promise<void> {
    await this.#work("Adding the Shop sheet", async () => {
      const known = this.#state.shopSheet;
      if (known !== null) await this.workbook.goTo(known, "A1");
      else await this.#addShop();
    });
  }

  async #addShop(): Promise<void> {
    const name = await this.workbook.addSheet(SHOP_SHEET, shopContent(this.pane.state.standard));
    await this.pane.sheetsChanged();
    this.pane.say(`Sheet ${name} was added: fill in what the yard owns, leave blank what is not known`);
  }

  async makePage(kind: PageKind): Promise<void> {
    await this.#work(`Making the ${kind === "labels" ? "bundle labels" : kind}`, async (question) => {
      await this.#make(kind, question);
      this.pane.say(`${this.#state.page?.title} of ${question.sheet.name}: ready`);
    });
  }

  async #make(kind: PageKind, question: YardQuestion): Promise<void> {
    this.#set({ page: null, remnants: CLOSED });
    const page = await this.desk.page(kind, question);
    this.#madeOf = question;
    this.#set({ page });
  }

  /** Shows what the cut list in sight would change on the Shop sheet; writes nothing. */
  async lookAtRemnants(): Promise<void> {
    await this.#work("Looking at the remnants", async (question) => {
      const { cut } = this.#remnantsOf(question);
      this.#set({ remnants: { step: "open", twice: bookedTwice(await this.#bookedCuts(), cut) } });
    });
  }

  leaveRemnants(): void {
    this.#set({ remnants: CLOSED });
  }

  /** Adds the Shop sheet that remnants need, and makes the cut list anew with it. */
  async addShopForRemnants(): Promise<void> {
    await this.#work("Adding the Shop sheet", async () => {
      await this.#addShop();
      await this.#make("cut list", await this.#question());
    });
    if (this.#state.page !== null) await this.lookAtRemnants();
  }

  /** Writes the remnants that are looked at in one step, which the pane's take back undoes. */
  async writeRemnants(): Promise<void> {
    if (this.#state.remnants.step !== "open") return;
    await this.#work("Writing the remnants", async (question) => {
      const { shopSheet, edits, cut, changes } = this.#remnantsOf(question);
      if (shopSheet === null || edits.length === 0) return;
      const booked = await this.#bookedCuts();
      const before = await this.workbook.setting(SETTING_NAMES.cutLists);
      const undoCells = await this.workbook.writeCells(shopSheet, edits);
      try {
        await this.workbook.saveSetting(SETTING_NAMES.cutLists, bookedCutsText(booked, cut));
      } catch (problem) {
        await undoCells();
        throw problem;
      }
      const undo = async (): Promise<boolean> => {
        if (!(await undoCells())) return false;
        await this.workbook.saveSetting(SETTING_NAMES.cutLists, before);
        if (this.#state.remnants.step === "written") this.#set({ remnants: CLOSED });
        return true;
      };
      const label = `rests of ${cut.sheet}`;
      const cells = `${edits.length} cells of ${shopSheet}`;
      this.pane.keepStep({ sheet: shopSheet, label, cells, edits, undo });
      this.#set({ remnants: { step: "written", twice: null } });
      const rows = changes.length === 1 ? "1 row" : `${changes.length} rows`;
      this.pane.say(`${rows} of remnants on sheet ${shopSheet}: the next cut list has them as stock`);
    });
  }

  /** The remnants of the cut list in sight, where the sheets are still those that it was made of. */
  #remnantsOf({ sheet, shop, standard, settings }: YardQuestion): RemnantView {
    const view = this.#state.page?.remnants ?? null;
    const made = this.#madeOf;
    if (view === null || made === null) throw new Error("there is no cut list in sight: make it first");
    const isSame =
      sameCells(sheet, made.sheet) &&
      sameCells(shop, made.shop) &&
      standard === made.standard &&
      settings === made.settings;
    if (!isSame)
      throw new Error(
        "the schedule or the Shop sheet has changed since this cut list was made: make the cut list again",
      );
    return view;
  }

  async #bookedCuts() {
    const booked = bookedCutsFrom(await this.workbook.setting(SETTING_NAMES.cutLists));
    if (booked !== null) return booked;
    throw new Error(
      `what the workbook's name ${SETTING_NAMES.cutLists} keeps could not be read: delete the name, then try again`,
    );
  }

  chooseOlder(older: string): void {
    this.#set({ older, comparison: null });
  }

  async compareWithSheet(): Promise<void> {
    const { older } = this.#state;
    if (older === null) return;
    await this.#compare(async (question) => this.desk.compare(question, await this.workbook.read(older)));
  }

  async compareWithFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.#compare(async (question) => {
      const comparison = await this.desk.compare(question, bytes);
      return { ...comparison, older: name };
    });
  }

  async goTo(cell: string): Promise<void> {
    const sheet = this.#state.comparison?.newer;
    if (sheet === undefined) return;
    try {
      await this.workbook.goTo(sheet, cell);
    } catch (problem) {
      this.pane.report(problem);
    }
  }

  /** Puts a text on the clipboard, or says how to get it there. */
  async copy(text: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      this.pane.say("The table is on the clipboard");
    } catch {
      this.pane.report(new Error("the clipboard is closed to this page: download the table instead"));
    }
  }

  async #compare(ask: (question: YardQuestion) => Promise<YardState["comparison"]>): Promise<void> {
    await this.#work("Comparing revisions", async (question) => {
      this.#set({ comparison: null });
      const comparison = await ask(question);
      this.#set({ comparison });
      const count = comparison?.changes.length ?? 0;
      this.pane.say(`${count} ${count === 1 ? "bar differs" : "bars differ"} from ${comparison?.older}`);
    });
  }

  async #work(doing: string, act: (question: YardQuestion) => Promise<void>): Promise<void> {
    if (this.#state.doing !== null) return;
    this.#set({ doing });
    try {
      await act(await this.#question());
    } catch (problem) {
      this.pane.report(problem);
    } finally {
      this.#set({ doing: null });
    }
  }

  async #question(): Promise<YardQuestion> {
    const { sheet, shopSheet } = this.#state;
    if (sheet === null) throw new Error("no sheet is chosen: choose the sheet that holds the schedule");
    return {
      sheet: await this.workbook.read(sheet),
      shop: shopSheet === null ? null : await this.workbook.read(shopSheet),
      besides: await this.pane.besides(sheet),
      standard: this.pane.state.standard,
      settings: await this.workbook.setting(SETTING_NAMES.audit),
    };
  }

  /** What stands under the findings sheet's name; null where no sheet does, or one that is not ours. */
  async #earlierFindings(): Promise<ReturnType<typeof findingsSheetState>> {
    const sheets = await this.workbook.sheets();
    const known = sheets.find(({ name }) => name.toLowerCase() === FINDINGS_SHEET.toLowerCase());
    return known === undefined ? null : findingsSheetState(await this.workbook.read(known.name));
  }

  /** Name of the Totals sheet where it is one that we wrote. */
  async #ourTotals(): Promise<string | null> {
    const sheets = await this.workbook.sheets();
    const known = sheets.find(({ name }) => name.toLowerCase() === TOTALS_SHEET.toLowerCase());
    if (known === undefined) return null;
    const sheet = await this.workbook.read(known.name);
    const isOurs = sheet.top === 0 && sheet.left === 0 && sheet.cell(0, 0) === TOTALS_MARK;
    return isOurs ? known.name : null;
  }

  /** The yard works from the sheet last checked, also while the user looks at another. */
  #follow(): void {
    const { sheets, sheet, view } = this.pane.state;
    if (sheets.length === 0 && this.#sheets.length > 0) {
      // another workbook
      this.#schedule = null;
      this.#state = { ...EMPTY_YARD, doing: this.#state.doing };
    }
    this.#sheets = sheets;
    if (view !== null && view.rows.bars > 0) this.#schedule = view.sheet;
    const names = sheets.map(({ name }) => name);
    const isKept = this.#schedule !== null && names.includes(this.#schedule);
    const schedule = isKept ? this.#schedule : sheet;
    const shopSheet = names.find(isShopSheet) ?? null;
    const others = names.filter(
      (name) => name !== schedule && name !== shopSheet && name !== TOTALS_SHEET && !hasFindingsName(name),
    );
    const { older } = this.#state;
    this.#set({
      sheet: schedule,
      others,
      older: older !== null && others.includes(older) ? older : (others[0] ?? null),
      shopSheet,
    });
  }

  #set(change: Partial<YardState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}

function shopContent(id: string): SheetContent {
  const standard = resolveStandard(id);
  const rows = shopTemplate(isRefusal(standard) ? "mm" : standard.unit).map(({ kind, cells }) =>
    cells.map((cell): SheetCell => {
      const value = typeof cell === "string" || typeof cell === "number" ? cell : null;
      return { value, bold: kind !== "blank" };
    }),
  );
  return { rows, widths: [22, 16, 16, 16, 22, 16, 24, 12, 12] };
}
