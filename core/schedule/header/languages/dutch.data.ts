import type { LanguageWords } from "../language-words";

/** Column headings, Dutch. */
export const DUTCH: LanguageWords = {
  language: "Dutch",
  cite: { document: "column headings of bar schedules in Dutch", provenance: "common practice" },
  columns: [
    { kind: "member", words: ["onderdeel", "bouwdeel", "constructiedeel"] },
    { kind: "mark", words: ["merk", "positie", "pos nr", "staafmerk", "merknummer"] },
    { kind: "size", words: ["diameter", "kenmiddellijn", "middellijn", "staafdiameter"] },
    { kind: "members", words: ["aantal onderdelen", "aantal elementen", "aantal bouwdelen", "aantal keer"] },
    { kind: "each", words: ["aantal per onderdeel", "per onderdeel", "aantal per element"] },
    { kind: "total", words: ["totaal aantal", "aantal staven", "aantal totaal"] },
    { kind: "length", words: ["lengte", "kniplengte", "staaflengte", "lengte per stuk", "lengte per staaf"] },
    { kind: "totalLength", words: ["totale lengte", "lengte totaal", "totaal lengte"] },
    { kind: "shape", words: ["vorm", "buigvorm", "vormcode", "schets"] },
    { kind: "mass", words: ["gewicht", "massa", "totaal gewicht", "gewicht totaal"] },
    { kind: "unitMass", words: ["gewicht per m", "massa per m", "gewicht per meter"] },
    { kind: "grade", words: ["staalsoort", "kwaliteit", "betonstaal"] },
    { kind: "spacing", words: ["h o h", "hoh", "afstand"] },
    {
      kind: "former",
      words: [
        "buigdoorn",
        "doorn",
        "doorndiameter",
        "buigrol",
        "buigrol ø",
        "buig- rol",
        "buig- rol ø",
        "buigdoorn ø",
      ],
    },
    { kind: "remark", words: ["opmerking", "opmerkingen"] },
  ],
  parts: {
    count: ["aantal", "stuks", "st"],
    member: ["element", "elementen", "onderdeel", "onderdelen", "bouwdeel", "bouwdelen"],
    total: ["totaal", "totale"],
    length: ["lengte"],
    mass: ["gewicht", "massa"],
    size: ["kenmiddellijn"],
    per: ["per"],
    one: ["enkele", "stuk"],
    metre: ["meter"],
    bar: ["staaf", "staven"],
  },
  rows: [
    { use: "members-said", words: ["stuks", "stk", "aantal"] },
    { use: "running-metres", words: ["strekkende meter", "str m", "str.m", "m1"] },
    { use: "carried", words: ["transport", "transporteren", "over te brengen"] },
    { use: "subtotal", words: ["tussentelling", "totaal blad"] },
  ],
};
