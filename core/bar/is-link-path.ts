const RIGHT_OR_MORE = /[+-](?:9\d|1[0-8]\d)(?!\d)/g;
const HOOK = /(-?)hook(?:90|135|180)/gi;
const FEWEST_TURNS = 4;

/**
 * True for a path that goes all the way round: at least four turns of 90 or more, all one way, end hooks
 * counted. A row has no place to say its use, so the audit takes such a path for a link, where the functions
 * take any path for a main bar unless told; a length by either is right, and a former that only a link may
 * have is asked about.
 *
 * @example isLinkPath("130 +90 400 +90 300 +90 400 +90 300 +90 130") // true
 */
export function isLinkPath(path: string): boolean {
  const turns = path.match(RIGHT_OR_MORE) ?? [];
  const hooks = [...path.matchAll(HOOK)];
  if (turns.length + hooks.length < FEWEST_TURNS) return false;
  const senses = new Set([
    ...turns.map((turn) => turn[0] === "-"),
    ...hooks.map(([, minus]) => minus === "-"),
  ]);
  return senses.size === 1;
}
