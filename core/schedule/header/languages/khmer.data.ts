import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Khmer. */
export const KHMER: LanguageWords = {
  language: "Khmer",
  cite: { document: "column headings of bar schedules in Khmer", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["លេខសម្គាល់"] },
    { kind: "shape", words: ["រូបរាង", "ទម្រង់"] },
    { kind: "remark", words: ["កំណត់សម្គាល់", "ផ្សេងៗ"] },
    { kind: "ignored", words: ["ល រ", "លេខរៀង"] },
  ],
  parts: {
    count: ["ចំនួន"],
    total: ["សរុប"],
    length: ["ប្រវែង"],
    mass: ["ទម្ងន់", "ទំងន់"],
    size: ["មុខកាត់", "អង្កត់ផ្ចិត"],
    bar: ["ដែក", "ដើម", "សរសៃ"],
    one: ["មួយ"],
    metre: ["ម៉ែត្រ"],
  },
  rows: [{ use: "total", words: ["សរុប"] }],
};
