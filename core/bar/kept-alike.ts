import { repeatedIn } from "../units/hash";
import type { BarFacts } from "./bar-facts";
import type { BarsChanged, Kept } from "./kept-answers";

type KeyOf = (facts: BarFacts) => string | null;
/** A number for a bar, the same for bars of the same key; keys need be made only where numbers come again. */
export type NumberOf = (facts: BarFacts) => number;
type Groups = ReadonlyMap<string, readonly number[]>;

/** Places of bars that share a key, two or more, by where the first of them stands. */
export class KeptAlike implements Kept<readonly (readonly number[])[]> {
  readonly given = undefined;
  readonly value: readonly (readonly number[])[];

  private constructor(
    private readonly keyOf: KeyOf,
    private readonly numberOf: NumberOf,
    /** by place: the key as one number, which few others share; 0 for none */
    private readonly hashes: Int32Array,
    private readonly groups: Groups,
  ) {
    this.value = [...groups.values()].sort(([one = 0], [other = 0]) => one - other);
  }

  static of(keyOf: KeyOf, numberOf: NumberOf, bars: readonly BarFacts[]): KeptAlike {
    const hashes = new Int32Array(bars.length);
    for (let place = 0; place < bars.length; place += 1) hashes[place] = numberOf(bars[place] as BarFacts);
    const groups = new Map<string, number[]>();
    for (const place of placesOfRepeated(hashes)) {
      const key = keyOf(bars[place] as BarFacts);
      if (key === null) continue;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [place]);
      else group.push(place);
    }
    for (const [key, places] of groups) if (places.length < 2) groups.delete(key);
    return new KeptAlike(keyOf, numberOf, hashes, groups);
  }

  after({ before, now, changed }: BarsChanged): KeptAlike {
    const moved = changed
      .map((place) => {
        const from = this.keyOf(before[place] as BarFacts);
        return { place, from, to: this.keyOf(now[place] as BarFacts) };
      })
      .filter(({ from, to }) => from !== to);
    if (moved.length === 0) return this;
    const hashes = this.hashes.slice();
    const groups = new Map(this.groups);
    for (const { place, from } of moved) {
      hashes[place] = 0;
      const left = (groups.get(from ?? "") ?? []).filter((other) => other !== place);
      if (from !== null && left.length > 1) groups.set(from, left);
      else if (from !== null) groups.delete(from);
    }
    for (const { place, to } of moved) {
      if (to === null) continue;
      const hash = this.numberOf(now[place] as BarFacts);
      const alike = groups.get(to) ?? this.#alone(to, hash, hashes, now);
      if (alike.length > 0)
        groups.set(
          to,
          [...alike, place].sort((one, other) => one - other),
        );
      hashes[place] = hash;
    }
    return new KeptAlike(this.keyOf, this.numberOf, hashes, groups);
  }

  /** The place of the one bar that has the key. */
  #alone(key: string, hash: number, hashes: Int32Array, bars: readonly BarFacts[]): readonly number[] {
    for (let place = hashes.indexOf(hash); place >= 0; place = hashes.indexOf(hash, place + 1))
      if (this.keyOf(bars[place] as BarFacts) === key) return [place];
    return [];
  }
}

/** Places whose hash comes more than once, in order. */
function placesOfRepeated(hashes: Int32Array): readonly number[] {
  const again = repeatedIn(hashes);
  again.delete(0);
  const places: number[] = [];
  if (again.size === 0) return places;
  for (let place = 0; place < hashes.length; place += 1)
    if (again.has(hashes[place] as number)) places.push(place);
  return places;
}
