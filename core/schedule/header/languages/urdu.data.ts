import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Urdu. */
export const URDU: LanguageWords = {
  language: "Urdu",
  cite: { document: "column headings of bar schedules in Urdu", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["نشان"] },
    { kind: "remark", words: ["کیفیت"] },
  ],
  parts: {
    total: ["میزان", "ٹوٹل"],
    length: ["لمبائی"],
    bar: ["سریا", "سریے", "سلاخ"],
    per: ["فی"],
    one: ["ایک"],
  },
  rows: [{ use: "total", words: ["میزان", "کل میزان", "ٹوٹل"] }],
};
