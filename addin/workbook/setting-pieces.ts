import { unreadSettings } from "../../core/audit/unread-settings";
import { LONGEST_FORMULA, textConstant } from "./defined-name";

/** Begins a text that goes on under further names. */
const COUNT = /^\[(\d{1,4}) parts\]/;
/** Room for the equals sign and the count. */
const SPARE = 32;

/** The name under which a part of a setting is kept, the first being 1: `Barwright.Audit`, `Barwright.Audit.2`. */
function pieceName(name: string, part: number): string {
  return part === 1 ? name : `${name}.${part}`;
}

/**
 * The names that keep a text, each with the text it stands for: one name, or as many as a workbook's
 * longest formula makes needful; the first then says how many there are.
 */
export function settingPieces(name: string, text: string): Map<string, string> {
  const pieces = cut(text);
  const count = pieces.length;
  return new Map(
    pieces.map((piece, index) => [
      pieceName(name, index + 1),
      index === 0 && count > 1 ? `[${count} parts]${piece}` : piece,
    ]),
  );
}

/**
 * The text kept under a name and those that go on from it; null where it keeps none. Where one of them
 * is missing the text says so in place of the settings.
 * @param read the text that a name stands for, null where there is no such name
 */
export function settingOfPieces(name: string, read: (piece: string) => string | null): string | null {
  const first = read(name);
  if (first === null) return read(pieceName(name, 2)) === null ? null : missing(name, 1, null);
  const begun = COUNT.exec(first);
  if (begun === null) return first;
  const count = Number(begun[1]);
  let text = first.slice(begun[0].length);
  for (let part = 2; part <= count; part += 1) {
    const piece = read(pieceName(name, part));
    if (piece === null) return missing(name, part, count);
    text += piece;
  }
  return text;
}

/** True for a name that goes on from `name` and is none of the parts still wanted. */
export function isSparePiece(name: string, other: string, wanted: ReadonlyMap<string, string>): boolean {
  const start = `${name.toLowerCase()}.`;
  const own = other.toLowerCase();
  if (!own.startsWith(start) || !/^\d{1,4}$/.test(own.slice(start.length))) return false;
  return ![...wanted.keys()].some((each) => each.toLowerCase() === own);
}

function missing(name: string, part: number, count: number | null): string {
  const parts = count === null ? `while ${pieceName(name, 2)} is there` : `one of ${count} parts`;
  return unreadSettings(
    `the name ${pieceName(name, part)} is missing, ${parts}: take it from an older copy of the file, or delete ${name} and the names that go on from it`,
  );
}

/** As long as a formula holds them, measured as they will be written. */
function cut(text: string): string[] {
  if (textConstant(text).length <= LONGEST_FORMULA - 1) return [text];
  const pieces: string[] = [];
  let at = 0;
  while (at < text.length) {
    let end = Math.min(text.length, at + LONGEST_FORMULA);
    while (textConstant(text.slice(at, end)).length > LONGEST_FORMULA - SPARE) {
      end -= Math.max(1, (textConstant(text.slice(at, end)).length - (LONGEST_FORMULA - SPARE)) >> 1);
    }
    // a character of two units stays whole
    if (end < text.length && isHighSurrogate(text.charCodeAt(end - 1)) && end - at > 1) end -= 1;
    pieces.push(text.slice(at, end));
    at = end;
  }
  return pieces;
}

function isHighSurrogate(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdbff;
}
