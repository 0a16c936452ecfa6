import { type ReckonedTonnage, reckonTonnage } from "../totals/reckon-tonnage";
import { tonnageNotes } from "../totals/tonnage-notes";
import type { ReadBook } from "./read-book";

/** Why a total of nought is no result: bars were read, and not one of them is in it. Null where some are. */
export function noneInTotal({ tonnage, notInTotal, held }: ReckonedTonnage): string | null {
  const { length } = notInTotal;
  if (tonnage.rows > 0 || held !== null || length === 0) return null;
  return `no total: ${length === 1 ? "the only bar row is" : `all ${length} bar rows are`} left out of it`;
}

/** Tonnes of one or more books. */
export interface TonnageJob {
  readonly reckoned: ReckonedTonnage;
  /** a sentence each: what the tonnes leave out or rest on */
  readonly notes: readonly string[];
}

/** Tonnes by pour and size over the schedules of books, each by its own book's standard. */
export function tonnageOf(books: readonly Pick<ReadBook, "schedules" | "standard">[]): TonnageJob {
  const schedules = books.flatMap(({ schedules: own, standard }) =>
    own.map((schedule) => ({ ...schedule, standard })),
  );
  const [first] = books;
  if (first === undefined) throw new RangeError("a job has one book or more");
  const reckoned = reckonTonnage(schedules, first.standard);
  return { reckoned, notes: tonnageNotes(reckoned) };
}
