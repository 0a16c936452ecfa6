import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Burmese. */
export const BURMESE: LanguageWords = {
  language: "Burmese",
  cite: { document: "column headings of bar schedules in Burmese", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["အမှတ်"] },
    { kind: "shape", words: ["ပုံစံ"] },
    { kind: "remark", words: ["မှတ်ချက်"] },
    { kind: "ignored", words: ["စဉ်"] },
  ],
  parts: {
    count: ["အရေအတွက်"],
    total: ["စုစုပေါင်း"],
    length: ["အရှည်", "အလျား"],
    mass: ["အလေးချိန်"],
    size: ["အချင်း", "အရွယ်အစား"],
    bar: ["သံချောင်း", "ချောင်း"],
  },
  rows: [{ use: "total", words: ["စုစုပေါင်း"] }],
};
