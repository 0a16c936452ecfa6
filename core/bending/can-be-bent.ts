import { isRefusal, type Refusal } from "../units/refusal";
import { type BarOnBender, type BendOrderInput, layOnBender, sweepOf } from "./bar-on-bender";

/**
 * Whether some order makes every bend with nothing touching anything and no swing beyond the guard. The first
 * order found answers, so this is many times quicker than the cheapest one of `bendOrder`.
 *
 * Refuses as `bendOrder` does.
 */
export function canBeBent(input: BendOrderInput): boolean | Refusal {
  const bar = layOnBender(input);
  return isRefusal(bar)
    ? bar
    : isReached({ bar, moves: likelyMoves(input.path.turns.length), dead: new Set() }, 0);
}

interface Search {
  readonly bar: BarOnBender;
  readonly moves: readonly (readonly [bend: number, sides: readonly number[]])[];
  /** sets of bends that lead nowhere */
  readonly dead: Set<number>;
}

/** Bends from the ends inwards, the nearer end swinging first: hooks and short legs want the rest straight. */
function likelyMoves(count: number): Search["moves"] {
  const fromEnd = (bend: number) => Math.min(bend, count - 1 - bend);
  return Array.from({ length: count }, (_, bend) => bend)
    .sort((a, b) => fromEnd(a) - fromEnd(b))
    .map((bend) => [bend, bend < count / 2 ? [-1, 1] : [1, -1]] as const);
}

/** True where all bends can be made once those of the set `made` are. */
function isReached(search: Search, made: number): boolean {
  const { bar, moves, dead } = search;
  if (made === (1 << moves.length) - 1) return true;
  for (const [bend, sides] of moves) {
    const next = made | (1 << bend);
    if (next === made || dead.has(next)) continue;
    const isClear = sides.some((side) => {
      const sweep = sweepOf(bar, made, bend, side);
      return sweep.clear && !sweep.notes.includes("swing beyond the guard");
    });
    if (isClear && isReached(search, next)) return true;
  }
  dead.add(made);
  return false;
}
