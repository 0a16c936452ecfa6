import type { LanguageWords } from "../language-words";

/** Column headings, Arabic. */
export const ARABIC: LanguageWords = {
  language: "Arabic",
  cite: { document: "column headings of bar schedules in Arabic", provenance: "common practice" },
  columns: [
    { kind: "spacing", words: ["المسافة", "التباعد", "تباعد"] },
    { kind: "grade", words: ["نوع الحديد", "الرتبة", "رتبة الحديد"] },
    { kind: "member", words: ["العنصر", "الموقع", "اسم العنصر"] },
    { kind: "mark", words: ["رقم السيخ", "رقم الحديد", "علامة", "رمز", "رقم القضيب", "رقم التسليح"] },
    { kind: "size", words: ["القطر", "قطر", "قطر السيخ", "قطر الحديد", "قطر التسليح", "قطر القضيب"] },
    { kind: "members", words: ["عدد العناصر"] },
    {
      kind: "each",
      words: ["العدد في كل عنصر", "عدد الاسياخ في العنصر", "العدد في العنصر", "العدد بالعنصر"],
    },
    { kind: "total", words: ["العدد الكلي", "العدد الاجمالي", "اجمالي العدد"] },
    { kind: "length", words: ["طول السيخ", "طول القطع", "طول الحديد", "طول القضيب"] },
    { kind: "shape", words: ["الشكل", "شكل", "رمز الشكل"] },
    { kind: "mass", words: ["الوزن", "وزن", "الوزن الكلي", "الوزن الاجمالي", "اجمالي الوزن"] },
    { kind: "totalLength", words: ["الطول الكلي"] },
    { kind: "pour", words: ["الصبة", "صبة", "رقم الصبة", "مرحلة الصب"] },
    { kind: "remark", words: ["ملاحظات", "ملاحظة"] },
  ],
  parts: {
    count: ["عدد", "العدد", "كميه", "الكميه"],
    member: ["عنصر", "العنصر", "عناصر", "العناصر"],
    total: ["اجمالي", "الاجمالي", "كلي", "الكلي", "مجموع", "المجموع"],
    length: ["طول", "الطول"],
    mass: ["وزن", "الوزن"],
    size: ["قطر", "القطر"],
    per: ["في", "لكل", "بكل"],
    one: ["واحد", "الواحد"],
    metre: ["متر", "المتر"],
    bar: ["سيخ", "اسياخ", "السيخ", "الاسياخ", "حديد", "الحديد", "القضيب", "قضبان", "القطع"],
  },
  rows: [
    { use: "members-said", words: ["عدد"] },
    { use: "running-metres", words: ["م.ط", "م ط", "متر طولي"] },
    { use: "carried", words: ["منقول", "مرحل", "ما قبله"] },
  ],
};
