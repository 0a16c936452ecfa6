import { type Area, areaName } from "./area";
import type { StoredCell } from "./cell-store";
import { Collection } from "./collection";
import type { BookHome, SheetHome, StoredConditionalFormat } from "./homes";
import { HostError, invalidArgument } from "./host-error";
import { Range } from "./range";
import type { Table } from "./table";
import type { CellValue } from "./typed-text";
import { Worksheet } from "./worksheet";

const SELECTION_CHANGED = 14;
/** the library's numbers of what becomes of a sheet */
export const SHEET_EVENT = {
  added: 13,
  deleted: 15,
  activated: 11,
  named: 25,
  shown: 26,
  moved: 27,
} as const;
const WORKBOOK_TARGET = "Workbook";

export interface HostEvent {
  readonly type: number;
  readonly target: string;
  readonly payload: object;
}

/** What a saved file holds; a second host can be opened on it. */
export interface SavedWorkbook {
  readonly names: readonly { readonly name: string; readonly formula: string; readonly visible: boolean }[];
  readonly settings: readonly (readonly [string, unknown])[];
  readonly sheets: readonly {
    readonly name: string;
    readonly cells: readonly [number, StoredCell][];
    readonly conditional: readonly StoredConditionalFormat[];
    readonly hiddenRows: readonly number[];
    readonly isProtected: boolean;
  }[];
}

interface StoredName {
  readonly name: string;
  formula: string;
  visible: boolean;
}

/** The workbook of the fake host: what the API shows, what the file keeps, and the undo list. */
export class Workbook implements BookHome {
  readonly Name = "Book1.xlsx";
  readonly sheets: Worksheet[] = [];
  active: Worksheet;
  changedBy: "ThisLocalAddin" | "Unknown" = "Unknown";
  calculationMode = "Automatic";
  /** dates count from 1904 */
  from1904 = false;
  /** how often a batch asked for it */
  readonly suspended = { calculation: 0, screen: 0 };
  readonly calculated: { readonly sheet: string; readonly markAllDirty: boolean }[] = [];
  /** the tests' own calculation; without one a formula is refused loudly */
  calculator: ((formula: string, sheet: string) => CellValue) | null = null;
  readonly undoList: (() => void)[][] = [];
  readonly registered = { changed: 0, selection: 0 };
  readonly hearsSheets = new Set<keyof typeof SHEET_EVENT>();
  /** objects that the library keeps between requests */
  readonly references = new Map<string, object>();
  private readonly names: StoredName[] = [];
  private readonly settings = new Map<string, unknown>();
  private selection: Range;
  private step: (() => void)[] = [];
  private identity = 1;

  constructor(private readonly tell: (event: HostEvent) => void) {
    this.active = new Worksheet(this, "Sheet1");
    this.sheets.push(this.active);
    this.selection = this.active.GetRange("A1");
  }

  nextId(): number {
    return this.identity++;
  }

  /** Keeps how to take the change back; each request that changes anything is one undo step. */
  journal(takeBack: () => void): void {
    this.step.push(takeBack);
  }

  closeUndoStep(): void {
    if (this.step.length > 0) this.undoList.push(this.step);
    this.step = [];
  }

  /** What Ctrl+Z does. */
  undo(): void {
    this.closeUndoStep();
    for (const takeBack of (this.undoList.pop() ?? []).reverse()) takeBack();
    this.step = [];
  }

  /** Tells what became of a sheet, where the library has asked to hear it. */
  emitSheet(kind: keyof typeof SHEET_EVENT, sheet: SheetHome): void {
    if (!this.hearsSheets.has(kind)) return;
    const payload = { worksheetId: sheet.Id, source: "Local" };
    this.tell({ type: SHEET_EVENT[kind], target: WORKBOOK_TARGET, payload });
  }

  emit(type: number, target: string, payload: object): void {
    if (type !== SELECTION_CHANGED && this.registered.changed === 0) return;
    this.tell({ type, target, payload });
    this.tell({ type, target: WORKBOOK_TARGET, payload });
  }

  select(place: { readonly sheet: SheetHome; readonly area: Area }): void {
    this.activate(place.sheet);
    this.selection = new Range(place.sheet, place.area);
    if (this.registered.selection === 0) return;
    const payload = { address: areaName(place.area), worksheetId: place.sheet.Id };
    this.emit(SELECTION_CHANGED, place.sheet.Id, payload);
  }

  calculate(formula: string, sheet: string): CellValue {
    const text = /^="((?:[^"]|"")*)"$/.exec(formula);
    if (text !== null) return (text[1] ?? "").replaceAll('""', '"');
    if (this.calculator === null) {
      throw new HostError("ApiNotFound", `fake host: no calculation of ${formula}; give it a calculator`);
    }
    return this.calculator(formula, sheet);
  }

  place(sheet: SheetHome): number {
    return this.sheets.indexOf(sheet as Worksheet);
  }

  activate(sheet: SheetHome): void {
    const before = this.active;
    this.active = this.sheets[this.place(sheet)] ?? this.active;
    if (this.active !== before) this.emitSheet("activated", this.active);
  }

  /** Puts a sheet in another place among the tabs. */
  move(sheet: SheetHome, place: number): void {
    const [moved] = this.sheets.splice(this.place(sheet), 1);
    this.sheets.splice(place, 0, moved as Worksheet);
    this.emitSheet("moved", sheet);
  }

  remove(sheet: SheetHome): void {
    if (this.sheets.length === 1) throw invalidArgument();
    this.sheets.splice(this.place(sheet), 1);
    if (this.active === sheet) this.active = this.sheets[0] as Worksheet;
    this.emitSheet("deleted", sheet);
  }

  get Workbook(): Workbook {
    return this;
  }

  get Application() {
    const book = this;
    return {
      get CalculationMode() {
        return book.calculationMode;
      },
      SuspendApiCalculationUntilNextSync() {
        book.suspended.calculation++;
      },
      SuspendScreenUpdatingUntilNextSync() {
        book.suspended.screen++;
      },
    };
  }

  get Worksheets(): Collection<Worksheet> {
    return new Collection(this.sheets, (sheet) => [sheet.Name, sheet.Id], {
      Add: (name?: string) => this.addSheet(name ?? `Sheet${this.sheets.length + 1}`),
      GetActiveWorksheet: () => this.active,
      _GetSheetById: (id: string) => this.Worksheets.GetItem(id),
      ...this.sheetListeners(),
      _RegisterDataChangedEvent: () => void this.registered.changed++,
      _UnregisterDataChangedEvent: () => void this.registered.changed--,
      _RegisterSelectionChangedEvent: () => void this.registered.selection++,
      _UnregisterSelectionChangedEvent: () => void this.registered.selection--,
    });
  }

  private sheetListeners(): Record<string, () => void> {
    const names = {
      added: "AddedEvent",
      deleted: "DeletedEvent",
      activated: "ActivatedEvent",
      named: "EventNameChanged",
      shown: "EventVisibilityChanged",
      moved: "EventMoved",
    } as const;
    const listeners: Record<string, () => void> = {};
    for (const kind of Object.keys(SHEET_EVENT) as (keyof typeof SHEET_EVENT)[]) {
      listeners[`_Register${names[kind]}`] = () => void this.hearsSheets.add(kind);
      listeners[`_Unregister${names[kind]}`] = () => void this.hearsSheets.delete(kind);
    }
    return listeners;
  }

  addSheet(name: string): Worksheet {
    if (this.sheets.some((sheet) => sheet.Name.toUpperCase() === name.toUpperCase())) {
      throw new HostError("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
    }
    const sheet = new Worksheet(this, name);
    this.sheets.push(sheet);
    this.emitSheet("added", sheet);
    return sheet;
  }

  /** Worksheet functions that an add-in may ask for. */
  get Functions() {
    const first = this.from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
    return {
      Date: (year: number, month: number, day: number) => ({
        Value: Math.round((Date.UTC(year, month - 1, day) - first) / 86_400_000),
        Error: "",
      }),
    };
  }

  get Tables(): Collection<Table> {
    return new Collection(
      this.sheets.flatMap((sheet) => sheet.tables),
      (table) => [table.Name, table.Id],
    );
  }

  get Names(): Collection<NamedItem> {
    const items = this.names.map((stored) => new NamedItem(this, this.names, stored));
    return new Collection(items, (item) => [item.Name], {
      Add: (name: string, reference: Range | string) => {
        if (!/^[A-Za-z_\\][\w.\\]*$/.test(name)) throw invalidArgument();
        const formula = reference instanceof Range ? `=${reference.Address}` : String(reference);
        checkFormula(formula);
        const stored = { name, formula, visible: true };
        this.names.push(stored);
        this.journal(() => this.names.splice(this.names.indexOf(stored), 1));
        return new NamedItem(this, this.names, stored);
      },
    });
  }

  get Settings(): Collection<ReturnType<typeof settingItem>> {
    const items = [...this.settings.keys()].map((key) => settingItem(this.settings, key));
    return new Collection(items, (item) => [item.Key], {
      Add: (key: string, value: unknown) => {
        this.settings.set(key, value);
        return settingItem(this.settings, key);
      },
    });
  }

  _RemoveReference(id: string): void {
    this.references.delete(id);
  }

  GetSelectedRange(): Range {
    return this.selection;
  }

  save(): SavedWorkbook {
    return structuredClone({
      names: this.names,
      settings: [...this.settings.entries()],
      sheets: this.sheets.map((sheet) => ({
        name: sheet.Name,
        cells: sheet.cells.entries(),
        conditional: sheet.conditional,
        hiddenRows: [...sheet.hiddenRows],
        isProtected: sheet.isProtected,
      })),
    });
  }

  open(saved: SavedWorkbook): void {
    const file = structuredClone(saved);
    this.sheets.length = 0;
    this.names.push(...file.names);
    for (const [key, value] of file.settings) this.settings.set(key, value);
    for (const kept of file.sheets) {
      const sheet = this.addSheet(kept.name);
      sheet.cells.restore(kept.cells);
      sheet.conditional = [...kept.conditional];
      for (const row of kept.hiddenRows) sheet.hiddenRows.add(row);
      sheet.isProtected = kept.isProtected;
    }
    this.active = this.sheets[0] as Worksheet;
    this.selection = this.active.GetRange("A1");
  }
}

class NamedItem {
  readonly Type = "String";
  readonly Scope = "Workbook";

  constructor(
    private readonly book: Workbook,
    private readonly list: StoredName[],
    private readonly stored: StoredName,
  ) {}

  get Name(): string {
    return this.stored.name;
  }

  get Formula(): string {
    return this.stored.formula;
  }

  set Formula(formula: string) {
    checkFormula(formula);
    const before = this.stored.formula;
    this.book.journal(() => {
      this.stored.formula = before;
    });
    this.stored.formula = formula;
  }

  get Visible(): boolean {
    return this.stored.visible;
  }

  set Visible(visible: boolean) {
    this.stored.visible = visible;
  }

  Delete(): void {
    const place = this.list.indexOf(this.stored);
    this.book.journal(() => this.list.splice(place, 0, this.stored));
    this.list.splice(place, 1);
  }
}

/** Excel takes a text of at most 255 characters between quotes, and 8,192 characters in all. */
function checkFormula(formula: string): void {
  const texts = formula.match(/"(?:[^"]|"")*"/g) ?? [];
  const tooLong = texts.some((text) => text.slice(1, -1).replaceAll('""', '"').length > 255);
  if (!formula.startsWith("=") || formula.length > 8192 || tooLong) throw invalidArgument();
}

function settingItem(settings: Map<string, unknown>, key: string) {
  return {
    Key: key,
    get Value() {
      return settings.get(key);
    },
    Delete: () => void settings.delete(key),
  };
}
