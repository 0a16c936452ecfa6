import { UnreadableWorkbook } from "../unreadable-workbook";
import { plainXml } from "./plain-xml";

const LESS_THAN = 0x3c;
const EXCLAMATION = 0x21;

/**
 * A part's bytes with CDATA opened and comments dropped, in pieces that each hold whole tags: a piece ends
 * where the next tag begins, and stands until the next is asked for. Bytes without either go through as
 * they are. `longest` bytes may stand between two tags.
 */
export function* plainBytes(source: Iterable<Uint8Array>, longest: number): Generator<Uint8Array> {
  const pieces = source[Symbol.iterator]();
  const cutter = new TagCutter(longest);
  for (let next = pieces.next(); next.done !== true; next = pieces.next()) {
    const piece = next.value;
    if (cutter.marksWith(piece)) {
      const rest = (function* () {
        yield cutter.rest();
        yield piece;
        for (let more = pieces.next(); more.done !== true; more = pieces.next()) yield more.value;
      })();
      yield* wholeTags(encoded(plainXml(decoded(rest))), longest);
      return;
    }
    const whole = cutter.take(piece);
    if (whole !== null) yield whole;
  }
  const rest = cutter.rest();
  if (rest.length > 0) yield rest;
}

function* wholeTags(source: Iterable<Uint8Array>, longest: number): Generator<Uint8Array> {
  const cutter = new TagCutter(longest);
  for (const piece of source) {
    const whole = cutter.take(piece);
    if (whole !== null) yield whole;
  }
  const rest = cutter.rest();
  if (rest.length > 0) yield rest;
}

/** Holds back what follows the last tag's beginning. */
class TagCutter {
  private held: Uint8Array[] = [];
  private size = 0;
  private readonly room = new JoiningRoom();

  constructor(private readonly longest: number) {}

  /** True where a comment or CDATA may begin in the piece, or over its beginning. */
  marksWith(piece: Uint8Array): boolean {
    if (this.size === 1 && piece[0] === EXCLAMATION && this.held[0]?.[0] === LESS_THAN) return true;
    for (let at = piece.indexOf(EXCLAMATION, 1); at > 0; at = piece.indexOf(EXCLAMATION, at + 1))
      if (piece[at - 1] === LESS_THAN) return true;
    return false;
  }

  /** What was held and the piece up to its last tag; null where none begins in it. */
  take(piece: Uint8Array): Uint8Array | null {
    const cut = piece.lastIndexOf(LESS_THAN);
    if (cut < 0 || (cut === 0 && this.size === 0)) {
      this.hold(piece.slice());
      return null;
    }
    const before = piece.subarray(0, cut);
    const whole = this.size === 0 ? before : this.room.joined([...this.held, before], this.size + cut);
    this.held = [];
    this.size = 0;
    this.hold(piece.slice(cut));
    return whole;
  }

  rest(): Uint8Array {
    return joined(this.held, this.size);
  }

  private hold(piece: Uint8Array): void {
    this.held.push(piece);
    this.size += piece.length;
    if (this.size > this.longest)
      throw new UnreadableWorkbook("a text in a sheet of the workbook is too long to be read");
  }
}

/** Memory in which pieces are joined again and again: what was joined stands until the next time. */
export class JoiningRoom {
  private room = new Uint8Array(0);

  joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
    if (this.room.length < size) this.room = new Uint8Array(size + (size >> 2));
    let at = 0;
    for (const piece of pieces) {
      this.room.set(piece, at);
      at += piece.length;
    }
    return this.room.subarray(0, size);
  }
}

export function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const only = pieces[0];
  if (pieces.length === 1 && only !== undefined) return only;
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function* decoded(pieces: Iterable<Uint8Array>): Generator<string> {
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  for (const piece of pieces) yield decoder.decode(piece, { stream: true });
  yield decoder.decode();
}

function* encoded(texts: Iterable<string>): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  for (const text of texts) yield encoder.encode(text);
}
