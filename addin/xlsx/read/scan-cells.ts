import { LAST_COLUMN, LAST_ROW } from "../../workbook/cell-address";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { closingStart } from "../xml/xml-text";

/** One cell in a text of rows; numbers are offsets into it. Reused from cell to cell: copy what is kept. */
export interface ScannedCell {
  /** of the whole element */
  start: number;
  end: number;
  /** end of the opening tag, after `>` */
  tagEnd: number;
  /** inside of the element; both 0 for an empty one */
  innerStart: number;
  innerEnd: number;
  row: number;
  column: number;
  style: number;
  /** "n" where none is given */
  type: string;
  /** says its own address */
  isAddressed: boolean;
}

/** One row's opening tag in a text of rows. */
export interface ScannedRow {
  start: number;
  tagEnd: number;
  /** start of `</row>`; equal to `tagEnd` for an empty element */
  innerEnd: number;
  end: number;
  row: number;
  hidden: boolean;
  /** points; null where none is given */
  height: number | null;
  /** style of the row's own, where it has one */
  style: number | null;
  isEmpty: boolean;
  /** says its own number */
  isNumbered: boolean;
}

export interface RowListener {
  /** false passes over the row's cells */
  row?(row: ScannedRow): boolean | undefined;
  cell?(cell: ScannedCell): void;
  rowEnd?(row: ScannedRow): void;
}

/**
 * Walks the rows and cells of a text of whole rows. `before` is the row before the text's first, -1 for
 * none; gives the last row. Cells and rows without an address follow their neighbour, as the format says.
 */
export function scanRows(text: string, prefix: string, before: number, listener: RowListener): number {
  const openRow = `<${prefix}row`;
  const openCell = `<${prefix}c`;
  const rowClose = `</${prefix}row`;
  const cellClose = `</${prefix}c`;
  const attributes = new AttributeReader(text);
  const cell: ScannedCell = {
    start: 0,
    end: 0,
    tagEnd: 0,
    innerStart: 0,
    innerEnd: 0,
    row: 0,
    column: 0,
    style: 0,
    type: "n",
    isAddressed: true,
  };
  const placeOf = (wanted: string, start: number): number => {
    const found = text.indexOf(wanted, start);
    return found < 0 ? text.length : found;
  };
  let last = before;
  let nextCell = -1;
  let at = text.indexOf(openRow);
  while (at >= 0) {
    if (!isNameEnd(text.charCodeAt(at + openRow.length))) {
      at = text.indexOf(openRow, at + openRow.length);
      continue;
    }
    attributes.read(at + openRow.length);
    const tagEnd = attributes.end;
    const innerEnd = attributes.isEmpty ? tagEnd : closingStart(text, rowClose, tagEnd);
    if (tagEnd > text.length || innerEnd < 0) throw cutShort();
    const row = attributes.rowFrom(at, last);
    row.innerEnd = innerEnd;
    row.end = attributes.isEmpty ? tagEnd : text.indexOf(">", innerEnd) + 1;
    const number = row.row;
    last = number;
    const isWanted = listener.row?.(row) !== false;
    if (listener.cell !== undefined && isWanted) {
      let column = -1;
      // a row without cells is not searched to the text's end
      if (nextCell < tagEnd) nextCell = placeOf(openCell, tagEnd);
      let from = nextCell;
      while (from < innerEnd) {
        const next = text.charCodeAt(from + openCell.length);
        if (!isNameEnd(next)) {
          from = placeOf(openCell, from + openCell.length);
          continue;
        }
        attributes.read(from + openCell.length);
        cell.start = from;
        cell.tagEnd = attributes.end;
        cell.row = number;
        cell.column = attributes.column < 0 ? column + 1 : attributes.column;
        cell.style = attributes.style;
        cell.type = attributes.type;
        cell.isAddressed = attributes.column >= 0;
        column = cell.column;
        if (attributes.isEmpty) {
          cell.innerStart = 0;
          cell.innerEnd = 0;
          cell.end = attributes.end;
        } else {
          const closed = closingStart(text, cellClose, attributes.end);
          if (closed < 0 || closed > innerEnd) throw cutShort();
          cell.innerStart = attributes.end;
          cell.innerEnd = closed;
          cell.end = text.indexOf(">", closed) + 1;
        }
        if (column <= LAST_COLUMN) listener.cell(cell);
        from = placeOf(openCell, cell.end);
      }
      nextCell = from;
    }
    listener.rowEnd?.(row);
    at = text.indexOf(openRow, row.end);
  }
  return last;
}

/** What a row says of itself, by its opening tag alone: `open` is the tag's beginning, `before` the row before it. */
export function readRowTag(text: string, open: string, before: number): ScannedRow {
  const attributes = new AttributeReader(text);
  attributes.read(open.length);
  return attributes.rowFrom(0, before);
}

function isNameEnd(code: number): boolean {
  return code === 62 || code === 47 || code <= 32;
}

function cutShort(): UnreadableWorkbook {
  return new UnreadableWorkbook("a row of a sheet has no end: the workbook is damaged");
}

/** Reads the few attributes of `row` and `c` by hand: this runs for every cell of the sheet. */
class AttributeReader {
  row = -1;
  column = -1;
  style = 0;
  type = "n";
  hidden = false;
  height: number | null = null;
  customFormat = false;
  isEmpty = false;
  /** after the tag's `>`; beyond the text where the tag has no end */
  end = 0;

  constructor(private readonly text: string) {}

  read(from: number): void {
    this.row = -1;
    this.column = -1;
    this.style = 0;
    this.type = "n";
    this.hidden = false;
    this.height = null;
    this.customFormat = false;
    this.isEmpty = false;
    const { text } = this;
    const { length } = text;
    let at = from;
    while (at < length) {
      const code = text.charCodeAt(at);
      if (code === 62) {
        this.end = at + 1;
        return;
      }
      if (code === 47) this.isEmpty = true;
      if (code <= 32 || code === 47) {
        at += 1;
        continue;
      }
      const nameStart = at;
      while (at < length && !isAfterName(text.charCodeAt(at))) at += 1;
      const nameEnd = at;
      while (at < length && !isQuoteOrEnd(text.charCodeAt(at))) at += 1;
      if (text.charCodeAt(at) === 62) continue;
      const quote = text[at]!;
      const valueStart = at + 1;
      const valueEnd = text.indexOf(quote, valueStart);
      if (valueEnd < 0) break;
      this.take(nameStart, nameEnd, valueStart, valueEnd);
      at = valueEnd + 1;
    }
    this.end = length + 1;
  }

  /** The row whose opening tag was read; its end is not known yet. */
  rowFrom(start: number, before: number): ScannedRow {
    const number = this.row < 0 ? before + 1 : this.row;
    if (number > LAST_ROW) {
      throw new UnreadableWorkbook(
        `a sheet of the workbook lists row ${number + 1}, and no sheet has more than ${LAST_ROW + 1}: it is damaged`,
      );
    }
    return {
      start,
      tagEnd: this.end,
      innerEnd: this.end,
      end: this.end,
      row: number,
      hidden: this.hidden,
      height: this.height,
      style: this.customFormat ? this.style : null,
      isEmpty: this.isEmpty,
      isNumbered: this.row >= 0,
    };
  }

  private take(nameStart: number, nameEnd: number, start: number, end: number): void {
    const { text } = this;
    if (nameEnd - nameStart === 1) {
      const name = text.charCodeAt(nameStart);
      if (name === 114) this.takeAddress(start, end);
      else if (name === 115) this.style = digits(text, start, end);
      else if (name === 116) this.type = end - start === 1 ? text[start]! : text.slice(start, end);
      return;
    }
    if (nameEnd - nameStart === 2 && text.startsWith("ht", nameStart)) {
      const height = Number(text.slice(start, end));
      this.height = Number.isFinite(height) ? height : null;
    } else if (nameEnd - nameStart === 6 && text.startsWith("hidden", nameStart)) {
      this.hidden = text.startsWith("1", start) || text.startsWith("true", start);
    } else if (text.startsWith("customFormat", nameStart)) {
      this.customFormat = text.startsWith("1", start) || text.startsWith("true", start);
    }
  }

  private takeAddress(start: number, end: number): void {
    let column = 0;
    let at = start;
    for (; at < end; at += 1) {
      const code = this.text.charCodeAt(at) & ~32;
      if (code < 65 || code > 90) break;
      column = column * 26 + code - 64;
    }
    this.column = column - 1;
    this.row = digits(this.text, at, end) - 1;
  }
}

function isQuoteOrEnd(code: number): boolean {
  return code === 34 || code === 39 || code === 62;
}

function isAfterName(code: number): boolean {
  return code === 61 || code === 62 || code <= 32;
}

function digits(text: string, start: number, end: number): number {
  let value = 0;
  for (let at = start; at < end; at += 1) {
    const code = text.charCodeAt(at);
    if (code < 48 || code > 57) break;
    value = value * 10 + code - 48;
  }
  return value;
}
