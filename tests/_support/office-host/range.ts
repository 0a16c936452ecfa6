import { type Area, areaName, checkedArea, MAX_COLUMNS, overlaps, parseArea } from "./area";
import { type StoredCell, shownText } from "./cell-store";
import { Collection, NULL_OBJECT } from "./collection";
import { conditionalFormats } from "./conditional-format";
import type { SheetHome } from "./homes";
import { HostError, invalidArgument, notEmulated } from "./host-error";

/** Excel answers null instead of the cells of a larger range. */
const LARGEST_READ = 5_000_000;

const ERROR_VALUES = /^#(REF!|VALUE!|N\/A|DIV\/0!|NAME\?|NULL!|NUM!|SPILL!|CALC!|BUSY!)$/;

const wrongSize = () =>
  new HostError(
    "InvalidArgument",
    "The number of rows or columns in the input array doesn't match the size or dimensions of the range.",
  );

type Rows<T> = T[][] | null;

/** A block of cells as the API shows it. */
export class Range {
  readonly area: Area;
  private referenceId: string | undefined;

  constructor(
    readonly sheet: SheetHome,
    area: Area,
  ) {
    this.area = checkedArea(area);
  }

  get _ReferenceId(): string | undefined {
    return this.referenceId;
  }

  get Address(): string {
    return `${this.sheet.quotedName}!${areaName(this.area)}`;
  }

  get RowIndex(): number {
    return this.area.row;
  }

  get ColumnIndex(): number {
    return this.area.column;
  }

  get RowCount(): number {
    return this.area.rows;
  }

  get ColumnCount(): number {
    return this.area.columns;
  }

  get CellCount(): number {
    return this.area.rows * this.area.columns;
  }

  get Worksheet(): SheetHome {
    return this.sheet;
  }

  get Values(): Rows<unknown> {
    return this.each((cell) => cell.value);
  }

  set Values(values: unknown) {
    this.put(values, (row, column, value) => this.sheet.write(row, column, value));
  }

  get Formulas(): Rows<unknown> {
    return this.each((cell) => cell.formula || cell.value);
  }

  set Formulas(formulas: unknown) {
    this.Values = formulas;
  }

  get Text(): Rows<string> {
    return this.each(shownText);
  }

  get ValueTypes(): Rows<string> {
    return this.each(({ value }) => {
      if (value === "") return "Empty";
      if (typeof value === "number") return "Double";
      if (typeof value === "boolean") return "Boolean";
      return ERROR_VALUES.test(value) ? "Error" : "String";
    });
  }

  get NumberFormat(): Rows<string> {
    return this.each((cell) => cell.format);
  }

  set NumberFormat(formats: unknown) {
    this.put(formats, (row, column, format) =>
      this.sheet.cells.change(row, column, { format: String(format) }),
    );
  }

  get RowHidden(): boolean | null {
    const rows = Array.from({ length: this.area.rows }, (_, index) => this.area.row + index);
    const hidden = rows.filter((row) => this.sheet.hiddenRows.has(row)).length;
    return hidden === 0 ? false : hidden === rows.length ? true : null;
  }

  set RowHidden(hide: boolean) {
    for (let row = this.area.row; row < this.area.row + this.area.rows; row++) {
      if (hide) this.sheet.hiddenRows.add(row);
      else this.sheet.hiddenRows.delete(row);
    }
  }

  get Format() {
    return new RangeFormat(this);
  }

  get ConditionalFormats() {
    return conditionalFormats(this.sheet, [this.area]);
  }

  GetRowProperties(options: {
    rowHidden?: boolean;
    format?: { font?: { strikethrough?: boolean } };
  }): object[] {
    return Array.from({ length: this.area.rows }, (_, index) => {
      const row = this.area.row + index;
      const cells = Array.from({ length: this.area.columns }, (_, column) =>
        this.sheet.cells.at(row, this.area.column + column),
      );
      const struck = new Set(cells.map((cell) => cell.strikethrough));
      return {
        ...(options.rowHidden ? { rowHidden: this.sheet.hiddenRows.has(row) } : {}),
        ...(options.format?.font?.strikethrough
          ? { format: { font: { strikethrough: struck.size > 1 ? null : struck.has(true) } } }
          : {}),
      };
    });
  }

  GetColumnProperties(options: { columnHidden?: boolean }): object[] {
    if (!options.columnHidden) throw notEmulated("getColumnProperties without columnHidden");
    return Array.from({ length: this.area.columns }, (_, index) => ({
      columnHidden: this.sheet.hiddenColumns.has(this.area.column + index),
    }));
  }

  GetCellProperties(options: { format?: { font?: { strikethrough?: boolean } } }): Rows<object> {
    if (!options.format?.font?.strikethrough) throw notEmulated("getCellProperties without strikethrough");
    return this.each((cell) => ({ format: { font: { strikethrough: cell.strikethrough } } }));
  }

  GetMergedAreasOrNullObject(): RangeAreas | typeof NULL_OBJECT {
    const merged = this.sheet.merges.filter((merge) => overlaps(merge, this.area));
    return merged.length === 0 ? NULL_OBJECT : new RangeAreas(this.sheet, merged);
  }

  Merge(): void {
    this.sheet.merges.push(this.area);
  }

  GetCell(row: number, column: number): Range {
    return this.part(this.area.row + row, this.area.column + column, 1, 1);
  }

  GetRow(index: number): Range {
    return this.part(this.area.row + index, this.area.column, 1, this.area.columns);
  }

  GetColumn(index: number): Range {
    return this.part(this.area.row, this.area.column + index, this.area.rows, 1);
  }

  GetResizedRange(rows: number, columns: number): Range {
    return this.part(this.area.row, this.area.column, this.area.rows + rows, this.area.columns + columns);
  }

  GetOffsetRange(rows: number, columns: number): Range {
    return this.part(this.area.row + rows, this.area.column + columns, this.area.rows, this.area.columns);
  }

  GetEntireRow(): Range {
    return this.part(this.area.row, 0, this.area.rows, MAX_COLUMNS);
  }

  GetBoundingRect(other: Range | string): Range {
    const with_ = typeof other === "string" ? parseArea(other) : other.area;
    const row = Math.min(this.area.row, with_.row);
    const column = Math.min(this.area.column, with_.column);
    const bottom = Math.max(this.area.row + this.area.rows, with_.row + with_.rows);
    const right = Math.max(this.area.column + this.area.columns, with_.column + with_.columns);
    return this.part(row, column, bottom - row, right - column);
  }

  Clear(): void {
    this.sheet.guardCells(this.area);
    this.sheet.cells.clear(this.area);
    this.sheet.changed(this.area);
  }

  Select(): void {
    this.sheet.book.select(this);
  }

  _ValidateArraySize(rows: number, columns: number): void {
    if (rows !== this.area.rows || columns !== this.area.columns) throw wrongSize();
  }

  _KeepReference(): void {
    this.referenceId ??= `range-${this.sheet.book.nextId()}`;
  }

  each<T>(read: (cell: StoredCell) => T): Rows<T> {
    if (this.area.rows * this.area.columns > LARGEST_READ) return null;
    return Array.from({ length: this.area.rows }, (_, row) =>
      Array.from({ length: this.area.columns }, (_, column) =>
        read(this.sheet.cells.at(this.area.row + row, this.area.column + column)),
      ),
    );
  }

  put(values: unknown, write: (row: number, column: number, value: unknown) => void): void {
    this.sheet.guardCells(this.area);
    const { row, column, rows, columns } = this.area;
    const block = Array.isArray(values) ? (values as unknown[][]) : null;
    if (block !== null && (block.length !== rows || block.some((line) => line.length !== columns))) {
      throw wrongSize();
    }
    for (let r = 0; r < rows; r++) {
      for (let c = 0; c < columns; c++) {
        const value = block === null ? values : block[r]?.[c];
        if (value !== null) write(row + r, column + c, value);
      }
    }
    this.sheet.changed(this.area);
  }

  private part(row: number, column: number, rows: number, columns: number): Range {
    return new Range(this.sheet, { row, column, rows, columns });
  }
}

/** Excel refuses longer lists of addresses. */
const LONGEST_ADDRESS = 8192;

/** Several blocks of one sheet. */
export class RangeAreas {
  private referenceId: string | undefined;

  constructor(
    readonly sheet: SheetHome,
    readonly list: readonly Area[],
  ) {}

  static parse(sheet: SheetHome, addresses: string): RangeAreas {
    if (addresses.length > LONGEST_ADDRESS) throw invalidArgument();
    return new RangeAreas(sheet, addresses.split(/[,;]/).map(parseArea));
  }

  get Address(): string {
    return this.list.map((area) => `${this.sheet.quotedName}!${areaName(area)}`).join(",");
  }

  get _ReferenceId(): string | undefined {
    return this.referenceId;
  }

  _KeepReference(): void {
    this.referenceId ??= `areas-${this.sheet.book.nextId()}`;
  }

  get AreaCount(): number {
    return this.list.length;
  }

  get Areas(): Collection<Range> {
    const ranges = this.list.map((area) => new Range(this.sheet, area));
    return new Collection(ranges, (range) => [range.Address]);
  }

  get ConditionalFormats() {
    return conditionalFormats(this.sheet, this.list);
  }
}

class RangeFormat {
  readonly Fill: { Color: string | null; Clear(): void };
  readonly Font: { Bold: boolean | null; Strikethrough: boolean | null; Color: string; Underline: string };
  /** kept nowhere: nothing reads them back */
  readonly Borders = { Indexer: () => ({ Style: "", Color: "" }) };
  WrapText: boolean | null = null;
  VerticalAlignment = "";
  HorizontalAlignment = "";
  readonly Protection: { Locked: boolean | null };
  /** points; kept nowhere, since nothing reads it back */
  ColumnWidth: number | null = null;
  RowHeight: number | null = null;

  constructor(range: Range) {
    const same = <T>(read: (cell: StoredCell) => T): T | null => {
      const found = new Set((range.each(read) ?? []).flat());
      return found.size === 1 ? ([...found][0] as T) : null;
    };
    const set = (change: Partial<StoredCell>) =>
      range.put(true, (row, column) => range.sheet.cells.change(row, column, change));
    this.Fill = {
      get Color() {
        return same((cell) => cell.fill || "#FFFFFF");
      },
      set Color(fill: string | null) {
        set({ fill: fill ?? "" });
      },
      Clear: () => set({ fill: "" }),
    };
    this.Font = {
      Color: "",
      Underline: "",
      get Bold() {
        return same((cell) => cell.bold);
      },
      set Bold(bold: boolean | null) {
        set({ bold: bold === true });
      },
      get Strikethrough() {
        return same((cell) => cell.strikethrough);
      },
      set Strikethrough(strikethrough: boolean | null) {
        set({ strikethrough: strikethrough === true });
      },
    };
    this.Protection = {
      get Locked() {
        return same((cell) => cell.locked);
      },
      set Locked(locked: boolean | null) {
        set({ locked: locked === true });
      },
    };
  }

  AutofitRows(): void {}
}
