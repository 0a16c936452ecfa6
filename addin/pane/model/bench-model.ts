import type { CellEdit, WorkbookPort } from "../../workbook/workbook-port";
import type { MarkView, MissingFact, TicketView } from "../engine/bench-view";
import type { Engine } from "../engine/engine";
import { Observed } from "./observed";
import type { PaneModel } from "./pane-model";

export interface BenchState {
  readonly sheet: string | null;
  readonly marks: readonly MarkView[];
  readonly ticket: TicketView | null;
  /** what was asked for and is not one bar to be made: then there is no ticket */
  readonly lost: LostMark | null;
  /** other bars of the ticket's mark, or all of the mark that was asked for */
  readonly alike: readonly MarkView[];
  /** what the last trial changed, in words */
  readonly learned: string | null;
  /** of the ticket's machine, or the one chosen */
  readonly missing: readonly MissingFact[];
  /** rows of marks that are made, by the sheet's own number */
  readonly made: ReadonlySet<number>;
  readonly doing: string | null;
}

/** A mark that names no bar, or more than one. */
export interface LostMark {
  readonly typed: string;
  readonly words: string;
}

const EMPTY: BenchState = {
  sheet: null,
  marks: [],
  ticket: null,
  lost: null,
  alike: [],
  learned: null,
  missing: [],
  made: new Set(),
  doing: null,
};

/** Name under which the sheet of ticks stands, and its heads. */
const MADE_SHEET = "Bars made";
const MADE_HEADS = ["Sheet", "Member", "Mark", "Made on", "Bar"] as const;

/** What somebody fills in after a trial bend. */
export interface TrialAnswers {
  readonly machine: string;
  readonly former: string;
  readonly bentTo: number;
  readonly released: number;
  readonly heat: string;
}

/** What the pane does for whoever stands at the bender: one mark's ticket, trials, and what is made. */
export class BenchModel extends Observed<BenchState> {
  #isInSight = false;
  #view: PaneModel["state"]["view"] = null;
  #row: number | null = null;
  /** the row selected in the sheet when it was last looked at */
  #asked: number | null = null;
  /** workbook and sheet in which a mark was not found */
  #lostIn = "";
  /** the ticket is to be made anew once what is being done is done */
  #isDue = false;
  /** what was asked for is done one after the other: nothing of it is dropped */
  #last: Promise<void> = Promise.resolve();

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly pane: PaneModel,
    private readonly engine: Engine,
    /** prints the wall chart, or keeps it as a page */
    readonly printChart: () => Promise<void>,
  ) {
    super(EMPTY);
    pane.subscribe(() => this.#follow());
    this.#follow();
  }

  /** Shows the ticket of a row, and selects it in the sheet. */
  async choose(row: number): Promise<void> {
    await this.#work("Making the ticket", (sheet) => this.#showRow(sheet, row));
  }

  /** The ticket of a mark as typed, or as the code on its printed ticket says it. */
  async find(text: string): Promise<void> {
    // a scanned code goes on with the member and more
    const [typed = "", of = ""] = text.split(";").map((part) => part.trim());
    await this.#work("Making the ticket", async (sheet) => {
      const all = await this.engine.marks(sheet);
      const named = all.filter(({ mark }) => markKey(mark) === markKey(typed));
      const held = named.filter(({ gone }) => gone === null);
      const ofMember = held.filter(({ member }) => of !== "" && markKey(member ?? "") === markKey(of));
      const alike = ofMember.length > 0 ? ofMember : held;
      const [found] = alike;
      if (found !== undefined && alike.length === 1) return this.#showRow(sheet, found.row);
      const gone = named.flatMap((each) => each.gone ?? []);
      const words =
        found !== undefined
          ? `mark ${typed} names ${alike.length} bars: choose the one in hand`
          : gone.length > 0
            ? `mark ${typed} is not to be made: ${gone.join(", ")}`
            : `no bar of this sheet has the mark ${typed}`;
      const { bar, book } = this.pane.state;
      this.#asked = bar?.row ?? null;
      this.#lostIn = `${book} ${sheet}`;
      this.set({ ticket: null, missing: [], learned: null, lost: { typed, words }, alike });
    });
  }

  /** The next mark of the schedule, or the one before. */
  async step(by: 1 | -1): Promise<void> {
    await this.#work("Making the ticket", async (sheet) => {
      const { marks } = this.state;
      const now = marks.findIndex(({ row }) => row === this.#row);
      const next = marks[Math.max(0, Math.min(marks.length - 1, now + by))];
      if (next !== undefined) await this.#showRow(sheet, next.row);
    });
  }

  /** Writes a trial into the log, fits the log again and shows what it changes for this bar. */
  async writeTrial({ machine, former, bentTo, released, heat }: TrialAnswers): Promise<void> {
    // of the bar in sight when it was sent
    const { ticket } = this.state;
    await this.#work("Writing the trial", async (sheet) => {
      const trial = ticket?.trial;
      if (ticket == null || trial == null) throw new Error("choose a mark that is bent first");
      const { size, grade } = trial;
      const date = new Date().toISOString().slice(0, 10);
      const entry = { machine, size, former, grade, heat, bentTo, released, date };
      const { shop, edits } = await this.engine.trialEdits(sheet, entry);
      await this.#write(shop, edits, `trial of ${size} on ${machine}`);
      const before = angleWords(ticket);
      await this.pane.checked(sheet);
      await this.#load(sheet, ticket.row);
      const now = this.state.ticket === null ? "no ticket" : angleWords(this.state.ticket);
      const change =
        now === before
          ? `it changes nothing, ${now}: look at what the check says of the log`
          : `before: ${before}; now: ${now}`;
      const learned = `Written on ${shop}; ${change}.`;
      this.set({ learned });
      this.pane.say(`trial of ${size} on ${machine}, written on ${shop}`);
    });
  }

  /** Answers one question on a machine. */
  async answer({ cell, isList, machine, question }: MissingFact, text: string): Promise<void> {
    await this.#work("Writing the answer", async (sheet) => {
      const number = Number(text.trim().replace(",", "."));
      if (text.trim() === "" || (!isList && !(number > 0)))
        throw new Error(
          `${question} Give a number above 0, or leave it open: what is not known is never a pass`,
        );
      const shop = this.pane.state.shopSheet;
      if (shop === null) throw new Error("the workbook has no Shop sheet");
      await this.#write(shop, [{ cell, to: isList ? text.trim() : number }], `${machine}: ${question}`);
      await this.pane.checked(sheet);
      await this.#load(sheet, this.state.ticket?.row ?? null);
    });
  }

  /** Ticks the mark in sight as made, or takes the tick back; ticks stand on a sheet of their own. */
  async tick(isMade: boolean): Promise<void> {
    const { ticket, marks } = this.state;
    const mark = marks.find(({ row }) => row === ticket?.row);
    await this.#work("Writing the tick", async (sheet) => {
      if (mark === undefined) return;
      const name = await this.#madeSheet();
      const rows = await this.#ticks(name);
      const known = rows.find((each) => each.sheet === sheet && isMark(each, mark));
      const place = known?.row ?? rows.reduce((last, { row }) => Math.max(last, row), 1) + 1;
      const date = isMade ? new Date().toISOString().slice(0, 10) : null;
      const values = [sheet, mark.member, mark.mark, date, isAlone(marks, mark) ? null : mark.what];
      const edits = values.map((to, column) => ({ cell: `${"ABCDE"[column]}${place}`, to }));
      await this.#write(name, edits, isMade ? `${mark.mark} is made` : `${mark.mark} is not made`);
      await this.#readTicks(sheet);
    });
  }

  async #write(sheet: string, edits: readonly CellEdit[], label: string): Promise<void> {
    const undo = await this.workbook.writeCells(sheet, edits);
    this.pane.fixes.keepStep({ sheet, label, cells: `${edits.length} cells of ${sheet}`, edits, undo });
  }

  async #madeSheet(): Promise<string> {
    const held = this.pane.state.sheets.find(({ name }) => name.toLowerCase() === MADE_SHEET.toLowerCase());
    if (held !== undefined) return held.name;
    const sheet = await this.workbook.activeSheet();
    const name = await this.workbook.addSheet(MADE_SHEET, {
      rows: [MADE_HEADS.map((value) => ({ value, bold: true }))],
      widths: [18, 24, 12, 14, 18],
      frozenRows: 1,
    });
    await this.pane.sheetsChanged();
    await this.workbook.goTo(sheet, "A1");
    return name;
  }

  async #ticks(name: string) {
    const sheet = await this.workbook.read(name);
    const text = (row: number, column: number): string => String(sheet.cell(row, column) ?? "");
    return Array.from({ length: sheet.rowCount }, (_, row) => ({
      row: sheet.top + row + 1,
      sheet: text(row, 0),
      member: text(row, 1),
      mark: text(row, 2),
      isMade: text(row, 3) !== "",
      what: text(row, 4),
    }));
  }

  async #readTicks(sheet: string): Promise<void> {
    const held = this.pane.state.sheets.find(({ name }) => name.toLowerCase() === MADE_SHEET.toLowerCase());
    const ticks = held === undefined ? [] : await this.#ticks(held.name);
    const made = ticks.filter((tick) => tick.sheet === sheet && tick.isMade);
    const rows = this.state.marks.filter((mark) => made.some((tick) => isMark(tick, mark)));
    this.set({ made: new Set(rows.map(({ row }) => row)) });
  }

  async #load(sheet: string, row: number | null): Promise<void> {
    const marks = (await this.engine.marks(sheet)).filter(({ gone }) => gone === null);
    const wanted = marks.find((mark) => mark.row === row) ?? marks[0];
    const ticket = wanted === undefined ? null : await this.engine.ticket(sheet, wanted.row);
    const machine = ticket?.trial?.machine ?? ticket?.trial?.machines[0] ?? null;
    const missing = machine === null ? [] : await this.engine.missingFacts(sheet, machine);
    // what a trial taught stays as long as its mark does
    const learned = ticket?.row === this.#row ? this.state.learned : null;
    this.#row = ticket?.row ?? null;
    const alike = marks.filter(
      ({ row, mark }) => row !== wanted?.row && markKey(mark) === markKey(wanted?.mark),
    );
    this.set({ sheet, marks, ticket, lost: null, alike, missing, learned });
    await this.#readTicks(sheet);
  }

  async #showRow(sheet: string, row: number): Promise<void> {
    await this.#load(sheet, row);
    const cell = this.state.marks.find((mark) => mark.row === row)?.cell;
    if (cell !== undefined) await this.workbook.goTo(sheet, cell);
  }

  #work(doing: string, act: (sheet: string) => Promise<void>): Promise<void> {
    this.#last = this.#last.then(() => this.#do(doing, act));
    return this.#last;
  }

  async #do(doing: string, act: (sheet: string) => Promise<void>): Promise<void> {
    const sheet = this.#view?.sheet ?? this.pane.state.sheet;
    if (sheet === null) return;
    this.set({ doing });
    try {
      await this.pane.checked(sheet);
      await act(sheet);
    } catch (problem) {
      this.pane.report(problem);
    } finally {
      this.set({ doing: null });
      const isDue = this.#isDue;
      this.#isDue = false;
      if (isDue) this.#show();
    }
  }

  /** While it is in sight the ticket is that of the row selected in the schedule. */
  #follow(): void {
    const { place, view, bar, book } = this.pane.state;
    const wasInSight = this.#isInSight;
    this.#isInSight = place === "bench";
    const isNewView = view !== null && view !== this.#view && view.rows.bars > 0;
    if (isNewView) this.#view = view;
    if (!this.#isInSight) return;
    const isOther = bar !== null && bar.row !== this.#row && bar.row !== this.#asked;
    // no other bar takes the place of a mark that was not found
    const isSameBook = this.#lostIn === `${book} ${view?.sheet}`;
    if (this.state.lost !== null && !isOther && isSameBook) return;
    if (wasInSight && !isNewView && !isOther) return;
    this.#asked = bar?.row ?? null;
    if (this.state.doing === null) this.#show();
    else this.#isDue = true;
  }

  #show(): void {
    void this.#work("Making the ticket", (sheet) => this.#load(sheet, this.#asked ?? this.#row));
  }
}

function isMark(
  tick: { readonly member: string; readonly mark: string; readonly what: string },
  { member, mark, what }: MarkView,
): boolean {
  return tick.mark === mark && tick.member === (member ?? "") && (tick.what === "" || tick.what === what);
}

/** True where no other bar of the member has the mark. */
const isAlone = (marks: readonly MarkView[], { row, member, mark }: MarkView): boolean =>
  !marks.some((each) => each.row !== row && each.member === member && each.mark === mark);

/** 3, 03 and " 03" are one mark to whoever types it. */
const markKey = (mark = ""): string =>
  mark
    .trim()
    .toLowerCase()
    .replace(/^0+(?=\d)/, "");

function angleWords({ bends }: TicketView): string {
  const said = bends.map(({ bendTo, released, wanted }) =>
    bendTo === null
      ? `${wanted}: a trial comes first`
      : `${wanted} by bending to ${bendTo}, which gives ${released}`,
  );
  return [...new Set(said)].join("; ");
}
