import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Baltic. */
export const BALTIC: LanguageWords = {
  language: "Baltic",
  provenance: "memory",
  columns: [
    { kind: "former", words: ["painutustorn", "lenkimo skersmuo", "lieksanas diametrs", "liecena diametrs"] },
    { kind: "mass", words: ["kogumass"] },
    { kind: "totalLength", words: ["kogupikkus"] },
    { kind: "mark", words: ["pozicija", "positsioon", "zymuo"] },
    { kind: "member", words: ["elementas", "konstrukcija"] },
    { kind: "shape", words: ["forma", "kuju", "eskizas"] },
    { kind: "pour", words: ["betonavimas", "betonavimo etapas", "betonesana", "betoneerimine"] },
    { kind: "remark", words: ["pastabos", "piezimes", "markused", "markus"] },
    { kind: "spacing", words: ["zingsnis", "solis", "samm"] },
    { kind: "grade", words: ["klase", "klass", "plieno klase"] },
  ],
  parts: {
    count: ["kiekis", "vnt", "skaits", "gab", "arv", "tk", "kogus"],
    member: ["elementas", "elementui", "elements", "elementa", "element", "elem"],
    total: ["bendras", "viso", "kopejais", "kopa", "kokku"],
    length: ["ilgis", "garums", "pikkus"],
    mass: ["mase", "svoris", "svars", "kaal"],
    size: ["skersmuo", "diametrs", "labimoot"],
    one: ["vieno", "viena", "uhe"],
    metre: ["metro", "metra"],
    bar: ["strypo", "strypu", "stiena", "stienu", "varda", "varras"],
  },
  rows: [
    { use: "carried", words: ["perkelta", "parnests", "ule kantud"] },
    { use: "subtotal", words: ["tarpine suma", "starpsumma", "vahesumma"] },
    { use: "total", words: ["is viso", "viso", "kopa", "kokku"] },
    { use: "members-said", words: ["vnt", "gab", "tk"] },
    { use: "running-metres", words: ["tm", "t.m"] },
  ],
};
