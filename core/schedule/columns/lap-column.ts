import type { TableReading } from "../bar-row";
import { isWord, plainWords } from "../cells/row-words";

/** The column that says what of each length is lap; null where the table has none. */
export function lapColumn({ unknownHeaders = [] }: TableReading): number | null {
  const found = unknownHeaders.find(({ header }) => isWord("lap", plainWords(header.replace(/[([].*$/, ""))));
  return found?.column ?? null;
}
