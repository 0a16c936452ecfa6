import type { LanguageWords } from "../language-words";

/** Column headings, Romanian and Hungarian. */
export const ROMANIAN_AND_HUNGARIAN: LanguageWords = {
  language: "Romanian and Hungarian",
  provenance: "common practice",
  columns: [
    {
      kind: "former",
      words: [
        "dorn",
        "diametru dorn",
        "mandrina",
        "diametrul dornului",
        "tuske",
        "hajlitotuske",
        "tuskeatmero",
      ],
    },
    {
      kind: "grade",
      words: ["acelminoseg", "minoseg", "anyag", "otel", "calitate", "calitate otel", "tip otel"],
    },
    { kind: "mark", words: ["marca", "tetelszam", "jel"] },
    { kind: "size", words: ["diametru", "diametrul", "atmero"] },
    { kind: "total", words: ["nr buc"] },
    { kind: "length", words: ["lungime", "lungimea", "hossz", "hosszusag"] },
    { kind: "length", words: ["lungime desfasurata", "lungime desf", "kiteritett hossz"] },
    { kind: "totalLength", words: ["lungime totala", "osszes hossz"] },
    { kind: "mass", words: ["masa totala", "greutate", "tomeg"] },
    { kind: "mark", words: ["marca", "pozitie", "nr marca"] },
    { kind: "shape", words: ["forma", "alak", "schita"] },
    { kind: "pour", words: ["turnare", "etapa de turnare", "betonozas", "betonozasi utem"] },
    { kind: "pour", words: ["etapa", "utem"], weak: true },
    { kind: "remark", words: ["observatii", "megjegyzes", "megj"] },
    { kind: "spacing", words: ["distanta", "kiosztas", "osztas", "osztaskoz"] },
    { kind: "member", words: ["element", "szerkezet"] },
  ],
  parts: {
    count: ["numar", "buc", "bucati", "cantitate", "db", "darab", "darabszam", "mennyiseg"],
    member: ["element", "elemente", "elem", "szerkezet", "el", "elemek", "elemszam", "elementelor"],
    total: ["total", "totala", "ossz", "osszes", "osszesen"],
    length: ["lungime", "lungimea", "lungimi", "hossz", "hosszusag"],
    mass: ["masa", "greutate", "tomeg", "suly"],
    size: ["diametru", "atmero"],
    per: ["pe"],
    one: ["unitara", "unei", "egy", "egyedi"],
    metre: ["metru", "fm", "folyometer"],
    bar: ["bara", "bare", "vas", "acelbetet", "szal"],
  },
  rows: [
    { use: "total", words: ["mindosszesen", "osszesen", "total general"] },
    { use: "members-said", words: ["buc", "bucati", "db", "darab"] },
    { use: "running-metres", words: ["ml", "m.l", "fm", "folyometer", "metri liniari"] },
    { use: "carried", words: ["reportat", "de reportat", "atvitel", "athozat"] },
    { use: "subtotal", words: ["reszosszeg", "total partial"] },
  ],
};
