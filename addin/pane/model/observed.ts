/** A state that tells whoever listens when it changes. */
export class Observed<State extends object> {
  #state: State;
  readonly #listeners = new Set<() => void>();

  constructor(first: State) {
    this.#state = first;
  }

  get state(): State {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  protected set(change: Partial<State>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}
