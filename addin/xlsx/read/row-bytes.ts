const LESS_THAN = 0x3c;
const GREATER_THAN = 0x3e;
const SLASH = 0x2f;

/** Place of `wanted` in bytes; -1 where it is not in them. `rare` is the place in it of a byte that few others are. */
export function findBytes(bytes: Uint8Array, wanted: Uint8Array, from: number, rare: number): number {
  const letter = wanted[rare] as number;
  for (let at = bytes.indexOf(letter, from + rare); at >= 0; at = bytes.indexOf(letter, at + 1))
    if (standsAt(bytes, at - rare, wanted)) return at - rare;
  return -1;
}

/**
 * Place of a text of many letters in bytes; -1 where it is not in them. Most bytes are passed over unread: one that
 * the text does not hold, or only further ahead, says how far (Horspool's search).
 */
export function findText(bytes: Uint8Array, wanted: Uint8Array, from: number): number {
  const end = wanted.length - 1;
  const steps = new Uint8Array(256).fill(wanted.length);
  for (let index = 0; index < end; index += 1) steps[wanted[index] as number] = end - index;
  const last = wanted[end];
  for (let at = from + end; at < bytes.length; ) {
    const code = bytes[at] as number;
    if (code === last && standsAt(bytes, at - end, wanted)) return at - end;
    at += steps[code] as number;
  }
  return -1;
}

/** Place of the last `wanted`, which begins with the beginning of a tag; -1 where there is none. */
export function lastText(bytes: Uint8Array, wanted: Uint8Array): number {
  let at = bytes.lastIndexOf(LESS_THAN);
  while (at >= 0 && !standsAt(bytes, at, wanted)) at = at === 0 ? -1 : bytes.lastIndexOf(LESS_THAN, at - 1);
  return at;
}

export function standsAt(bytes: Uint8Array, at: number, wanted: Uint8Array): boolean {
  for (let index = 0; index < wanted.length; index += 1)
    if (bytes[at + index] !== wanted[index]) return false;
  return true;
}

/** After the `>` of a closing tag whose name ends at `from`, blanks passed over; -1 where the name goes on. */
export function closingEnd(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && bytes[at]! <= 32) at += 1;
  return bytes[at] === GREATER_THAN ? at + 1 : -1;
}

/** After the last closing tag that begins with `open`; -1 where there is none. */
export function lastClosing(bytes: Uint8Array, open: Uint8Array): number {
  for (
    let at = bytes.lastIndexOf(LESS_THAN);
    at >= 0;
    at = at === 0 ? -1 : bytes.lastIndexOf(LESS_THAN, at - 1)
  ) {
    if (bytes[at + 1] !== SLASH || !standsAt(bytes, at, open)) continue;
    const end = closingEnd(bytes, at + open.length);
    if (end >= 0) return end;
  }
  return -1;
}

/** After the end of the row that opens at `at`, `prefix` being that of the sheet's tags; -1 where it has none. */
export function rowEnd(bytes: Uint8Array, at: number, close: Uint8Array): number {
  let quote = 0;
  let tagEnd = at;
  for (; tagEnd < bytes.length; tagEnd += 1) {
    const code = bytes[tagEnd]!;
    if (quote !== 0) {
      if (code === quote) quote = 0;
    } else if (code === 0x22 || code === 0x27) quote = code;
    else if (code === GREATER_THAN) break;
  }
  if (bytes[tagEnd - 1] === SLASH) return tagEnd + 1;
  const rare = close.length - 1;
  for (
    let found = findBytes(bytes, close, tagEnd, rare);
    found >= 0;
    found = findBytes(bytes, close, found + 1, rare)
  ) {
    const end = closingEnd(bytes, found + close.length);
    if (end >= 0) return end;
  }
  return -1;
}
