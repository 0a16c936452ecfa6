import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Uzbek. */
export const UZBEK: LanguageWords = {
  language: "Uzbek",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["pozitsiya", "belgi"] },
    { kind: "shape", words: ["shakl", "shakli", "eskiz"] },
    { kind: "grade", words: ["sinf", "sinfi"] },
    { kind: "remark", words: ["izoh"] },
    { kind: "spacing", words: ["qadam", "qadami"] },
  ],
  parts: {
    count: ["soni", "dona", "miqdori"],
    member: ["elementda", "elementning"],
    total: ["jami", "umumiy"],
    length: ["uzunligi", "uzunlik"],
    mass: ["massasi", "vazni", "og irligi"],
    size: ["diametri"],
    one: ["bitta", "birlik"],
    metre: ["metri"],
    bar: ["sterjen", "armatura"],
  },
  rows: [{ use: "total", words: ["jami"] }],
};
