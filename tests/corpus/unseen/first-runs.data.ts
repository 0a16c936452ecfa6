/** Of a batch: books, and those whose tonnage was right on the first run and is now; planted mistakes found then and now. */
export interface FirstRun {
  readonly batch:
    | "a"
    | "b"
    | "c"
    | "d"
    | "e"
    | "f"
    | "g"
    | "h"
    | "i"
    | "k"
    | "m"
    | "p"
    | "q"
    | "r"
    | "t"
    | "u"
    | "v"
    | "w"
    | "x"
    | "y"
    | "z"
    | "l"
    | "n"
    | "o"
    | "2"
    | "3"
    | "s"
    | "j"
    | "4"
    | "5"
    | "6"
    | "7"
    | "8"
    | "1"
    | "9"
    | "0"
    | "aa"
    | "bb"
    | "cc"
    | "dd"
    | "gg"
    | "hh"
    | "ee"
    | "ff"
    | "ii"
    | "jj"
    | "kk"
    | "ll"
    | "mm"
    | "nn"
    | "pp"
    | "qq"
    | "rr"
    | "ss"
    | "tt"
    | "uu"
    | "vv";
  readonly books: number;
  /** tonnage within one per cent at the first run, before anybody looked at a book */
  readonly rightFirst: number;
  readonly mistakes: number;
  readonly foundFirst: number;
  /** what stands now: a later run may not fall below it */
  readonly right: number;
  readonly found: number;
  /** books with another tonnage and not a word of it: a later run may not rise above it */
  readonly silent: number;
}

/** Schedules written by people who had not seen the program; each batch was first run before it was looked at. */
export const FIRST_RUNS: readonly FirstRun[] = [
  { batch: "a", books: 26, rightFirst: 15, mistakes: 35, foundFirst: 9, right: 26, found: 34, silent: 0 },
  { batch: "b", books: 10, rightFirst: 4, mistakes: 15, foundFirst: 8, right: 10, found: 14, silent: 0 },
  { batch: "c", books: 10, rightFirst: 3, mistakes: 17, foundFirst: 10, right: 10, found: 17, silent: 0 },
  { batch: "d", books: 10, rightFirst: 2, mistakes: 19, foundFirst: 13, right: 8, found: 19, silent: 0 },
  { batch: "e", books: 10, rightFirst: 5, mistakes: 20, foundFirst: 13, right: 7, found: 20, silent: 0 },
  { batch: "f", books: 10, rightFirst: 8, mistakes: 24, foundFirst: 17, right: 10, found: 24, silent: 0 },
  { batch: "g", books: 10, rightFirst: 9, mistakes: 23, foundFirst: 19, right: 9, found: 22, silent: 0 },
  { batch: "h", books: 20, rightFirst: 10, mistakes: 29, foundFirst: 17, right: 14, found: 28, silent: 0 },
  { batch: "i", books: 20, rightFirst: 16, mistakes: 30, foundFirst: 23, right: 19, found: 30, silent: 0 },
  { batch: "k", books: 19, rightFirst: 19, mistakes: 36, foundFirst: 22, right: 19, found: 35, silent: 0 },
  { batch: "m", books: 20, rightFirst: 16, mistakes: 36, foundFirst: 25, right: 18, found: 35, silent: 0 },
  { batch: "p", books: 20, rightFirst: 15, mistakes: 36, foundFirst: 27, right: 20, found: 36, silent: 0 },
  { batch: "q", books: 20, rightFirst: 15, mistakes: 36, foundFirst: 29, right: 18, found: 35, silent: 0 },
  { batch: "r", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 24, right: 19, found: 36, silent: 0 },
  { batch: "t", books: 20, rightFirst: 15, mistakes: 35, foundFirst: 24, right: 19, found: 34, silent: 0 },
  { batch: "u", books: 20, rightFirst: 15, mistakes: 36, foundFirst: 30, right: 17, found: 36, silent: 0 },
  { batch: "v", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 29, right: 20, found: 36, silent: 0 },
  { batch: "w", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 27, right: 20, found: 34, silent: 0 },
  { batch: "x", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 31, right: 20, found: 36, silent: 0 },
  { batch: "y", books: 20, rightFirst: 17, mistakes: 36, foundFirst: 32, right: 18, found: 36, silent: 0 },
  { batch: "z", books: 20, rightFirst: 17, mistakes: 36, foundFirst: 30, right: 19, found: 36, silent: 0 },
  { batch: "l", books: 20, rightFirst: 17, mistakes: 36, foundFirst: 27, right: 20, found: 36, silent: 0 },
  { batch: "n", books: 20, rightFirst: 17, mistakes: 36, foundFirst: 27, right: 18, found: 36, silent: 0 },
  { batch: "o", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 28, right: 20, found: 35, silent: 0 },
  { batch: "2", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 28, right: 20, found: 36, silent: 0 },
  { batch: "3", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 32, right: 19, found: 35, silent: 0 },
  { batch: "s", books: 20, rightFirst: 16, mistakes: 36, foundFirst: 33, right: 18, found: 34, silent: 0 },
  { batch: "j", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 31, right: 20, found: 33, silent: 0 },
  { batch: "4", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 30, right: 19, found: 31, silent: 0 },
  { batch: "5", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 34, right: 20, found: 34, silent: 0 },
  { batch: "6", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 32, right: 18, found: 35, silent: 0 },
  { batch: "7", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 31, right: 19, found: 36, silent: 0 },
  { batch: "8", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 29, right: 20, found: 34, silent: 0 },
  { batch: "1", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 31, right: 19, found: 32, silent: 0 },
  { batch: "9", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 34, right: 19, found: 36, silent: 0 },
  { batch: "0", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 32, right: 20, found: 35, silent: 0 },
  { batch: "aa", books: 20, rightFirst: 16, mistakes: 36, foundFirst: 28, right: 19, found: 34, silent: 0 },
  { batch: "bb", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 34, right: 19, found: 34, silent: 0 },
  { batch: "cc", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 34, right: 20, found: 36, silent: 0 },
  { batch: "dd", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 33, right: 20, found: 36, silent: 0 },
  { batch: "gg", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 32, right: 19, found: 36, silent: 0 },
  { batch: "hh", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 30, right: 19, found: 36, silent: 0 },
  { batch: "ee", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 35, right: 20, found: 36, silent: 0 },
  { batch: "ff", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 35, right: 20, found: 36, silent: 0 },
  { batch: "ii", books: 20, rightFirst: 16, mistakes: 36, foundFirst: 35, right: 16, found: 35, silent: 0 },
  { batch: "jj", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 32, right: 20, found: 35, silent: 0 },
  { batch: "kk", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 36, right: 20, found: 36, silent: 0 },
  { batch: "ll", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 35, right: 20, found: 35, silent: 0 },
  { batch: "mm", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 33, right: 20, found: 36, silent: 0 },
  { batch: "nn", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 33, right: 20, found: 35, silent: 0 },
  { batch: "pp", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 36, right: 20, found: 36, silent: 0 },
  { batch: "qq", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 35, right: 20, found: 35, silent: 0 },
  { batch: "rr", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 32, right: 20, found: 35, silent: 0 },
  { batch: "ss", books: 20, rightFirst: 18, mistakes: 36, foundFirst: 25, right: 19, found: 36, silent: 0 },
  { batch: "tt", books: 20, rightFirst: 20, mistakes: 36, foundFirst: 32, right: 20, found: 35, silent: 0 },
  { batch: "uu", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 33, right: 20, found: 36, silent: 0 },
  { batch: "vv", books: 20, rightFirst: 19, mistakes: 36, foundFirst: 33, right: 20, found: 35, silent: 0 },
];
