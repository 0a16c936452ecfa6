/** Raised where something else takes the place of what was waited for: nothing to tell the user. */
export class GivenUp extends Error {}

/** Answers that are waited for, each of which can be given up when whoever is asked does not answer. */
export class Patience {
  readonly #waiting = new Set<(problem: Error) => void>();

  /** The answer, unless it is given up first; one that comes later is dropped. */
  wait<Answer>(answer: Promise<Answer>): Promise<Answer> {
    return new Promise((resolve, reject) => {
      this.#waiting.add(reject);
      answer.finally(() => this.#waiting.delete(reject)).then(resolve, reject);
    });
  }

  /** Everything that is waited for ends with this problem. */
  giveUp(problem: Error): void {
    const all = [...this.#waiting];
    this.#waiting.clear();
    for (const reject of all) reject(problem);
  }
}
