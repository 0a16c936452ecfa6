import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Mongolian. */
export const MONGOLIAN: LanguageWords = {
  language: "Mongolian",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["байрлал", "дугаар", "марк"] },
    { kind: "shape", words: ["хэлбэр"] },
    { kind: "grade", words: ["анги"] },
    { kind: "remark", words: ["тайлбар"] },
    { kind: "spacing", words: ["алхам"] },
  ],
  parts: {
    count: ["тоо", "ширхэг"],
    member: ["хийц", "элементийн"],
    total: ["нийт", "бүгд"],
    length: ["урт"],
    mass: ["жин", "масс"],
    size: ["голч"],
    one: ["нэг", "нэгж", "нэгжийн"],
    metre: ["метрийн"],
    bar: ["арматурын", "арматур"],
  },
  rows: [{ use: "total", words: ["нийт", "дүн"] }],
};
