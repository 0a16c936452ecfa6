import { UnreadableWorkbook } from "../unreadable-workbook";
import { JoiningRoom, joined, plainBytes } from "../xml/plain-bytes";
import { type XmlTag, xmlTags } from "../xml/xml-text";
import { closingEnd, findBytes, lastClosing } from "./row-bytes";

/** A worksheet cut at its rows: all before the first, runs of whole rows, all after the last. */
export type SheetPiece =
  | { readonly kind: "head"; readonly text: string; readonly prefix: string }
  | { readonly kind: "rows"; readonly bytes: Uint8Array; readonly prefix: string }
  | { readonly kind: "tail"; readonly text: string; readonly prefix: string };

/** Bytes between two row ends: a row of 16,384 texts of moderate length is well within. */
const LONGEST_ROW = 48 * 1024 * 1024;
/** What stands before the rows: views, columns, properties. */
const LONGEST_HEAD = 8 * 1024 * 1024;

/**
 * Cuts a worksheet that arrives in pieces, holding never more than a piece and a row. The pieces joined
 * are the part's bytes, but for comments and CDATA, which become plain text. Rows stand until the next piece is
 * asked for: their memory is used again.
 */
export function* sheetPieces(source: Iterable<Uint8Array>): Generator<SheetPiece> {
  const pieces = plainBytes(source, LONGEST_ROW);
  const opening = readHead(pieces);
  const { prefix } = opening.tag;
  yield { kind: "head", text: opening.head, prefix };
  let rest = [opening.rest];
  if (opening.tag.kind !== "empty") {
    const rows = new RowCutter(prefix, opening.rest);
    for (let piece = rows.cut(); ; piece = rows.cut()) {
      if (piece.length > 0) yield { kind: "rows", bytes: piece, prefix };
      if (rows.isClosed) break;
      const next = pieces.next();
      if (next.done === true)
        throw new UnreadableWorkbook("a sheet of the workbook is cut short: it is damaged");
      rows.push(next.value);
    }
    rest = [rows.held()];
  }
  let size = rest[0]?.length ?? 0;
  for (const piece of pieces) {
    rest.push(piece.slice());
    size += piece.length;
    if (size > LONGEST_ROW)
      throw new UnreadableWorkbook("what stands behind a sheet's rows is too long to be read");
  }
  yield { kind: "tail", text: decoded(joined(rest, size)), prefix };
}

/** Text of bytes from within a part. */
export function decoded(bytes: Uint8Array): string {
  return INSIDE.decode(bytes);
}

const INSIDE = new TextDecoder("utf-8", { ignoreBOM: true });
/** One character a byte: tags stand where they stand in the bytes. */
const OUTLINE = new TextDecoder("latin1");

/** All up to and with the opening of `sheetData`, and what came behind it. */
function readHead(pieces: Iterator<Uint8Array>): { head: string; tag: XmlTag; rest: Uint8Array } {
  const held: Uint8Array[] = [];
  let outline = "";
  let from = 0;
  for (let piece = pieces.next(); piece.done !== true; piece = pieces.next()) {
    held.push(piece.value.slice());
    outline += OUTLINE.decode(piece.value);
    for (const tag of xmlTags(outline, from)) {
      from = tag.end;
      if (tag.name !== "sheetData" || tag.kind === "close") continue;
      const whole = joined(held, outline.length);
      // a byte order mark is no text
      const head = new TextDecoder("utf-8").decode(whole.subarray(0, tag.end));
      return { head, tag, rest: whole.subarray(tag.end) };
    }
    if (outline.length > LONGEST_HEAD) {
      throw new UnreadableWorkbook(
        "a sheet of the workbook has no cell data where it must be: it is damaged",
      );
    }
  }
  throw new UnreadableWorkbook("a sheet of the workbook has no cell data: it is damaged");
}

/** Gathers bytes and gives them out in whole rows; each piece holds whole tags, and none is searched twice. */
class RowCutter {
  isClosed = false;
  private pieces: Uint8Array[] = [];
  private size = 0;
  private readonly room = new JoiningRoom();
  private readonly closeRow: Uint8Array;
  private readonly closeData: Uint8Array;
  /** the h of sheetData, which few tags have */
  private readonly rare: number;

  constructor(prefix: string, first: Uint8Array) {
    this.rare = `</${prefix}sh`.length - 1;
    this.closeRow = new TextEncoder().encode(`</${prefix}row`);
    this.closeData = new TextEncoder().encode(`</${prefix}sheetData`);
    this.push(first);
  }

  push(piece: Uint8Array): void {
    this.pieces.push(piece);
    this.size += piece.length;
    if (this.size > LONGEST_ROW) throw new UnreadableWorkbook("a row of the sheet is too long to be read");
  }

  /** The whole rows that have come; empty where none has. */
  cut(): Uint8Array {
    const fresh = this.pieces.at(-1) as Uint8Array;
    const close = this.endOfData(fresh);
    const end = close < 0 ? lastClosing(fresh, this.closeRow) : close;
    this.isClosed = close >= 0;
    const earlier = this.pieces.slice(0, -1);
    if (end < 0) {
      this.pieces = [...earlier, fresh.slice()];
      return fresh.subarray(0, 0);
    }
    const cut = fresh.subarray(0, end);
    const before = this.size - fresh.length;
    const whole = before === 0 ? cut : this.room.joined([...earlier, cut], before + end);
    this.pieces = [fresh.slice(end)];
    this.size = fresh.length - end;
    return whole;
  }

  held(): Uint8Array {
    return joined(this.pieces, this.size);
  }

  private endOfData(fresh: Uint8Array): number {
    const { closeData, rare } = this;
    let at = findBytes(fresh, closeData, 0, rare);
    while (at >= 0 && closingEnd(fresh, at + closeData.length) < 0)
      at = findBytes(fresh, closeData, at + closeData.length, rare);
    return at;
  }
}
