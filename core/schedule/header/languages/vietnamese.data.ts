import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Vietnamese. */
export const VIETNAMESE: LanguageWords = {
  language: "Vietnamese",
  provenance: "memory",
  columns: [
    { kind: "former", words: ["duong kinh uon"] },
    { kind: "mark", words: ["so hieu", "ky hieu", "so hieu thanh"] },
    { kind: "member", words: ["ten cau kien", "cau kien", "bo phan"] },
    { kind: "shape", words: ["hinh dang", "hinh dang kich thuoc", "quy cach", "kich thuoc"] },
    { kind: "ignored", words: ["stt", "tt"] },
    { kind: "pour", words: ["dot do", "dot do be tong", "phan doan do"] },
    { kind: "remark", words: ["ghi chu"] },
    { kind: "spacing", words: ["khoang cach", "buoc"] },
    { kind: "grade", words: ["loai thep", "nhom thep", "mac thep"] },
  ],
  parts: {
    count: ["so luong", "sl", "so thanh", "so"],
    member: ["c k", "cau kien", "ck", "bo phan"],
    total: ["t bo", "tong", "toan bo", "tong cong", "t bo"],
    length: ["chieu dai", "dai", "c dai"],
    mass: ["trong luong", "khoi luong", "tl", "kl"],
    size: ["duong kinh", "dk", "phi"],
    per: ["trong", "moi"],
    one: ["mot", "thanh"],
    metre: ["met"],
    bar: ["thep", "cot thep"],
  },
  rows: [
    { use: "carried", words: ["mang sang", "chuyen trang"] },
    { use: "total", words: ["tong", "tong cong", "tong khoi luong", "tong trong luong", "cong"] },
    { use: "members-said", words: ["sl", "so luong", "cai"] },
    { use: "running-metres", words: ["md", "m dai", "met dai"] },
    { use: "subtotal", words: ["cong trang"] },
  ],
};
