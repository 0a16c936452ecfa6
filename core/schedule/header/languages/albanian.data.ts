import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Albanian. */
export const ALBANIAN: LanguageWords = {
  language: "Albanian",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["pozicioni", "shenja"] },
    { kind: "shape", words: ["skica"] },
    { kind: "grade", words: ["klasa"] },
    { kind: "remark", words: ["shenime", "verejtje"] },
    { kind: "spacing", words: ["hapi", "distanca"] },
  ],
  parts: {
    count: ["numri", "cope", "sasia", "nr"],
    member: ["elementi", "elementeve", "elementit", "elem"],
    total: ["gjithsej", "totale", "totali"],
    length: ["gjatesia"],
    mass: ["pesha"],
    size: ["diametri"],
    per: ["ne", "per"],
    one: ["nje", "njesi", "njesise"],
    metre: ["meter"],
    bar: ["shufra", "shufres", "hekuri", "hekurit", "e", "i"],
  },
  rows: [{ use: "total", words: ["gjithsej", "shuma"] }],
};
