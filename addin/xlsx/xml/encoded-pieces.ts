/** A part's text that is long, and made while it is packed: piece by piece, so that it never stands whole in memory. */
export interface LongText {
  /** the same text each time */
  pieces(): Iterable<string>;
}

/** A part's text, whole or piece by piece. */
export type PartText = string | LongText;

/** A long text as one. */
export function wholeText(text: PartText): string {
  return typeof text === "string" ? text : [...text.pieces()].join("");
}

/** What stands no text of XML can hold: a place in one that is being made. */
export const PLACE = "\u0000";

/** A text with `pieces` in its one `PLACE`. */
export function withPieces(text: string, pieces: () => Iterable<string>): LongText {
  // what stands before it may be a damaged file's
  const at = text.lastIndexOf(PLACE);
  return {
    *pieces() {
      yield text.slice(0, at);
      yield* pieces();
      yield text.slice(at + PLACE.length);
    },
  };
}

/** Characters encoded at a time. */
const STEP = 256 * 1024;

/** A text's bytes in pieces, so that a long part stands in memory once and is packed while it is written. */
export function* encodedPieces(text: PartText, step = STEP): Generator<Uint8Array> {
  if (typeof text === "string") {
    yield* encodedText(text, step);
    return;
  }
  let held = "";
  for (const piece of text.pieces()) {
    held += piece;
    if (held.length < step) continue;
    yield* encodedText(held, held.length);
    held = "";
  }
  yield* encodedText(held, step);
}

function* encodedText(text: string, step: number): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  let end = 0;
  for (let at = 0; at < text.length; at = end) {
    end = Math.min(at + step, text.length);
    // the two halves of a character stay together
    if (end < text.length && isHighHalf(text.charCodeAt(end - 1))) end += 1;
    yield encoder.encode(text.slice(at, end));
  }
}

const isHighHalf = (code: number): boolean => code >= 0xd800 && code < 0xdc00;
