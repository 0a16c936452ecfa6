const OFFSET = 0x811c9dc5;
const PRIME = 0x01000193;
const SHIFT = 15;
/** what is finer than a thousandth tells no two lengths, counts or masses apart */
const FINE = 1000;

/** A number of 32 bits that few other texts or figures share, one after another: what is alike hashes alike. */
export function hashOf(value: string | number | null, before = OFFSET): number {
  if (typeof value === "string") return hashOfText(value, before);
  return mixed(before, value === null ? OFFSET : Math.trunc(value * FINE) | 0);
}

function hashOfText(text: string, before: number): number {
  let hash = before;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), PRIME);
  return mixed(hash, text.length);
}

function mixed(hash: number, value: number): number {
  const next = Math.imul(hash ^ value, PRIME);
  return next ^ (next >>> SHIFT);
}

/** The hashes that come more than once. */
export function repeatedIn(hashes: Int32Array): Set<number> {
  const again = new Set<number>();
  const sorted = hashes.slice().sort();
  for (let at = 1; at < sorted.length; at += 1)
    if (sorted[at] === sorted[at - 1]) again.add(sorted[at] as number);
  return again;
}
