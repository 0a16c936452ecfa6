import { UnreadableWorkbook } from "../unreadable-workbook";
import { plainXml } from "../xml/plain-xml";
import { closingTag, lastClosingTag, type XmlTag, xmlTags } from "../xml/xml-text";

/** A worksheet's text cut at its rows: all before the first, runs of whole rows, all after the last. */
export type SheetPiece =
  | { readonly kind: "head"; readonly text: string; readonly prefix: string }
  | { readonly kind: "rows"; readonly text: string; readonly prefix: string }
  | { readonly kind: "tail"; readonly text: string; readonly prefix: string };

/** Characters between two row ends: a row of 16,384 texts of moderate length is well within. */
const LONGEST_ROW = 48 * 1024 * 1024;
/** What stands before the rows: views, columns, properties. */
const LONGEST_HEAD = 8 * 1024 * 1024;

/**
 * Cuts a worksheet that arrives in pieces, holding never more than a piece and a row. The pieces joined
 * are the text that came in, but for comments and CDATA, which become plain text.
 */
export function* sheetPieces(source: Iterable<string>): Generator<SheetPiece> {
  const text = plainXml(source);
  const opening = readHead(text);
  const { prefix } = opening.tag;
  yield { kind: "head", text: opening.head, prefix };
  let rest = opening.rest;
  if (opening.tag.kind !== "empty") {
    const rows = new RowCutter(prefix, rest);
    for (let piece = rows.cut(); ; piece = rows.cut()) {
      if (piece !== "") yield { kind: "rows", text: piece, prefix };
      if (rows.isClosed) break;
      const next = text.next();
      if (next.done === true)
        throw new UnreadableWorkbook("a sheet of the workbook is cut short: it is damaged");
      rows.push(next.value);
    }
    rest = rows.held();
  }
  for (const piece of text) {
    rest += piece;
    if (rest.length > LONGEST_ROW)
      throw new UnreadableWorkbook("what stands behind a sheet's rows is too long to be read");
  }
  yield { kind: "tail", text: rest, prefix };
}

/** All up to and with the opening of `sheetData`, and what came behind it. */
function readHead(text: Iterator<string>): { head: string; tag: XmlTag; rest: string } {
  let held = "";
  let from = 0;
  for (let piece = text.next(); piece.done !== true; piece = text.next()) {
    held += piece.value;
    for (const tag of xmlTags(held, from)) {
      from = tag.end;
      if (tag.name === "sheetData" && tag.kind !== "close")
        return { head: held.slice(0, tag.end), tag, rest: held.slice(tag.end) };
    }
    if (held.length > LONGEST_HEAD) {
      throw new UnreadableWorkbook(
        "a sheet of the workbook has no cell data where it must be: it is damaged",
      );
    }
  }
  throw new UnreadableWorkbook("a sheet of the workbook has no cell data: it is damaged");
}

/** Gathers text and gives it out in whole rows; no character is searched twice. */
class RowCutter {
  isClosed = false;
  private pieces: string[] = [];
  private size = 0;
  /** the end of what was searched, in case a tag stands over it */
  private seam = "";

  constructor(
    private readonly prefix: string,
    first: string,
  ) {
    this.push(first);
  }

  push(piece: string): void {
    this.pieces.push(piece);
    this.size += piece.length;
    if (this.size > LONGEST_ROW) throw new UnreadableWorkbook("a row of the sheet is too long to be read");
  }

  /** The whole rows that have come; empty where none has. */
  cut(): string {
    const fresh = this.seam + (this.pieces.at(-1) ?? "");
    const close = closingTag(fresh, `${this.prefix}sheetData`, 0);
    const end = close === null ? (lastClosingTag(fresh, `${this.prefix}row`)?.end ?? -1) : close.start;
    this.isClosed = close !== null;
    this.seam = fresh.slice(Math.max(end, fresh.length - this.prefix.length - LONGEST_CLOSE, 0));
    if (end < 0) return "";
    const all = this.held();
    const at = all.length - fresh.length + end;
    this.pieces = [all.slice(at)];
    this.size = all.length - at;
    return all.slice(0, at);
  }

  held(): string {
    if (this.pieces.length > 1) this.pieces = [this.pieces.join("")];
    return this.pieces[0] ?? "";
  }
}

/** `</sheetData`, with blanks before its end */
const LONGEST_CLOSE = 32;
