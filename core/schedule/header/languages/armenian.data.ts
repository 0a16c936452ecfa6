import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Armenian. */
export const ARMENIAN: LanguageWords = {
  language: "Armenian",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["դիրք", "դիրքը", "պոզ"] },
    { kind: "shape", words: ["էսքիզ", "ձև"] },
    { kind: "grade", words: ["դաս", "դասը"] },
    { kind: "remark", words: ["ծանոթություն", "նշում"] },
    { kind: "spacing", words: ["քայլ"] },
  ],
  parts: {
    count: ["քանակ", "քանակը", "հատ"],
    member: ["տարր", "տարրը", "տարրի", "տարրում"],
    total: ["ընդամենը", "ընդհանուր"],
    length: ["երկարություն", "երկարությունը"],
    mass: ["զանգված", "զանգվածը", "քաշ", "քաշը"],
    size: ["տրամագիծ", "տրամագիծը"],
    one: ["մեկ", "մեկի", "միավորի"],
    metre: ["մետրի"],
    bar: ["ձող", "ձողի", "ամրանի"],
  },
  rows: [{ use: "total", words: ["ընդամենը", "գումար"] }],
};
