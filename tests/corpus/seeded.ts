/** Numbers that are the same for the same seed. */
export interface Seeded {
  /** a whole number of steps from `least` to `most` */
  between(least: number, most: number, step?: number): number;
  pick<T>(list: readonly T[]): T;
  chance(share: number): boolean;
}

/** Draws from a small seeded generator; mulberry32, public domain. */
export function seeded(seed: number): Seeded {
  const unit = mulberry32(seed);
  return {
    between: (least, most, step = 1) =>
      Math.ceil(least / step - 1e-9) * step +
      step * Math.floor(unit() * (Math.floor((most - least) / step) + 1)),
    pick: (list) => list[Math.floor(unit() * list.length)] as (typeof list)[number],
    chance: (share) => unit() < share,
  };
}

function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
