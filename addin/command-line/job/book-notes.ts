import type { BookDigest } from "../../../core/jobs";
import { counted } from "../../../core/units/counted";

/** Different notes that are told one by one; of any more their number. */
const MOST_NOTES = 40;

/** What is to be said of single books of a job, each note once with the books that it is of. */
export class BookNotes {
  readonly #books = new Map<string, { readonly first: string; books: number }>();
  #more = 0;

  add({ book, notes }: Pick<BookDigest, "book" | "notes">): void {
    for (const note of notes) {
      const known = this.#books.get(note);
      if (known !== undefined) known.books += 1;
      else if (this.#books.size < MOST_NOTES) this.#books.set(note, { first: book, books: 1 });
      else this.#more += 1;
    }
  }

  words(): string[] {
    const told = [...this.#books].map(([note, { first, books }]) => {
      const others = books === 1 ? "" : ` and ${counted(books - 1, "more book")}`;
      return `${first}${others}: ${note}`;
    });
    return this.#more === 0
      ? told
      : [...told, `${counted(this.#more, "more note")} on single books: --json has them all`];
  }
}
