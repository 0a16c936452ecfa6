/** Words before a yield that mean no more than "steel of this yield": common practice. */
export const GRADE_WORDS: readonly string[] = ["", "GRADE", "GR", "G", "HYSD", "TMT", "TOR"];

/**
 * Older spellings and the present one: DIN 488 of 1984 and DIN 1045-1 write "BSt 500 S (B)" where EN 1992
 * writes B500B; S is bar and M mesh, and neither says the ductility. From memory.
 */
export const GRADE_SPELLINGS: readonly { readonly written: string; readonly read: string }[] = [
  { written: "^BST(\\d{3})[SM]?([ABC]?)$", read: "B$1$2" },
  // Norway and Sweden put a letter of their own before or behind the class
  { written: "^B(\\d{3})N([ABC])$", read: "B$1$2" },
  { written: "^K(\\d{3})([ABC])?T?$", read: "B$1$2" },
  // JIS G 3112 dropped its A and B of SD295 in 2020
  { written: "^SD295[AB]$", read: "SD295" },
];
