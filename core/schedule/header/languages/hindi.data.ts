import type { LanguageWords } from "../language-words";

/** Column headings, Hindi, with Nepali and Marathi. */
export const HINDI: LanguageWords = {
  language: "Hindi, Nepali and Marathi",
  provenance: "common practice",
  columns: [
    { kind: "spacing", words: ["दूरी", "अंतर"] },
    { kind: "grade", words: ["ग्रेड"] },
    { kind: "ignored", words: ["क्र सं"] },
    { kind: "member", words: ["सदस्य"] },
    { kind: "mark", words: ["चिह्न", "चिन्ह"] },
    { kind: "size", words: ["व्यास"] },
    { kind: "total", words: ["कुल संख्या"] },
    { kind: "length", words: ["लंबाई", "लम्बाई"] },
    { kind: "shape", words: ["आकार"] },
    { kind: "mass", words: ["वजन", "भार"] },
    { kind: "pour", words: ["ढलाई"] },
    { kind: "remark", words: ["टिप्पणी", "कैफियत", "शेरा"] },
    { kind: "mark", words: ["क्रम"] },
  ],
  parts: {
    metre: ["मीटर"],
    count: ["संख्या", "नग", "थान"],
    member: ["सदस्य"],
    total: ["कुल", "जम्मा", "एकूण"],
    length: ["लंबाई", "लम्बाई", "लम्बाइ", "लांबी"],
    mass: ["वजन", "भार", "तौल"],
    size: ["व्यास"],
    per: ["प्रति"],
    one: ["प्रत्येक", "एक"],
    bar: ["छड़", "सरिया", "की", "रॉड"],
  },
  rows: [
    { use: "total", words: ["योग", "जम्मा"] },
    { use: "subtotal", words: ["उप योग", "पृष्ठ योग"] },
  ],
};
