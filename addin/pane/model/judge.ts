import type { Sheet } from "../../../core/schedule/sheet";
import { hasShopName } from "../../../core/shop/has-shop-name";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { SheetSummary, WorkbookPort } from "../../workbook/workbook-port";
import type { AuditView } from "../engine/audit-view";
import type { Engine } from "../engine/engine";
import { GivenUp, type Patience } from "./patience";
import { SheetCopies } from "./sheet-copies";

/** ms of quiet after an edit before it is judged, so that a paste or a fill is judged once */
const QUIET = 150;

interface EditedRows {
  readonly firstRow: number;
  readonly lastRow: number;
}

/** A judgement that stands, with the sheet that it was made of. */
export interface Judged {
  readonly view: AuditView;
  readonly copy: Sheet;
  readonly before: AuditView | undefined;
  /** the rows alone that were edited, not the whole sheet */
  readonly isOfEdit: boolean;
}

/** What the judge asks of the pane, and tells it. */
export interface JudgeHost {
  asked(): {
    readonly sheet: string | null;
    readonly sheets: readonly SheetSummary[];
    readonly standard: string;
  };
  /** a step of a whole check */
  doing(words: string): void;
  stands(judged: Judged): Promise<void>;
  /** a sheet's judgement is no longer, or again, of the sheet as it is */
  stalenessChanged(sheet: string): void;
  failed(problem: unknown): void;
}

/** Keeps each sheet's judgement true to the sheet: no edit is forgotten, whenever it comes. */
export class Judge {
  readonly #views = new Map<string, AuditView>();
  /** sheets whose judgement holds no longer as a whole, such as under another standard */
  readonly #outdated = new Set<string>();
  /** outdated sheets that could not be judged anew without being asked to */
  readonly #failed = new Set<string>();
  /** rows edited since the sheet was last read to be judged */
  readonly #edits = new Map<string, EditedRows>();
  /** sheets that are being judged */
  readonly #judging = new Set<string>();
  /** counts what can alter any judgement: the standard, the settings, other sheets */
  #basis = 0;
  readonly #copies: SheetCopies;
  #quiet: ReturnType<typeof setTimeout> | undefined;
  /** one judgement at a time */
  #turn: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly engine: Engine,
    private readonly patience: Patience,
    private readonly host: JudgeHost,
  ) {
    this.#copies = new SheetCopies(workbook, (answer) => patience.wait(answer));
  }

  view(sheet: string): AuditView | undefined {
    return this.#views.get(sheet);
  }

  /** An edit or more is not judged yet, or a whole check is due. */
  isStale(sheet: string): boolean {
    return this.#outdated.has(sheet) || this.#edits.has(sheet);
  }

  /** Only a whole check that the user asks for can bring the judgement up to date. */
  needsCheck(sheet: string): boolean {
    return this.#failed.has(sheet);
  }

  /** Judges a whole sheet, in front of all that waits; what was under way is given up. */
  async check(sheet: string): Promise<void> {
    this.patience.giveUp(new GivenUp());
    this.#turn = Promise.resolve();
    await this.#inTurn(() => this.#audit(sheet));
  }

  /**
   * Brings a sheet's judgement up to date and gives it.
   *
   * @param isReadAnew also what no edit was told of is looked at
   */
  async upToDate(sheet: string, isReadAnew = false): Promise<AuditView | undefined> {
    clearTimeout(this.#quiet);
    await this.#inTurn(() => (isReadAnew ? this.#audit(sheet, true) : this.#bringUp(sheet)));
    this.#judgeSoon();
    return this.#views.get(sheet);
  }

  /** Rows of a sheet were edited, rows from 0. */
  edited({ sheet, firstRow, lastRow }: EditedRows & { readonly sheet: string }): void {
    this.#copies.edited(sheet);
    this.#outdate((known) => known !== sheet && this.#dependsOn(known, sheet));
    if (!this.#views.has(sheet) && !this.#judging.has(sheet)) return;
    // what kept it from being judged may be over
    this.#failed.delete(sheet);
    const known = this.#edits.get(sheet) ?? { firstRow, lastRow };
    this.#edits.set(sheet, {
      firstRow: Math.min(known.firstRow, firstRow),
      lastRow: Math.max(known.lastRow, lastRow),
    });
    this.host.stalenessChanged(sheet);
    this.#judgeSoon();
  }

  /** Something that every judgement rests on is another now. */
  basisChanged(): void {
    this.#copies.forget();
    this.#outdate(() => true);
  }

  /** What was under way was ended: nothing is judged anew without being asked to. */
  stopped(): void {
    this.#turn = Promise.resolve();
    clearTimeout(this.#quiet);
    this.#basis += 1;
    for (const known of this.#views.keys()) {
      this.#outdated.add(known);
      this.#failed.add(known);
      this.host.stalenessChanged(known);
    }
  }

  /** A sheet is gone, or has another name under which it is not judged yet. */
  gone(sheet: string): void {
    this.#views.delete(sheet);
    this.#edits.delete(sheet);
    this.#outdated.delete(sheet);
    this.#failed.delete(sheet);
  }

  /** Nothing that is known or under way holds any longer. */
  clear(): void {
    this.patience.giveUp(new GivenUp());
    this.#turn = Promise.resolve();
    clearTimeout(this.#quiet);
    for (const sheet of [...this.#views.keys()]) this.gone(sheet);
    this.#edits.clear();
    this.#copies.forget();
    this.#basis += 1;
    // it answers in the order that it is asked, so nobody waits for it
    this.engine.forget().catch((problem) => this.host.failed(problem));
  }

  /** What the shop's machines and other lists of the workbook say can alter the judgement of any row. */
  #dependsOn(known: string, sheet: string): boolean {
    return hasShopName(sheet) || this.#views.get(known)?.otherSheets.includes(sheet) === true;
  }

  #outdate(concerns: (sheet: string) => boolean): void {
    this.#basis += 1;
    for (const known of this.#views.keys()) {
      if (!concerns(known)) continue;
      this.#outdated.add(known);
      this.host.stalenessChanged(known);
    }
    this.#judgeSoon();
  }

  #judgeSoon(): void {
    clearTimeout(this.#quiet);
    if (this.#due().length > 0) this.#quiet = setTimeout(() => void this.#judgeDue(), QUIET);
  }

  /** Edited sheets, and the one in sight where it is outdated; others are judged when they are looked at. */
  #due(): readonly string[] {
    const { sheet } = this.host.asked();
    const isDue = (known: string): boolean =>
      !this.#failed.has(known) && (this.#outdated.has(known) ? known === sheet : this.#edits.has(known));
    return [...this.#views.keys()].filter(isDue);
  }

  async #judgeDue(): Promise<void> {
    for (const sheet of this.#due()) {
      try {
        await this.#inTurn(() => this.#bringUp(sheet));
      } catch (problem) {
        this.host.failed(problem);
      }
    }
  }

  async #bringUp(sheet: string): Promise<void> {
    if (!this.#views.has(sheet) || this.#outdated.has(sheet)) await this.#audit(sheet, true);
    else if (this.#edits.has(sheet)) await this.#recheck(sheet);
  }

  async #audit(sheet: string, isQuiet = false): Promise<void> {
    const basis = this.#basis;
    const { patience, workbook } = this;
    const before = this.#views.get(sheet);
    await this.#judged(sheet, async () => {
      const copy = await patience.wait(workbook.read(sheet));
      if (!isQuiet) this.host.doing(`Checking ${copy.rowCount} rows`);
      const settings = await patience.wait(workbook.setting(SETTING_NAMES.audit));
      const { sheets, standard } = this.host.asked();
      const shopSheet = sheets.find(({ name }) => hasShopName(name) && name !== sheet);
      const shop = shopSheet === undefined ? null : await patience.wait(workbook.read(shopSheet.name));
      const otherSheets = await this.#copies.otherSheets(sheet, sheets);
      const view = await patience.wait(
        this.engine.check({ sheet: copy, shop, otherSheets, standard, settings }),
      );
      if (basis === this.#basis) this.#outdated.delete(sheet);
      else this.#outdated.add(sheet);
      return { view, copy, before, isOfEdit: false };
    });
  }

  async #recheck(sheet: string): Promise<void> {
    const rows = this.#edits.get(sheet);
    const before = this.#views.get(sheet);
    if (rows === undefined || before === undefined) return;
    await this.#judged(sheet, async () => {
      const copy = await this.patience.wait(this.workbook.read(sheet));
      const view = await this.patience.wait(this.engine.recheck({ sheet: copy, ...rows }));
      return { view, copy, before, isOfEdit: true };
    });
  }

  /** Edits that come while a sheet is judged stay, and are judged next. */
  async #judged(sheet: string, act: () => Promise<Judged>): Promise<void> {
    this.#edits.delete(sheet);
    this.#judging.add(sheet);
    try {
      const judged = await act();
      // the sheet may have gone meanwhile
      if (judged.isOfEdit && !this.#views.has(sheet)) return;
      this.#views.set(sheet, judged.view);
      this.#failed.delete(sheet);
      await this.host.stands(judged);
    } catch (problem) {
      if (this.#views.has(sheet)) {
        this.#outdated.add(sheet);
        this.#failed.add(sheet);
        this.host.stalenessChanged(sheet);
      }
      throw problem;
    } finally {
      this.#judging.delete(sheet);
      if (!this.#views.has(sheet)) this.#edits.delete(sheet);
      this.#judgeSoon();
    }
  }

  #inTurn(act: () => Promise<void>): Promise<void> {
    const done = this.#turn.then(act);
    this.#turn = done.catch(() => {});
    return done;
  }
}
