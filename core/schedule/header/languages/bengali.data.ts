import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Bengali. */
export const BENGALI: LanguageWords = {
  language: "Bengali",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["চিহ্ন"] },
    { kind: "shape", words: ["আকৃতি"] },
    { kind: "remark", words: ["মন্তব্য"] },
    { kind: "spacing", words: ["দূরত্ব"] },
    { kind: "ignored", words: ["ক্রমিক", "ক্রমিক নং"] },
  ],
  parts: {
    count: ["সংখ্যা", "পরিমাণ"],
    member: ["অংশ", "সদস্য"],
    total: ["মোট", "সর্বমোট"],
    length: ["দৈর্ঘ্য"],
    mass: ["ওজন"],
    size: ["ব্যাস"],
    per: ["প্রতি"],
    one: ["প্রতিটি"],
    metre: ["মিটার"],
    bar: ["রড", "রডের"],
  },
  rows: [{ use: "total", words: ["মোট"] }],
};
