import { type Area, areaName, MAX_COLUMNS, MAX_ROWS, parseArea } from "./area";
import { CellStore } from "./cell-store";
import { Chart } from "./chart";
import { Collection, NULL_OBJECT } from "./collection";
import type { BookHome, SheetHome, StoredConditionalFormat } from "./homes";
import { HostError } from "./host-error";
import { Range, RangeAreas } from "./range";
import { Table } from "./table";

const CHANGED = 10;

const accessDenied = () => new HostError("AccessDenied", "You can't perform the requested operation.");

/** One sheet as the API shows it, and what the file keeps of it. */
export class Worksheet implements SheetHome {
  readonly Id: string;
  readonly cells: CellStore;
  conditional: StoredConditionalFormat[] = [];
  tables: Table[] = [];
  charts: Chart[] = [];
  frozenRows = 0;
  readonly PageLayout = new PageLayout();
  merges: Area[] = [];
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  private visibility: "Visible" | "Hidden" | "VeryHidden" = "Visible";
  isProtected = false;
  /** what a protected sheet still allows */
  allowFormatCells = false;

  constructor(
    readonly book: BookHome,
    private name: string,
  ) {
    this.Id = `{SHEET-${book.nextId()}}`;
    this.cells = new CellStore((takeBack) => book.journal(takeBack));
  }

  get Name(): string {
    return this.name;
  }

  set Name(name: string) {
    this.name = name;
    this.book.emitSheet("named", this);
  }

  get Visibility(): "Visible" | "Hidden" | "VeryHidden" {
    return this.visibility;
  }

  set Visibility(visibility: "Visible" | "Hidden" | "VeryHidden") {
    this.visibility = visibility;
    this.book.emitSheet("shown", this);
  }

  get Position(): number {
    return this.book.place(this);
  }

  get quotedName(): string {
    return /^[A-Za-z_]\w*$/.test(this.Name) ? this.Name : `'${this.Name.replaceAll("'", "''")}'`;
  }

  get Protection() {
    const sheet = this;
    return {
      get Protected() {
        return sheet.isProtected;
      },
      get Options() {
        return { allowFormatCells: sheet.allowFormatCells };
      },
      Protect(options: { allowFormatCells?: boolean } | null) {
        sheet.isProtected = true;
        sheet.allowFormatCells = options?.allowFormatCells ?? false;
      },
      Unprotect() {
        sheet.isProtected = false;
      },
    };
  }

  get Tables(): Collection<Table> {
    return new Collection(this.tables, (table) => [table.Name, table.Id], {
      Add: (address: Range | string, hasHeaders: boolean) => {
        const range = typeof address === "string" ? this.GetRange(address) : address;
        const table = new Table(this, range.area, hasHeaders);
        this.tables.push(table);
        return table;
      },
    });
  }

  get Charts(): Collection<Chart> {
    return new Collection(this.charts, (chart) => [chart.Name, chart.Id], {
      Add: (type: string, source: Range, seriesBy: string) => {
        const chart = new Chart(this, type, source.area, seriesBy);
        this.charts.push(chart);
        return chart;
      },
    });
  }

  get FreezePanes() {
    const sheet = this;
    return {
      FreezeRows(count: number) {
        sheet.frozenRows = count;
      },
    };
  }

  GetRange(address?: string | null): Range {
    return new Range(
      this,
      address ? parseArea(address) : { row: 0, column: 0, rows: MAX_ROWS, columns: MAX_COLUMNS },
    );
  }

  GetRanges(addresses?: string | null): RangeAreas {
    return addresses ? RangeAreas.parse(this, addresses) : new RangeAreas(this, [this.GetRange().area]);
  }

  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): Range {
    return new Range(this, { row, column, rows, columns });
  }

  GetCell(row: number, column: number): Range {
    return new Range(this, { row, column, rows: 1, columns: 1 });
  }

  GetUsedRange(valuesOnly?: boolean): Range {
    const used = this.cells.used(valuesOnly === true);
    return used === null ? this.GetCell(0, 0) : new Range(this, used);
  }

  GetUsedRangeOrNullObject(valuesOnly?: boolean): Range | typeof NULL_OBJECT {
    return this.cells.used(valuesOnly === true) === null ? NULL_OBJECT : this.GetUsedRange(valuesOnly);
  }

  Activate(): void {
    this.book.activate(this);
  }

  Calculate(markAllDirty: boolean): void {
    this.book.calculated.push({ sheet: this.Name, markAllDirty });
  }

  Delete(): void {
    this.book.remove(this);
  }

  write(row: number, column: number, value: unknown): void {
    this.cells.write(row, column, value, (formula) => this.book.calculate(formula, this.Name));
  }

  guardFormats(): void {
    if (this.isProtected && !this.allowFormatCells) throw accessDenied();
  }

  guardCells(area: Area): void {
    if (!this.isProtected) return;
    for (let row = area.row; row < area.row + area.rows; row++) {
      for (let column = area.column; column < area.column + area.columns; column++) {
        if (this.cells.at(row, column).locked) throw accessDenied();
      }
    }
  }

  changed(area: Area): void {
    this.book.emit(CHANGED, this.Id, {
      address: areaName(area),
      worksheetId: this.Id,
      changeType: "RangeEdited",
      source: "Local",
      triggerSource: this.book.changedBy,
    });
  }
}

/** What is set of a page; the host has a printer unless told otherwise. */
class PageLayout {
  hasPrinter = true;
  areas = "";
  titleRows = "";
  zoom: unknown = null;
  orientation = "Portrait";
  paperSize = "";

  get Orientation(): string {
    return this.orientation;
  }

  set Orientation(value: string) {
    this.needPrinter();
    this.orientation = value;
  }

  get Zoom(): unknown {
    return this.zoom;
  }

  set Zoom(value: unknown) {
    this.needPrinter();
    this.zoom = value;
  }

  get PaperSize(): string {
    return this.paperSize;
  }

  set PaperSize(value: string) {
    this.needPrinter();
    this.paperSize = value;
  }

  SetPrintArea(area: Range | RangeAreas): void {
    this.areas = area.Address;
  }

  SetPrintTitleRows(rows: string): void {
    this.titleRows = rows;
  }

  private needPrinter(): void {
    if (!this.hasPrinter) throw new HostError("GeneralException", "There is no printer.");
  }
}
