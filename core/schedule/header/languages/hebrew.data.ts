import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Hebrew. */
export const HEBREW: LanguageWords = {
  language: "Hebrew",
  provenance: "memory",
  columns: [
    { kind: "former", words: ["קוטר כיפוף", "קוטר פין"] },
    { kind: "grade", words: ["סוג פלדה", "סוג ברזל"] },
    { kind: "mark", words: ["מס פריט", "פריט", "סימון"] },
    { kind: "member", words: ["אלמנט", "רכיב"] },
    { kind: "shape", words: ["צורה"] },
    { kind: "pour", words: ["יציקה", "שלב יציקה", "מספר יציקה"] },
    { kind: "remark", words: ["הערות"] },
    { kind: "spacing", words: ["מרווח", "פסיעה", "מרחק"] },
    { kind: "ignored", words: ["מס", "שורה"] },
    { kind: "unitMass", words: ["משקל למטר"] },
  ],
  parts: {
    count: ["כמות", "יחידות", "יח", "מספר"],
    member: ["אלמנט", "אלמנטים", "רכיב"],
    total: ["סה כ", "כולל", "כללי"],
    length: ["אורך"],
    mass: ["משקל"],
    size: ["קוטר"],
    per: ["ל", "ב", "לכל"],
    one: ["יחידה"],
    metre: ["מטר"],
    bar: ["מוט", "מוטות", "ברזל"],
  },
  rows: [
    { use: "subtotal", words: ["סיכום ביניים"] },
    { use: "total", words: ['סה"כ', "סה״כ", "סה כ", "סהכ", "סיכום"] },
    { use: "members-said", words: ["יח", "יחידות", "כמות"] },
    { use: "carried", words: ["להעברה", "מהעברה"] },
  ],
};
