import { LANGUAGES } from "./all-languages";
import type { HeaderWords } from "./language-words";

/** The header words of all languages, in the order in which they are tried. */
export const HEADER_WORD_ROWS: readonly HeaderWords[] = LANGUAGES.flatMap(({ columns }) => columns);
