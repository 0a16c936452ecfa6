import type { BarRow } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import { namesOfWeight, type RowMass, type RowWeight } from "./row-mass";

const FROM: readonly RowWeight["from"][] = [
  ...(["cut length", "typed length", "typed mass", "typed total length", "metres alone"] as const),
];

/**
 * Masses of a sheet's bar rows by their place among its bars; null for a row in no total. They stand field by
 * field: an object for each of a million rows takes more room than what was read of them.
 */
export class MassesOfSheet implements Iterable<RowMass | null> {
  /** rows in the total */
  counted = 0;
  /** NaN for a row in no total */
  readonly #mass: Float64Array;
  /** NaN for null */
  readonly #cutLength: Float64Array;
  readonly #count: Float64Array;
  readonly #from: Uint8Array;
  readonly #otherwise = new Map<number, RowWeight["otherwise"]>();
  readonly #asTyped = new Map<number, number>();

  constructor(
    private readonly sheet: Sheet,
    private readonly bars: readonly BarRow[],
  ) {
    this.#mass = new Float64Array(bars.length).fill(Number.NaN);
    this.#cutLength = new Float64Array(bars.length);
    this.#count = new Float64Array(bars.length);
    this.#from = new Uint8Array(bars.length);
  }

  keep(place: number, { mass, from, cutLength, count, otherwise, asTyped }: RowWeight): void {
    this.counted += 1;
    this.#mass[place] = mass;
    this.#cutLength[place] = cutLength ?? Number.NaN;
    this.#count[place] = count ?? Number.NaN;
    this.#from[place] = FROM.indexOf(from);
    if (asTyped !== null) this.#asTyped.set(place, asTyped);
    if (otherwise !== null) this.#otherwise.set(place, otherwise);
  }

  /** kg */
  massAt(place: number): number | null {
    return orNull(this.#mass[place]);
  }

  /** kg by the length that is cut, where that is another than the one weighed */
  asTypedAt(place: number): number | null {
    return this.#asTyped.get(place) ?? null;
  }

  at(place: number): RowMass | null {
    const [mass, bar] = [this.massAt(place), this.bars[place]];
    if (mass === null || bar === undefined) return null;
    return {
      mass,
      from: FROM[this.#from[place] as number] as RowWeight["from"],
      cutLength: orNull(this.#cutLength[place]),
      count: orNull(this.#count[place]),
      otherwise: this.#otherwise.get(place) ?? null,
      asTyped: this.asTypedAt(place),
      ...namesOfWeight(this.sheet, bar),
    };
  }

  *[Symbol.iterator](): Generator<RowMass | null> {
    for (let place = 0; place < this.bars.length; place += 1) yield this.at(place);
  }
}

function orNull(value: number | undefined): number | null {
  return value === undefined || Number.isNaN(value) ? null : value;
}
