import { LAST_COLUMN, LAST_ROW } from "../../workbook/cell-address";
import { decodeCellText } from "../xml/xml-text";
import type { CellStore } from "./cell-store";
import { readRowTag, type ScannedRow } from "./scan-cells";
import type { SharedStrings } from "./shared-strings";

const QUOTE = 0x22;
const MINUS = 0x2d;
const POINT = 0x2e;
const SLASH = 0x2f;
const ZERO = 0x30;
const NINE = 0x39;
const LESS_THAN = 0x3c;
const GREATER_THAN = 0x3e;
const AMPERSAND = 0x26;
const UNDERSCORE = 0x5f;
const BLANK = 0x20;
const LETTER_C = 0x63;
const LETTER_V = 0x76;

const bytesOf = (text: string): readonly number[] => [...new TextEncoder().encode(text)];
const OPEN_ROW_NAME = "<row";
const OPEN_ROW = bytesOf("<row r=");
/** what says nothing of a row that we ask for */
const IDLE = [bytesOf("spans="), bytesOf("x14ac:dyDescent=")];
const CLOSE_ROW = bytesOf("</row>");
const OPEN_TEXT = bytesOf("<is><t>");
const OPEN_KEPT_TEXT = bytesOf('<is><t xml:space="preserve">');
const CLOSE_TEXT = bytesOf("</t></is></c>");

/** Digits that a number and its power of ten hold exactly, so that one division rounds as the whole text would. */
const EXACT_DIGITS = 15;
const TENS = Array.from({ length: EXACT_DIGITS + 1 }, (_, power) => 10 ** power);

type Type = "number" | "shared" | "inline" | "boolean";

/**
 * Reads the rows that most sheets consist of straight from their bytes: numbered, without attributes of their
 * own, of numbers and texts without formulas. A row of any other kind is left to `scanRows`, which reads all.
 */
export class QuickRows {
  /** the last row that was read */
  last = -1;
  private bytes: Uint8Array = new Uint8Array(0);
  private at = 0;
  private column = -1;
  private style = 0;
  private type: Type = "number";
  /** digits of the number of the row that is read */
  private rowDigits = 0;
  /** place in the store of each shared text, -1 until it is first met */
  private readonly places: Int32Array;

  constructor(
    private readonly store: CellStore,
    private readonly strings: SharedStrings,
    private readonly onRow: (row: ScannedRow) => void,
    /** told the index of a cell whose whole text is struck through */
    private readonly onStruck: (index: number) => void,
  ) {
    this.places = new Int32Array(strings.texts.length).fill(-1);
  }

  /** Keeps rows from `from` on as far as they are plain; gives where the first that is not begins, or the end. */
  read(bytes: Uint8Array, from: number): number {
    this.bytes = bytes;
    this.at = from;
    for (;;) {
      const start = this.at;
      const row = this.openRow();
      if (row < 0) return start;
      this.store.startRow(row);
      if (!this.cells()) {
        this.store.dropRow();
        return start;
      }
      this.store.endRow();
      this.last = row;
    }
  }

  /** Number of a plain row's opening tag, passed over; -1 where there is none. */
  private openRow(): number {
    const { bytes, at: start } = this;
    if (!this.takes(OPEN_ROW)) return -1;
    if (bytes[this.at] !== QUOTE) return -1;
    this.at += 1;
    const numberStart = this.at;
    const row = this.digits() - 1;
    this.rowDigits = this.at - numberStart;
    if (bytes[this.at] !== QUOTE) return -1;
    this.at += 1;
    if (row <= this.last || row > LAST_ROW) return -1;
    while (bytes[this.at] === BLANK) {
      this.at += 1;
      if (!IDLE.some((name) => this.takes(name))) return this.openSpecialRow(start, row);
      const end = bytes[this.at] === QUOTE ? bytes.indexOf(QUOTE, this.at + 1) : -1;
      if (end < 0) return -1;
      this.at = end + 1;
    }
    if (bytes[this.at] !== GREATER_THAN) return -1;
    this.at += 1;
    return row;
  }

  /** A row that is high, hidden or styled on its own. */
  private openSpecialRow(start: number, row: number): number {
    const end = this.bytes.indexOf(GREATER_THAN, start);
    const tag = end < 0 ? null : readRowTag(ascii(this.bytes, start, end + 1), OPEN_ROW_NAME, row - 1);
    if (tag === null || tag.isEmpty || tag.row !== row || tag.tagEnd !== end + 1 - start) return -1;
    this.onRow(tag);
    this.at = end + 1;
    return row;
  }

  /** The cells up to the row's end; false where one is not plain. */
  private cells(): boolean {
    let before = -1;
    while (this.opensCell()) {
      if (!this.openCell() || this.column <= before || this.column > LAST_COLUMN) return false;
      before = this.column;
      const { bytes } = this;
      if (bytes[this.at] === SLASH && bytes[this.at + 1] === GREATER_THAN) {
        this.at += 2;
        this.store.add(this.column, this.style, null);
        continue;
      }
      if (bytes[this.at] !== GREATER_THAN) return false;
      this.at += 1;
      if (!(this.type === "inline" ? this.inlineText() : this.opensValue() && this.value())) return false;
    }
    return this.takes(CLOSE_ROW);
  }

  /** Attributes r, s and t of a cell in any order, one blank between; false where there are others, or no r. */
  private openCell(): boolean {
    const { bytes } = this;
    this.column = -1;
    this.style = 0;
    this.type = "number";
    for (;;) {
      const name = bytes[this.at];
      if (bytes[this.at + 2] !== QUOTE) return false;
      this.at += 3;
      if (name === 0x72) this.column = this.address();
      else if (name === 0x73) this.style = this.digits();
      else if (name !== 0x74 || !this.takeType()) return false;
      if (bytes[this.at] !== QUOTE) return false;
      this.at += 1;
      if (bytes[this.at] !== BLANK) return this.column >= 0;
      this.at += 1;
    }
  }

  private address(): number {
    const { bytes } = this;
    let { at } = this;
    let column = 0;
    for (let code = bytes[at]!; code >= 65 && code <= 90; code = bytes[at]!) {
      column = column * 26 + code - 64;
      at += 1;
    }
    this.at = at;
    // its own row's number nearly always: passed over at once
    if (bytes[at + this.rowDigits] === QUOTE) this.at = at + this.rowDigits;
    else this.digits();
    return column - 1;
  }

  private takeType(): boolean {
    const { bytes } = this;
    const first = bytes[this.at];
    if (bytes[this.at + 1] === QUOTE) {
      this.at += 1;
      if (first === 0x73) this.type = "shared";
      else if (first === 0x62) this.type = "boolean";
      else return first === 0x6e;
      return true;
    }
    const end = bytes.indexOf(QUOTE, this.at);
    if (end - this.at !== 9 || first !== 0x69) return false;
    this.at = end;
    this.type = "inline";
    return true;
  }

  private value(): boolean {
    const { bytes, store, column, style } = this;
    const start = this.at;
    if (this.type === "number") {
      const number = this.number();
      if (Number.isNaN(number) || !this.closesValue()) return false;
      store.add(column, style, number);
      return true;
    }
    const index = this.digits();
    if (this.at === start || this.at - start > 9 || !this.closesValue()) return false;
    if (this.type === "shared") return this.shared(index);
    if (index > 1 || bytes[start + 1] !== LESS_THAN) return false;
    store.add(column, style, index === 1);
    return true;
  }

  private shared(index: number): boolean {
    const { strings, store, column, style, places } = this;
    const text = strings.texts[index];
    if (text === undefined) return false;
    let added: number;
    if (text === "") added = store.add(column, style, null);
    else {
      if (places[index]! < 0) places[index] = store.placeOfText(text);
      added = store.addText(column, style, places[index]!);
    }
    if (strings.struck.has(index)) this.onStruck(added);
    return true;
  }

  /** NaN where it does not begin with digits; the few others are left to the thorough way. */
  private number(): number {
    const { bytes } = this;
    const isNegative = bytes[this.at] === MINUS;
    if (isNegative) this.at += 1;
    const start = this.at;
    const whole = this.digits();
    let digits = this.at - start;
    if (digits === 0) return Number.NaN;
    let number = whole;
    if (bytes[this.at] === POINT) {
      this.at += 1;
      const from = this.at;
      const part = this.digits();
      const places = this.at - from;
      digits += places;
      if (places === 0 || digits > EXACT_DIGITS) return this.longNumber(start, isNegative);
      number = (whole * TENS[places]! + part) / TENS[places]!;
    } else if (digits > EXACT_DIGITS) return this.longNumber(start, isNegative);
    return isNegative ? -number : number;
  }

  private longNumber(start: number, isNegative: boolean): number {
    const number = Number(ascii(this.bytes, start, this.at));
    return isNegative ? -number : number;
  }

  private inlineText(): boolean {
    if (!this.takes(OPEN_TEXT) && !this.takes(OPEN_KEPT_TEXT)) return false;
    const { bytes } = this;
    const start = this.at;
    const end = bytes.indexOf(LESS_THAN, start);
    if (end < 0) return false;
    this.at = end;
    if (!this.takes(CLOSE_TEXT)) return false;
    const text = textOf(bytes, start, end);
    this.store.add(this.column, this.style, text === "" ? null : text);
    return true;
  }

  private digits(): number {
    const { bytes } = this;
    let { at } = this;
    let value = 0;
    for (let code = bytes[at]!; code >= ZERO && code <= NINE; code = bytes[at]!) {
      value = value * 10 + code - ZERO;
      at += 1;
    }
    this.at = at;
    return value;
  }

  /** Passes over `<c ` where it stands here; this and the two below run for every cell. */
  private opensCell(): boolean {
    const { bytes, at } = this;
    if (bytes[at] !== LESS_THAN || bytes[at + 1] !== LETTER_C || bytes[at + 2] !== BLANK) return false;
    this.at = at + 3;
    return true;
  }

  /** `<v>` */
  private opensValue(): boolean {
    const { bytes, at } = this;
    if (bytes[at] !== LESS_THAN || bytes[at + 1] !== LETTER_V || bytes[at + 2] !== GREATER_THAN) return false;
    this.at = at + 3;
    return true;
  }

  /** `</v></c>` */
  private closesValue(): boolean {
    const { bytes, at } = this;
    const isClosed =
      bytes[at] === LESS_THAN &&
      bytes[at + 1] === SLASH &&
      bytes[at + 2] === LETTER_V &&
      bytes[at + 3] === GREATER_THAN &&
      bytes[at + 4] === LESS_THAN &&
      bytes[at + 5] === SLASH &&
      bytes[at + 6] === LETTER_C &&
      bytes[at + 7] === GREATER_THAN;
    if (isClosed) this.at = at + 8;
    return isClosed;
  }

  /** Passes over `wanted` where it stands here. */
  private takes(wanted: readonly number[]): boolean {
    const { bytes, at } = this;
    for (let index = 0; index < wanted.length; index += 1)
      if (bytes[at + index] !== wanted[index]) return false;
    this.at = at + wanted.length;
    return true;
  }
}

const INSIDE = new TextDecoder("utf-8", { ignoreBOM: true });
/** a longer text is not put together letter by letter */
const SHORT = 32;

function textOf(bytes: Uint8Array, start: number, end: number): string {
  let isPlain = end - start <= SHORT;
  for (let at = start; at < end && isPlain; at += 1) {
    const code = bytes[at]!;
    isPlain = code < 0x80 && code !== AMPERSAND && code !== UNDERSCORE;
  }
  return isPlain ? ascii(bytes, start, end) : decodeCellText(INSIDE.decode(bytes.subarray(start, end)));
}

function ascii(bytes: Uint8Array, start: number, end: number): string {
  let text = "";
  for (let at = start; at < end; at += 1) text += String.fromCharCode(bytes[at]!);
  return text;
}
