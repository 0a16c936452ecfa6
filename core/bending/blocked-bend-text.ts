import type { BlockedBend, BlockedReason } from "./bend-order";

/**
 * The sentence that a person at the machine needs.
 *
 * @example
 * // "bend 3 cannot be made after bends 1, 2: swinging part against the held part at 70 degrees (last end swinging)"
 */
export function blockedBendText(blocked: BlockedBend, made: readonly number[]): string {
  const after =
    made.length === 0 ? "first" : `after ${made.length === 1 ? "bend" : "bends"} ${[...made].join(", ")}`;
  return `bend ${blocked.bend} cannot be made ${after}: ${blocked.reasons.map(reasonText).join("; ")}`;
}

function reasonText({ obstacle, at, swinging }: BlockedReason): string {
  const where = at === null ? "" : ` at ${Math.round(at)} degrees`;
  return `${obstacle}${where} (${swinging} swinging)`;
}
