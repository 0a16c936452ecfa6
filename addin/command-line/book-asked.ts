import type { JobQuestion } from "../../core/jobs";
import { columnsGiven } from "./columns-given";
import { InputRefused } from "./input-refused";
import { type BookFile, openBook } from "./open-book";
import type { GivenOptions } from "./read-options";
import { ownOfFile } from "./standard-for";
import type { Streams } from "./streams";

/** The one book that a command names, opened, and what its options ask; `refuse` looks at its targets before. */
export function bookAsked(
  given: GivenOptions,
  streams: Streams,
  refuse: (path: string) => void = () => undefined,
): { readonly path: string; readonly book: BookFile; readonly question: JobQuestion } {
  const [path, more] = given.positionals;
  if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
  refuse(path);
  return {
    path,
    book: openBook(path),
    question: {
      sheet: given.text("sheet"),
      standard: given.text("standard"),
      own: ownOfFile(given, streams),
      columns: columnsGiven(given.texts("read") ?? []),
    },
  };
}
