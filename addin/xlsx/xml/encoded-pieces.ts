/** Characters encoded at a time. */
const STEP = 256 * 1024;

/** A text's bytes in pieces, so that a long part stands in memory once and is packed while it is written. */
export function* encodedPieces(text: string, step = STEP): Generator<Uint8Array> {
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
