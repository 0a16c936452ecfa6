import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Kazakh. */
export const KAZAKH: LanguageWords = {
  language: "Kazakh",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["белгі", "белгісі"] },
    { kind: "shape", words: ["нобай", "пішіні"] },
    { kind: "grade", words: ["класы", "сыныбы"] },
    { kind: "remark", words: ["ескерту", "ескертпе"] },
    { kind: "spacing", words: ["қадам", "қадамы"] },
  ],
  parts: {
    count: ["саны", "дана"],
    member: ["элементтің", "элементке", "құрылым"],
    total: ["барлығы", "жалпы", "жиыны"],
    length: ["ұзындығы", "ұзындық"],
    mass: ["массасы", "салмағы"],
    size: ["диаметрі"],
    one: ["бір", "бірлік", "бірлігінің", "бірінің"],
    metre: ["метрінің", "метрдің"],
    bar: ["арматураның", "өзек", "өзектің", "шыбық"],
  },
  rows: [{ use: "total", words: ["барлығы", "жиыны"] }],
};
