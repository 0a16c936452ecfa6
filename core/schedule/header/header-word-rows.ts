import { HEADER_WORDS, type HeaderWords } from "./header-words.data";
import { HEADER_WORDS_ABROAD } from "./header-words-abroad.data";

/** The header words of all languages, in the order in which they are tried. */
export const HEADER_WORD_ROWS: readonly HeaderWords[] = [...HEADER_WORDS.rows, ...HEADER_WORDS_ABROAD.rows];
