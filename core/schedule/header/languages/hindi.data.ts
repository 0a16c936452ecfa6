import type { LanguageWords } from "../language-words";

/** Column headings, Hindi. */
export const HINDI: LanguageWords = {
  language: "Hindi",
  cite: { document: "column headings of bar schedules in Hindi", provenance: "common practice" },
  columns: [
    { kind: "member", words: ["सदस्य"] },
    { kind: "mark", words: ["चिह्न"] },
    { kind: "size", words: ["व्यास"] },
    { kind: "total", words: ["कुल संख्या"] },
    { kind: "length", words: ["लंबाई", "लम्बाई"] },
    { kind: "shape", words: ["आकार"] },
    { kind: "mass", words: ["वजन", "भार"] },
    { kind: "pour", words: ["ढलाई"] },
    { kind: "remark", words: ["टिप्पणी"] },
    { kind: "mark", words: ["क्रम"] },
  ],
  parts: {
    count: ["संख्या", "नग"],
    member: ["सदस्य"],
    total: ["कुल"],
    length: ["लंबाई", "लम्बाई"],
    mass: ["वजन", "भार"],
    size: ["व्यास"],
    per: ["प्रति"],
    one: ["प्रत्येक", "एक"],
    bar: ["छड़", "सरिया", "की"],
  },
};
