import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Azerbaijani. */
export const AZERBAIJANI: LanguageWords = {
  language: "Azerbaijani",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["movqe"] },
    { kind: "grade", words: ["sinif", "sinfi"] },
    { kind: "remark", words: ["qeyd"] },
    { kind: "spacing", words: ["addim"] },
  ],
  parts: {
    count: ["sayi", "miqdari", "ədəd"],
    member: ["elementin", "elementdə"],
    total: ["umumi", "cəmi"],
    length: ["uzunluq"],
    mass: ["kutləsi", "kutlə", "cəkisi", "cəki"],
    size: ["diametr", "diametri"],
    one: ["vahidin"],
    metre: ["metrin"],
    bar: ["armaturun", "cubuq", "milin"],
  },
  rows: [{ use: "total", words: ["cəmi", "yekun"] }],
};
