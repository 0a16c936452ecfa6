import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Persian. */
export const PERSIAN: LanguageWords = {
  language: "Persian",
  provenance: "memory",
  columns: [
    { kind: "grade", words: ["نوع فولاد", "رده", "نوع میلگرد"] },
    { kind: "mark", words: ["شماره", "پوزیسیون", "پوزیشن", "پوزیشن میلگرد", "تیپ", "شماره تیپ", "علامت"] },
    { kind: "member", words: ["المان", "عضو", "موقعیت"] },
    { kind: "shape", words: ["شکل", "فرم"] },
    { kind: "pour", words: ["بتن ریزی", "مرحله بتن ریزی"] },
    { kind: "remark", words: ["توضیحات", "ملاحظات"] },
    { kind: "spacing", words: ["فاصله"] },
    { kind: "ignored", words: ["ردیف"] },
  ],
  parts: {
    count: ["تعداد"],
    member: ["المان", "قطعه", "عضو"],
    total: ["کل", "جمع", "مجموع"],
    length: ["طول"],
    mass: ["وزن"],
    size: ["قطر", "سایز", "نمره"],
    per: ["در", "هر"],
    one: ["واحد", "یک"],
    metre: ["متر"],
    bar: ["میلگرد", "شاخه"],
  },
  rows: [
    { use: "subtotal", words: ["جمع صفحه", "جمع جزء"] },
    { use: "total", words: ["جمع", "جمع کل", "مجموع"] },
    { use: "members-said", words: ["عدد", "تعداد"] },
    { use: "running-metres", words: ["متر طول"] },
    { use: "carried", words: ["نقل به صفحه بعد", "نقل از صفحه قبل"] },
  ],
};
