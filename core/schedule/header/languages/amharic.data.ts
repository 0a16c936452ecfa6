import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Amharic. */
export const AMHARIC: LanguageWords = {
  language: "Amharic",
  cite: { document: "column headings of bar schedules in Amharic", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["ምልክት"] },
    { kind: "shape", words: ["ቅርጽ"] },
    { kind: "remark", words: ["ምርመራ"] },
  ],
  parts: {
    count: ["ብዛት"],
    total: ["ጠቅላላ", "ድምር"],
    length: ["ርዝመት"],
    mass: ["ክብደት"],
    size: ["ዲያሜትር", "ውፍረት"],
    bar: ["ብረት", "የብረት"],
    one: ["አንድ"],
  },
  rows: [{ use: "total", words: ["ድምር", "ጠቅላላ"] }],
};
