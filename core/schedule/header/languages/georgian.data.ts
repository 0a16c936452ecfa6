import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Georgian. */
export const GEORGIAN: LanguageWords = {
  language: "Georgian",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["პოზ", "პოზიცია"] },
    { kind: "shape", words: ["ესკიზი", "ფორმა"] },
    { kind: "grade", words: ["კლასი"] },
    { kind: "remark", words: ["შენიშვნა"] },
    { kind: "spacing", words: ["ბიჯი"] },
  ],
  parts: {
    count: ["რაოდენობა", "რაოდ", "ცალი", "ც"],
    member: ["ელემენტი", "ელემენტის", "ელემენტზე"],
    total: ["სულ", "საერთო", "ჯამი"],
    length: ["სიგრძე"],
    mass: ["მასა", "წონა"],
    size: ["დიამეტრი"],
    one: ["ერთი", "ერთის", "ერთეულის"],
    metre: ["მეტრის", "გრძ"],
    bar: ["ღერო", "ღეროს", "არმატურის"],
  },
  rows: [{ use: "total", words: ["სულ", "ჯამი"] }],
};
