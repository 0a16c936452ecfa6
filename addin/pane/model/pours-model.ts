import { bookedCutsFrom, bookedCutsText, bookedTwice } from "../../../core/cutting/booked-cuts";
import { SHOP_SHEET } from "../../../core/shop";
import { counted } from "../../../core/units/counted";
import { FINDINGS_SHEET, findingsSheetState, hasFindingsName } from "../../workbook/own-findings-sheet";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { IfSheetIsThere, WorkbookPort } from "../../workbook/workbook-port";
import type { Engine, PageKind } from "../engine/engine";
import type { GivenFile } from "../engine/job-view";
import type { PrintedPage } from "../engine/printed-page";
import type { RemnantView } from "../engine/remnant-view";
import { TOTALS_MARK } from "../engine/totals-mark";
import type { PageHost } from "../page-host";
import { Observed } from "./observed";
import type { PaneModel } from "./pane-model";
import { CLOSED, NO_POURS, type PoursState } from "./pours-state";
import { confirmGuess } from "./settings-edits";
import { shopContent } from "./shop-content";
import { writeOwnSheet } from "./write-own-sheet";

const TOTALS_SHEET = "Totals";
const KIND_WORDS: Partial<Record<PageKind, string>> = { labels: "bundle labels", loads: "loading lists" };

/** What the pane does for whoever plans: tonnes by pour, pages of the pours chosen, revisions, the Shop sheet. */
export class PoursModel extends Observed<PoursState> {
  /** the sheet last seen to hold bars */
  #schedule: string | null = null;
  #sheets: PaneModel["state"]["sheets"] = [];
  /** totals follow the schedule while they are in sight */
  #isInSight = false;
  /** they are to be added up once what is being done is done */
  #isDue = false;
  #view: PaneModel["state"]["view"] = null;

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly pane: PaneModel,
    private readonly engine: Engine,
    readonly host: PageHost,
  ) {
    super(NO_POURS);
    pane.papers = {
      print: (kind) => this.printNow(kind),
      writeFindings: (answer) => this.writeFindings(answer ?? null),
      writeStandard: (file) =>
        this.#work("Adding the sheet Standard", (sheet) =>
          writeOwnSheet(workbook, engine, pane, sheet, file),
        ),
    };
    pane.subscribe(() => this.#follow());
    this.#follow();
  }

  /** Adds up the tonnes of the schedule by pour and size. */
  async addUp(): Promise<void> {
    if (this.state.sheet === null) return;
    await this.#work("Adding up tonnes", async (sheet) => {
      const totals = await this.engine.totals(sheet);
      const named = new Set(totals.pours.map(({ pour }) => pour));
      const kept = this.state.pours?.filter((pour) => named.has(pour)) ?? [];
      this.set({ totals, isBehind: false, pours: kept.length === 0 ? null : kept });
    });
  }

  /** Chooses the pours that every page is of; none or all of them is the whole schedule. */
  choosePours(pours: readonly string[]): void {
    const all = this.state.totals?.pours.length ?? 0;
    this.set({
      pours: pours.length === 0 || pours.length === all ? null : pours,
      page: null,
      remnants: CLOSED,
    });
  }

  /** Writes the Totals sheet; asks first where one of ours stands there, and never writes over another. */
  async writeTotals(answer: IfSheetIsThere | null = null): Promise<void> {
    await this.#work("Writing the Totals sheet", async (sheet) => {
      const ours = answer === null ? await this.#ourTotals() : null;
      if (ours !== null) {
        this.set({ asksAboutTotals: ours });
        return;
      }
      const totals = await this.engine.totals(sheet);
      if (totals.held !== null) throw new Error(`no Totals sheet is written: ${totals.held}`);
      const isReplaced = answer === "replace" && (await this.#ourTotals()) !== null;
      const name = await this.workbook.addSheet(
        TOTALS_SHEET,
        totals.content,
        isReplaced ? "replace" : "number",
      );
      this.set({ totals, asksAboutTotals: null });
      await this.pane.sheetsChanged();
      this.pane.say(`Sheet ${name} follows ${totals.sheet} with live BAR.TONNAGE formulas`);
    });
  }

  /**
   * Writes the findings sheet, in the place of an earlier one that nobody has written on; asks first where
   * somebody has, and never writes over a sheet that is not ours.
   */
  async writeFindings(answer: IfSheetIsThere | null = null): Promise<void> {
    await this.#work("Writing the findings sheet", async (sheet) => {
      const earlier = await this.#earlierFindings();
      if (earlier === "edited" && answer === null) {
        this.pane.askAboutFindings(FINDINGS_SHEET);
        return;
      }
      const content = await this.engine.findings(sheet);
      const isReplaced = earlier === "untouched" || (earlier === "edited" && answer === "replace");
      const name = await this.workbook.addSheet(FINDINGS_SHEET, content, isReplaced ? "replace" : "number");
      this.pane.askAboutFindings(null);
      await this.pane.sheetsChanged();
      this.pane.say(`Sheet ${name} lists what was found in ${sheet}`);
    });
  }

  /** Writes what a buyer orders as a sheet of its own. */
  async writeOrder({ toBuy, sheet: of }: PrintedPage): Promise<void> {
    await this.#work("Writing the order", async () => {
      const heads = ["Size", "Stock length", "Bars", "kg"].map((value) => ({ value, bold: true }));
      const number = (text: string) => (Number.isFinite(Number(text)) ? Number(text) : text);
      const lines = toBuy.map(({ size, stock, bars, kilograms }) =>
        [size, stock, number(bars), number(kilograms)].map((value) => ({ value })),
      );
      const name = await this.workbook.addSheet("Order", {
        rows: [[{ value: `Stock to buy for ${of}`, bold: true }], heads, ...lines],
        widths: [18, 18, 10, 10],
      });
      await this.pane.sheetsChanged();
      this.pane.say(`Sheet ${name} lists the stock to buy for ${of}`);
    });
  }

  /** Makes a page and prints it, or hands it over as a file where the page cannot print. */
  async printNow(kind: PageKind): Promise<void> {
    await this.#work("Making the page", async (sheet) => {
      // the wall chart is of the machines, whatever is poured
      const pours = kind === "wall chart" ? null : this.state.pours;
      const page = await this.engine.page(kind, sheet, pours);
      if (this.host.print === null) this.host.save(page.fileName, "text/html", page.html);
      else this.host.print(page);
      this.pane.say(`${page.title} of ${pours === null ? sheet : pours.join(", ")}: ready`);
    });
  }

  /** The user says that a sheet whose totals are held back is read right; that is kept in the workbook. */
  async confirmReading(sheet: string): Promise<void> {
    await this.pane.decide(confirmGuess(sheet, "totals-held", true), `Sheet ${sheet} is read right, you say`);
    await this.addUp();
  }

  /** Where a column is said to be something else. */
  openReading(): void {
    this.pane.choosePlace("check");
  }

  keepTotals(): void {
    this.set({ asksAboutTotals: null });
  }

  /** Adds an empty Shop sheet, or goes to the one that is there. */
  async openShop(): Promise<void> {
    await this.#work("Adding the Shop sheet", async () => {
      const known = this.state.shopSheet;
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
    await this.#work(`Making the ${KIND_WORDS[kind] ?? kind}`, async (sheet) => {
      await this.#make(kind, sheet);
      this.pane.say(`${this.state.page?.title} of ${sheet}: ready`);
    });
  }

  async #make(kind: PageKind, sheet: string): Promise<void> {
    this.set({ page: null, remnants: CLOSED });
    this.set({ page: await this.engine.page(kind, sheet, this.state.pours) });
  }

  /** Shows what the cut list in sight would change on the Shop sheet; writes nothing. */
  async lookAtRemnants(): Promise<void> {
    await this.#work("Looking at the remnants", async (sheet) => {
      const { cut } = await this.#remnantsOf(sheet);
      this.set({ remnants: { step: "open", twice: bookedTwice(await this.#bookedCuts(), cut) } });
    });
  }

  leaveRemnants(): void {
    this.set({ remnants: CLOSED });
  }

  /** Adds the Shop sheet that remnants need, and makes the cut list anew with it. */
  async addShopForRemnants(): Promise<void> {
    await this.#work("Adding the Shop sheet", async (sheet) => {
      await this.#addShop();
      await this.pane.checked(sheet, true);
      await this.#make("cut list", sheet);
    });
    if (this.state.page !== null) await this.lookAtRemnants();
  }

  /** Writes the remnants that are looked at in one step, which the pane's take back undoes. */
  async writeRemnants(): Promise<void> {
    if (this.state.remnants.step !== "open") return;
    await this.#work("Writing the remnants", async (sheet) => {
      const { shopSheet, edits, cut, changes } = await this.#remnantsOf(sheet);
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
        if (this.state.remnants.step === "written") this.set({ remnants: CLOSED });
        return true;
      };
      const label = `rests of ${cut.sheet}`;
      const cells = `${edits.length} cells of ${shopSheet}`;
      this.pane.fixes.keepStep({ sheet: shopSheet, label, cells, edits, undo });
      this.set({ remnants: { step: "written", twice: null } });
      const rows = counted(changes.length, "row");
      this.pane.say(`${rows} of remnants on sheet ${shopSheet}: the next cut list has them as stock`);
    });
  }

  /** The remnants of the cut list in sight, where it would be made of the same sheets now. */
  async #remnantsOf(sheet: string): Promise<RemnantView> {
    const { page } = this.state;
    const view = page?.remnants ?? null;
    if (page === null || view === null) throw new Error("there is no cut list in sight: make it first");
    await this.pane.checked(sheet, true);
    if ((await this.engine.basis(sheet)) === page.basis) return view;
    throw new Error(
      "the schedule or the Shop sheet has changed since this cut list was made: make the cut list again",
    );
  }

  async #bookedCuts() {
    const booked = bookedCutsFrom(await this.workbook.setting(SETTING_NAMES.cutLists));
    if (booked !== null) return booked;
    throw new Error(
      `what the workbook's name ${SETTING_NAMES.cutLists} keeps could not be read: delete the name, then try again`,
    );
  }

  chooseOlder(older: string): void {
    this.set({ older, comparison: null });
  }

  async compareWithSheet(): Promise<void> {
    const { older } = this.state;
    if (older === null) return;
    await this.#compare(async (sheet) => this.engine.compare(sheet, await this.workbook.read(older)));
  }

  async compareWithFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.#compare(async (sheet) => {
      const comparison = await this.engine.compare(sheet, bytes);
      return { ...comparison, older: name };
    });
  }

  /** Adds up the sheet with the schedules of files; other files than workbooks are left alone. */
  async addFiles(files: readonly GivenFile[]): Promise<void> {
    await this.#work("Adding up with other files", async (sheet) => {
      this.set({ job: null });
      if (files.length === 0) throw new Error("there is no .xlsx or .xlsm among them: choose workbooks");
      const job = await this.engine.withFiles(sheet, files);
      this.set({ job });
      this.pane.say(`${job.total ?? "no"} t with ${job.files} other ${job.files === 1 ? "file" : "files"}`);
    });
  }

  async goTo(cell: string): Promise<void> {
    const sheet = this.state.comparison?.newer;
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

  async #compare(ask: (sheet: string) => Promise<PoursState["comparison"]>): Promise<void> {
    await this.#work("Comparing revisions", async (sheet) => {
      this.set({ comparison: null });
      const comparison = await ask(sheet);
      this.set({ comparison });
      const count = comparison?.changes.length ?? 0;
      this.pane.say(`${count} ${count === 1 ? "bar differs" : "bars differ"} from ${comparison?.older}`);
    });
  }

  /** Everything is made of the sheet's check, which is brought up to date first. */
  async #work(doing: string, act: (sheet: string) => Promise<void>): Promise<void> {
    if (this.state.doing !== null) return;
    this.set({ doing });
    try {
      const { sheet } = this.state;
      if (sheet === null) throw new Error("no sheet is chosen: choose the sheet that holds the schedule");
      await this.pane.checked(sheet);
      await act(sheet);
    } catch (problem) {
      this.pane.report(problem);
    } finally {
      this.set({ doing: null });
      const isDue = this.#isDue;
      this.#isDue = false;
      if (isDue) void this.addUp();
    }
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

  /** Pages are made of the sheet last checked, also while the user looks at another. */
  #follow(): void {
    const { sheets, sheet, view, shopSheet } = this.pane.state;
    if (sheets.length === 0 && this.#sheets.length > 0) {
      // another workbook
      this.#schedule = null;
      this.set({ ...NO_POURS, doing: this.state.doing });
    }
    this.#sheets = sheets;
    if (view !== null && view.rows.bars > 0) this.#schedule = view.sheet;
    const names = sheets.map(({ name }) => name);
    const isKept = this.#schedule !== null && names.includes(this.#schedule);
    const schedule = isKept ? this.#schedule : sheet;
    const others = names.filter(
      (name) => name !== schedule && name !== shopSheet && name !== TOTALS_SHEET && !hasFindingsName(name),
    );
    const { older } = this.state;
    this.set({
      sheet: schedule,
      others,
      older: older !== null && others.includes(older) ? older : (others[0] ?? null),
      shopSheet,
    });
    const { place } = this.pane.state;
    const wasInSight = this.#isInSight;
    this.#isInSight = place === "pours";
    const isNewView = view !== null && view !== this.#view && view.sheet === schedule;
    if (isNewView) {
      this.#view = view;
      const isSame = view.sheet === this.state.totals?.sheet;
      // what stands in sight is of the sheet as it was
      this.set({ isBehind: true, job: null, ...(isSame ? {} : { totals: null, pours: null }) });
    }
    // totals follow what is checked, as long as somebody sees them
    if (!this.#isInSight || !this.state.isBehind || (!isNewView && wasInSight)) return;
    if (this.state.doing === null) void this.addUp();
    else this.#isDue = true;
  }
}
