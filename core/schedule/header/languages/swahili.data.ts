import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Swahili. */
export const SWAHILI: LanguageWords = {
  language: "Swahili",
  cite: { document: "column headings of bar schedules in Swahili", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["alama"] },
    { kind: "shape", words: ["umbo"] },
    { kind: "remark", words: ["maelezo"] },
    { kind: "spacing", words: ["nafasi"] },
  ],
  parts: {
    count: ["idadi"],
    member: ["sehemu"],
    total: ["jumla"],
    length: ["urefu"],
    mass: ["uzito"],
    size: ["kipenyo"],
    per: ["kwa"],
    one: ["moja", "kila"],
    metre: ["mita"],
    bar: ["nondo", "ya", "wa"],
  },
  rows: [{ use: "total", words: ["jumla"] }],
};
