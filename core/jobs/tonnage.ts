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

type Weighed = Pick<ReadBook, "schedules" | "standard"> & {
  /** of all its bars, where the schedules hold some of them alone */
  readonly tonnage?: Pick<ReckonedTonnage, "beyond">;
};

/** Tonnes by pour and size over the schedules of books, each by its own book's standard. */
export function tonnageOf(books: readonly Weighed[]): TonnageJob {
  const schedules = books.flatMap(({ schedules: own, standard }) =>
    own.map((schedule) => ({ ...schedule, standard })),
  );
  const [first] = books;
  if (first === undefined) throw new RangeError("a job has one book or more");
  const asked = reckonTonnage(schedules, first.standard);
  // what the sums say of the whole is as true of a part
  const ofWhole = books.find(({ tonnage }) => tonnage?.beyond != null)?.tonnage?.beyond;
  const reckoned = { ...asked, beyond: asked.beyond ?? ofWhole ?? null };
  return { reckoned, notes: tonnageNotes(reckoned) };
}
