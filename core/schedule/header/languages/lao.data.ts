import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Lao. */
export const LAO: LanguageWords = {
  language: "Lao",
  cite: { document: "column headings of bar schedules in Lao", provenance: "memory" },
  columns: [
    { kind: "mark", words: ["ເຄື່ອງໝາຍ"] },
    { kind: "shape", words: ["ຮູບຮ່າງ", "ຮູບແບບ"] },
    { kind: "remark", words: ["ໝາຍເຫດ"] },
    { kind: "ignored", words: ["ລຳດັບ"] },
  ],
  parts: {
    count: ["ຈຳນວນ"],
    total: ["ລວມ", "ທັງໝົດ"],
    length: ["ຄວາມຍາວ", "ຍາວ"],
    mass: ["ນ້ຳໜັກ"],
    size: ["ຂະໜາດ", "ເສັ້ນຜ່າສູນກາງ"],
    bar: ["ເຫຼັກ", "ເສັ້ນ"],
    per: ["ຕໍ່"],
    metre: ["ແມັດ"],
  },
  rows: [{ use: "total", words: ["ລວມ"] }],
};
