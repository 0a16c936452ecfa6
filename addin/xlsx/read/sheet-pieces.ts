import { UnreadableWorkbook } from "../unreadable-workbook";
import { encodeXml } from "../xml/xml-text";

/** A worksheet's text cut at its rows: all before the first, runs of whole rows, all after the last. */
export type SheetPiece =
  | { readonly kind: "head"; readonly text: string; readonly prefix: string }
  | { readonly kind: "rows"; readonly text: string; readonly prefix: string }
  | { readonly kind: "tail"; readonly text: string; readonly prefix: string };

/** Longest text between two row ends: a row of 16,384 texts of moderate length is well within. */
const LONGEST_ROW = 64 * 1024 * 1024;
/** What stands before the rows: views, columns, properties. */
const LONGEST_HEAD = 8 * 1024 * 1024;

/**
 * Cuts a worksheet that arrives in pieces, holding never more than a piece and a row. The pieces joined
 * are the text that came in, but for comments and CDATA, which become plain text.
 */
export function* sheetPieces(source: Iterable<string>): Generator<SheetPiece> {
  let held = "";
  let prefix: string | null = null;
  let opened = false;
  let closed = false;
  for (const piece of plainXml(source)) {
    held += piece;
    if (held.length > LONGEST_ROW) throw new UnreadableWorkbook("a row of the sheet is too long to be read");
    if (closed) continue;
    if (!opened) {
      const start = /<((?:[\w.-]+:)?)sheetData(\s[^>]*)?(\/?)>/.exec(held);
      if (start === null) {
        if (held.length <= LONGEST_HEAD) continue;
        throw new UnreadableWorkbook(
          "a sheet of the workbook has no cell data where it must be: it is damaged",
        );
      }
      prefix = start[1]!;
      const end = start.index + start[0].length;
      yield { kind: "head", text: held.slice(0, end), prefix };
      held = held.slice(end);
      opened = true;
      closed = start[3] === "/";
      if (closed) continue;
    }
    const endOfData = held.indexOf(`</${prefix}sheetData`);
    const cut = endOfData >= 0 ? endOfData : lastRowEnd(held, prefix!);
    if (cut > 0) yield { kind: "rows", text: held.slice(0, cut), prefix: prefix! };
    held = held.slice(cut);
    closed = endOfData >= 0;
  }
  if (!opened) throw new UnreadableWorkbook("a sheet of the workbook has no cell data: it is damaged");
  if (!closed) throw new UnreadableWorkbook("a sheet of the workbook is cut short: it is damaged");
  yield { kind: "tail", text: held, prefix: prefix! };
}

/** End of the last whole row; 0 where none is whole. */
function lastRowEnd(text: string, prefix: string): number {
  const close = `</${prefix}row>`;
  const at = text.lastIndexOf(close);
  return at < 0 ? 0 : at + close.length;
}

/** Text with CDATA opened and comments dropped, so that what follows may look for tags alone. */
function* plainXml(source: Iterable<string>): Generator<string> {
  let held = "";
  for (const piece of source) {
    let text = held + piece;
    held = "";
    if (text.includes("<!")) {
      text = text
        .replace(/<!--[\s\S]*?-->/g, "")
        .replace(/<!\[CDATA\[([\s\S]*?)\]\]>/g, (_, inner: string) => encodeXml(inner));
    }
    const open = text.indexOf("<!");
    const cut = open >= 0 ? open : text.endsWith("<") ? text.length - 1 : text.length;
    held = text.slice(cut);
    if (cut > 0) yield text.slice(0, cut);
  }
  if (held.length > 0) yield held;
}
