import { hasOwnName } from "../../../core/own/own-sheet";
import type { Sheet } from "../../../core/schedule/sheet";
import { hasShopName } from "../../../core/shop/has-shop-name";
import type { SheetSummary, WorkbookPort } from "../../workbook/workbook-port";
import { NO_OTHER_SHEETS, type OtherSheets } from "../engine/other-sheets";

/** other sheets that are read beside the one that is checked, each a request of its own */
const MOST_OTHERS = 12;

/** Sheets read for what stands on several, each as it was when last read and no longer than it is so. */
export class SheetCopies {
  readonly #copies = new Map<string, Sheet>();
  /** how often each sheet was edited: a copy taken over an edit is not kept */
  readonly #edits = new Map<string, number>();

  constructor(
    private readonly workbook: WorkbookPort,
    private readonly wait: <Answer>(answer: Promise<Answer>) => Promise<Answer>,
  ) {}

  edited(sheet: string): void {
    this.#edits.set(sheet, this.#editsOf(sheet) + 1);
    this.#copies.delete(sheet);
  }

  forget(): void {
    this.#copies.clear();
  }

  /** The sheets that stand before and behind one; a workbook of very many is not read through. */
  async otherSheets(sheet: string, listed: readonly SheetSummary[]): Promise<OtherSheets> {
    const names = listed.map(({ name }) => name);
    const others = names.filter((name) => name !== sheet && !hasShopName(name));
    // what its owner looked up is in force however many sheets there are
    const wanted = others.length > MOST_OTHERS ? others.filter(hasOwnName) : others;
    if (wanted.length === 0) return NO_OTHER_SHEETS;
    const copies = new Map<string, Sheet>();
    for (const name of wanted) copies.set(name, await this.#copy(name));
    const place = names.indexOf(sheet);
    const among = (list: readonly string[]): Sheet[] => list.flatMap((name) => copies.get(name) ?? []);
    return { before: among(names.slice(0, place)), behind: among(names.slice(place + 1)) };
  }

  async #copy(name: string): Promise<Sheet> {
    const known = this.#copies.get(name);
    if (known !== undefined) return known;
    const edits = this.#editsOf(name);
    const copy = await this.wait(this.workbook.read(name));
    if (this.#editsOf(name) === edits) this.#copies.set(name, copy);
    return copy;
  }

  #editsOf(sheet: string): number {
    return this.#edits.get(sheet) ?? 0;
  }
}
