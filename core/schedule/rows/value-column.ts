import { memoryOfThreads } from "../../units/memory-of-threads";

/** A column as plain data. */
export interface PackedColumn<Value> {
  readonly codes: Uint16Array;
  readonly values: (Value | null)[];
}

/** Values beyond which the column is taken for one of which few are alike. */
const FEW = 1024;
const MOST_CODES = 0xffff;

/**
 * Values of some bars, of which many are alike: two bytes a bar and each value once, where a list would hold eight
 * bytes a bar that the memory's tidying has to go through. Null until one is set.
 */
export class ValueColumn<Value> {
  #codes: Uint16Array;
  #values: (Value | null)[] = [null];
  /** codes by value; null once too many differ */
  #known: Map<Value, number> | null = new Map();
  #last: Value | null = null;
  #lastCode = 0;

  /** @param room bars, fewer than 32,768 */
  constructor(room: number) {
    this.#codes = new Uint16Array(memoryOfThreads(room * Uint16Array.BYTES_PER_ELEMENT));
  }

  /** The column that was packed: no value is set in it any more. */
  static of<Value>({ codes, values }: PackedColumn<Value>): ValueColumn<Value> {
    const column = new ValueColumn<Value>(0);
    column.#codes = codes;
    column.#values = values;
    return column;
  }

  packed(): PackedColumn<Value> {
    return { codes: this.#codes, values: this.#values };
  }

  get(place: number): Value | null {
    return this.#values[this.#codes[place] as number] as Value | null;
  }

  set(place: number, value: Value | null): void {
    if (value !== this.#last) {
      this.#lastCode = value === null ? 0 : this.#codeOf(value);
      this.#last = value;
    }
    this.#codes[place] = this.#lastCode;
  }

  #codeOf(value: Value): number {
    const known = this.#known?.get(value);
    if (known !== undefined) return known;
    if (this.#values.length > MOST_CODES) this.#leaveOutUnused();
    const code = this.#values.push(value) - 1;
    if (this.#known !== null && code < FEW) this.#known.set(value, code);
    else this.#known = null;
    return code;
  }

  /** Values that were replaced since keep their codes until none is left. */
  #leaveOutUnused(): void {
    const before = this.#values;
    const codes = new Map<number, number>([[0, 0]]);
    this.#values = [null];
    this.#known = null;
    this.#last = null;
    this.#lastCode = 0;
    this.#codes = this.#codes.map((old) => {
      let code = codes.get(old);
      if (code === undefined) {
        code = this.#values.push(before[old] as Value) - 1;
        codes.set(old, code);
      }
      return code;
    });
  }
}
