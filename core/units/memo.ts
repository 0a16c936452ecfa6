/** Answers kept by a key; once there are too many they are all forgotten, so that no memory grows for ever. */
export class Memo<Key, Value> {
  readonly #known = new Map<Key, Value>();

  constructor(private readonly most = 1000) {}

  get(key: Key): Value | undefined {
    return this.#known.get(key);
  }

  keep(key: Key, value: Value): Value {
    if (this.#known.size >= this.most) this.#known.clear();
    this.#known.set(key, value);
    return value;
  }

  /** The answer that is known, else the one that `make` gives now. */
  of(key: Key, make: () => Value): Value {
    return this.#known.get(key) ?? this.keep(key, make());
  }
}
