import { addressAt } from "../../../core/schedule/cell-address";
import type { LookChange } from "../../workbook/look-change";
import type { CellWrite, FlagBand, LineChange, SheetChanges } from "../../workbook/sheet-changes";
import { type ScannedCell, type ScannedRow, scanRows } from "../read/scan-cells";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { cellXml } from "../xml/cell-xml";
import { attribute, findElement, withAttribute } from "../xml/xml-text";
import { BrokenSharedFormulas } from "./broken-shared-formulas";
import type { StylePatch } from "./style-patch";

interface RowPlan {
  flag: FlagBand | null;
  writes: ReadonlyMap<number, CellWrite>;
  looks: ReadonlyMap<number, LookChange>;
  line: LineChange | null;
}

/** Rewrites the rows of one sheet as they pass by; rows that nothing is asked of come out as they went in. */
export class RowPatch {
  /** A cell's formula was replaced: the calculation chain no longer holds. */
  removedFormula = false;
  wroteValues = false;
  usesArrays = false;
  private readonly plans = new Map<number, RowPlan>();
  private readonly order: number[];
  private readonly stale: ReadonlySet<string>;
  private readonly broken = new BrokenSharedFormulas();
  private next = 0;
  private inserted = false;
  /** the last row that was met */
  last = -1;

  constructor(
    private readonly changes: SheetChanges,
    private readonly styles: StylePatch,
    /** style of a column that has no cell in a row */
    private readonly columnStyle: (column: number) => number,
    /** index of the cell metadata that marks a dynamic array */
    private readonly arrayMark: () => number,
  ) {
    for (const flag of changes.flags ?? []) this.plan(flag.row).flag ??= flag;
    for (const write of changes.writes ?? []) {
      const plan = this.plan(write.row);
      plan.writes = withOne(plan.writes, write.column, write);
    }
    for (const { row, column, change } of changes.looks ?? []) {
      const plan = this.plan(row);
      plan.looks = withOne(plan.looks, column, change);
    }
    for (const [row, line] of changes.rows ?? []) this.plan(row).line = line;
    this.order = [...this.plans.keys()].sort((a, b) => a - b);
    this.stale = new Set((changes.stale ?? []).map(({ row, column }) => `${row} ${column}`));
    this.wroteValues = (changes.writes ?? []).length > 0;
  }

  /** No row can be passed over unread. */
  get looksAtEveryCell(): boolean {
    return this.changes.clear === true || this.wroteValues || this.stale.size > 0;
  }

  /** True where a row, or one that is to stand before it, is changed. */
  wants(row: number, isNumbered: boolean): boolean {
    const next = this.order[this.next];
    return (next !== undefined && next <= row) || (this.inserted && !isNumbered);
  }

  /** The next row that is changed, where rows that say their number may be passed over unread; null where none is left. */
  get nextWanted(): number | null {
    return this.order[this.next] ?? null;
  }

  /** Rows without a number may have to be given one. */
  get looksAtEveryRow(): boolean {
    return this.inserted;
  }

  /** A row goes out as it came in. */
  passes(row: number): void {
    this.last = row;
  }

  /** The text of a run of rows with the changes made. */
  apply(text: string, prefix: string): string {
    const out: string[] = [];
    let copied = 0;
    const copyTo = (end: number): void => {
      if (end > copied) out.push(text.slice(copied, end));
      copied = end;
    };
    let cells: RowCells | null = null;
    const { looksAtEveryCell } = this;
    this.last = scanRows(text, prefix, this.last, {
      row: (row) => {
        while (this.next < this.order.length && this.order[this.next]! < row.row) {
          copyTo(row.start);
          out.push(this.newRow(this.order[this.next]!, prefix));
          this.next += 1;
        }
        const plan = this.plans.get(row.row);
        if (this.order[this.next] === row.row) this.next += 1;
        const mustNumber = this.inserted && !row.isNumbered;
        cells = plan === undefined ? null : new RowCells(this, row, plan, prefix);
        if (plan !== undefined || mustNumber) {
          copyTo(row.start);
          out.push(openRow(text, row, prefix, plan !== undefined, this.lineAttributes(row, plan)));
          copied = row.tagEnd;
        }
        return cells !== null || looksAtEveryCell;
      },
      cell: (cell) => {
        const replacement = cells === null ? this.otherCell(text, cell) : cells.take(text, cell);
        if (replacement === null) return;
        copyTo(cell.start);
        out.push(replacement);
        copied = cell.end;
      },
      rowEnd: (row) => {
        if (cells === null) return;
        copyTo(row.innerEnd);
        out.push(cells.rest());
        if (row.isEmpty) out.push(`</${prefix}row>`);
      },
    });
    copyTo(text.length);
    return out.join("");
  }

  /** Rows beyond the sheet's last. */
  remaining(prefix: string): string {
    const rows = this.order.slice(this.next).map((row) => this.newRow(row, prefix));
    this.next = this.order.length;
    return rows.join("");
  }

  /** A cell with its style and value as asked. */
  written(address: string, attributes: string, write: CellWrite, prefix: string): string {
    const bare = ["t", "cm", "vm"].reduce((kept, name) => withAttribute(kept, name, null), attributes);
    const arrayMark = (): number => {
      this.usesArrays = true;
      return this.arrayMark();
    };
    return cellXml({ address, attributes: withAttribute(bare, "r", address), prefix, arrayMark }, write);
  }

  /** A cell that nothing is written into: flags, broken formula groups and stale results concern it. */
  otherCell(text: string, cell: ScannedCell): string | null {
    const isStale = cell.innerEnd > 0 && this.stale.has(`${cell.row} ${cell.column}`);
    const other = this.unwritten(text, cell);
    return isStale ? withoutResult(other ?? whole(text, cell)) : other;
  }

  private unwritten(text: string, cell: ScannedCell): string | null {
    const style = this.changes.clear === true ? this.styles.cleared(cell.style) : cell.style;
    const formula = this.broken.restored(text, cell);
    if (style === cell.style && formula === null) return null;
    const open = styled(text, cell, style);
    if (formula === null) return open + text.slice(cell.tagEnd, cell.end);
    return open + formula + text.slice(cell.innerEnd, cell.end);
  }

  styleOf(style: number, { flag, looks }: RowPlan, column: number): number {
    const look = looks.get(column);
    const bare = this.changes.clear === true ? this.styles.cleared(style) : style;
    const base = look === undefined ? bare : this.styles.withChange(bare, look);
    if (flag === null || column < flag.firstColumn || column > flag.lastColumn) return base;
    return this.styles.flagged(base, flag.colour);
  }

  bareStyle(row: ScannedRow | null, column: number): number {
    return row?.style ?? this.columnStyle(column);
  }

  /** Notes a formula that a write replaces. */
  replaces(text: string, cell: ScannedCell, write: CellWrite): void {
    if (cell.innerEnd === 0) return;
    const formula = findElement(text.slice(cell.innerStart, cell.innerEnd), "f");
    if (formula === null) return;
    this.removedFormula = true;
    const kind = attribute(formula.tag.attributes, "t");
    const range = attribute(formula.tag.attributes, "ref");
    const isRenewed = write.formula !== undefined || write.endsFormula === true;
    if ((kind === "array" && !isRenewed && range?.includes(":") === true) || kind === "dataTable") {
      throw new UnreadableWorkbook(
        `${addressAt(cell.row, cell.column)} holds a formula that fills ${range}: clear that range first`,
      );
    }
    this.broken.note(text, cell, formula);
  }

  private newRow(row: number, prefix: string): string {
    this.inserted = true;
    const plan = this.plans.get(row)!;
    const cells = new RowCells(this, null, plan, prefix, row);
    let attributes = ` r="${row + 1}"`;
    for (const [name, value] of this.lineAttributes(null, plan))
      attributes = withAttribute(attributes, name, value);
    return `<${prefix}row${attributes}>${cells.rest()}</${prefix}row>`;
  }

  /** What a changed row says of itself; null takes an attribute out. */
  private lineAttributes(row: ScannedRow | null, plan: RowPlan | undefined): [string, string | null][] {
    const { size, hidden, look } = plan?.line ?? {};
    const attributes: [string, string | null][] = [];
    if (size !== undefined) {
      attributes.push(
        ["ht", size === null ? null : String(size)],
        ["customHeight", size === null ? null : "1"],
      );
    }
    if (hidden !== undefined) attributes.push(["hidden", hidden ? "1" : null]);
    if (look !== undefined) {
      const style = this.styles.withChange(row?.style ?? 0, look);
      attributes.push(["s", String(style)], ["customFormat", "1"]);
    }
    return attributes;
  }

  private plan(row: number): RowPlan {
    let plan = this.plans.get(row);
    if (plan === undefined) {
      plan = { flag: null, writes: NOTHING, looks: NOTHING, line: null };
      this.plans.set(row, plan);
    }
    return plan;
  }
}

/** What most rows share that are only coloured. */
const NOTHING: ReadonlyMap<number, never> = new Map<number, never>();

function withOne<T>(held: ReadonlyMap<number, T>, column: number, one: T): ReadonlyMap<number, T> {
  const more = (held as unknown) === NOTHING ? new Map<number, T>() : (held as Map<number, T>);
  return more.set(column, one);
}

/** The wanted cells of one row, met in column order: those the file has and those it lacks. */
class RowCells {
  private readonly wanted: number[];
  private next = 0;
  private readonly number: number;

  constructor(
    private readonly patch: RowPatch,
    private readonly row: ScannedRow | null,
    private readonly plan: RowPlan,
    private readonly prefix: string,
    number?: number,
  ) {
    this.number = number ?? row?.row ?? 0;
    const columns = new Set([...plan.writes.keys(), ...plan.looks.keys()]);
    if (plan.flag !== null) {
      for (let column = plan.flag.firstColumn; column <= plan.flag.lastColumn; column += 1)
        columns.add(column);
    }
    this.wanted = [...columns].sort((a, b) => a - b);
  }

  take(text: string, cell: ScannedCell): string | null {
    const before = this.until(cell.column);
    const isWanted = this.wanted[this.next] === cell.column;
    if (isWanted) this.next += 1;
    const write = this.plan.writes.get(cell.column);
    const style = this.patch.styleOf(cell.style, this.plan, cell.column);
    if (write !== undefined) {
      this.patch.replaces(text, cell, write);
      const attributes = withAttribute(rawAttributes(text, cell), "s", style === 0 ? null : String(style));
      return before + this.patch.written(addressAt(cell.row, cell.column), attributes, write, this.prefix);
    }
    const other = this.patch.otherCell(text, cell);
    if (style === cell.style && cell.isAddressed)
      return before === "" ? other : before + (other ?? whole(text, cell));
    const inside = other === null ? text.slice(cell.tagEnd, cell.end) : other.slice(other.indexOf(">") + 1);
    return before + styled(text, cell, style) + inside;
  }

  /** Wanted cells that the row does not have, from where the last cell left off. */
  rest(): string {
    return this.until(Number.POSITIVE_INFINITY);
  }

  private until(column: number): string {
    let xml = "";
    for (; this.next < this.wanted.length && this.wanted[this.next]! < column; this.next += 1) {
      const at = this.wanted[this.next]!;
      const style = this.patch.styleOf(this.patch.bareStyle(this.row, at), this.plan, at);
      const attributes = style === 0 ? "" : ` s="${style}"`;
      const address = addressAt(this.number, at);
      const write = this.plan.writes.get(at);
      if (write !== undefined) xml += this.patch.written(address, attributes, write, this.prefix);
      else xml += `<${this.prefix}c r="${address}"${attributes}/>`;
    }
    return xml;
  }
}

/** A formula's cell without the result that it had. */
function withoutResult(xml: string): string {
  const value = findElement(xml, "v");
  if (value === null || findElement(xml, "f") === null) return xml;
  const end = xml.indexOf(">");
  const bare = withAttribute(xml.slice(0, end), "t", null);
  return bare + xml.slice(end, value.start) + xml.slice(value.end);
}

function whole(text: string, cell: ScannedCell): string {
  return text.slice(cell.start, cell.end);
}

/** Raw attributes between the element's name and its end. */
function rawAttributes(text: string, cell: ScannedCell): string {
  const tag = text.slice(cell.start, cell.tagEnd - (text[cell.tagEnd - 2] === "/" ? 2 : 1));
  const nameEnd = tag.search(/\s/);
  return nameEnd < 0 ? "" : tag.slice(nameEnd);
}

/** The opening tag of nearly every cell: address, style, type. */
const PLAIN_TAG = /^(<[\w.:-]+ r="[A-Z]+\d+")( s="\d+")?( t="\w+")?(\/?>)$/;

/** The opening tag with another style and, where it lacks one, its address. */
function styled(text: string, cell: ScannedCell, style: number): string {
  const tag = text.slice(cell.start, cell.tagEnd);
  const plain = PLAIN_TAG.exec(tag);
  if (plain !== null) {
    const [, open, before, type = "", end] = plain;
    const set = style === 0 ? "" : ` s="${style}"`;
    return before === undefined ? `${open}${type}${set}${end}` : `${open}${set}${type}${end}`;
  }
  const nameEnd = tag.search(/[\s/>]/);
  const isEmpty = tag.endsWith("/>");
  let attributes = withAttribute(rawAttributes(text, cell), "s", style === 0 ? null : String(style));
  if (!cell.isAddressed) attributes = placed(attributes, addressAt(cell.row, cell.column));
  return tag.slice(0, nameEnd) + attributes + (isEmpty ? "/>" : ">");
}

/** Attributes with the place said first, in place of one that said none. */
const placed = (attributes: string, place: string): string =>
  ` r="${place}"${withAttribute(attributes, "r", null)}`;

/** A row's opening tag, numbered, and never empty. */
function openRow(
  text: string,
  row: ScannedRow,
  prefix: string,
  isChanged: boolean,
  line: readonly (readonly [string, string | null])[],
): string {
  const tag = text.slice(row.start, row.tagEnd);
  let attributes = tag.slice(`<${prefix}row`.length, tag.length - (row.isEmpty ? 2 : 1));
  if (!row.isNumbered) attributes = placed(attributes, String(row.row + 1));
  if (isChanged) attributes = withAttribute(attributes, "spans", null);
  for (const [name, value] of line) attributes = withAttribute(attributes, name, value);
  return `<${prefix}row${attributes}${row.isEmpty && !isChanged ? "/" : ""}>`;
}
