import type { LanguageWords } from "../language-words";

/** Column headings, Polish. */
export const POLISH: LanguageWords = {
  language: "Polish",
  provenance: "common practice",
  columns: [
    { kind: "former", words: ["trzpien", "srednica trzpienia", "sr trzpienia", "srednica giecia"] },
    { kind: "member", words: ["nazwa elementu", "element konstrukcji", "pozycja konstrukcji"] },
    { kind: "mark", words: ["nr preta", "numer preta", "nr poz", "pozycja"] },
    { kind: "size", words: ["srednica", "srednica preta", "sr preta"] },
    { kind: "members", words: ["liczba elementow", "ilosc elementow", "liczba elementow szt", "krotnosc"] },
    {
      kind: "each",
      words: [
        "liczba w elemencie",
        "liczba w jednym elemencie",
        "ilosc w elemencie",
        "liczba pretow w elemencie",
        "liczba pretow w jednym elemencie",
        "szt w elemencie",
      ],
    },
    {
      kind: "total",
      words: [
        "liczba pretow",
        "ilosc pretow",
        "liczba ogolem",
        "ilosc ogolem",
        "liczba szt",
        "ilosc szt",
        "liczba sztuk",
        "liczba calkowita",
        "razem szt",
      ],
    },
    { kind: "length", words: ["dlugosc", "dlugosc preta", "dl preta", "dlugosc jednego preta"] },
    {
      kind: "totalLength",
      words: ["dlugosc ogolna", "dlugosc calkowita", "laczna dlugosc", "dlugosc laczna", "dlugosc ogolem"],
    },
    { kind: "shape", words: ["ksztalt", "szkic", "ksztalt preta", "schemat"] },
    {
      kind: "mass",
      words: ["masa", "masa calkowita", "ciezar", "waga", "masa ogolem", "masa pretow", "masa ogolna"],
    },
    {
      kind: "unitMass",
      words: ["masa jednostkowa", "masa preta", "ciezar jednostkowy", "masa kg/m", "masa m preta", "masa m"],
    },
    { kind: "grade", words: ["klasa stali", "gatunek stali", "stal", "gatunek"] },
    { kind: "spacing", words: ["rozstaw"] },
    { kind: "pour", words: ["betonowanie", "etap betonowania", "dzialka robocza"] },
    { kind: "pour", words: ["etap"], weak: true },
    { kind: "remark", words: ["uwagi", "uwaga"] },
  ],
  parts: {
    count: ["liczba", "ilosc", "szt", "sztuk"],
    member: ["element", "elementow", "elemencie", "elementu", "elementy"],
    total: ["calkowita", "calkowity", "razem", "ogolem", "laczna", "laczny", "ogolna"],
    length: ["dlugosc", "dlugosci", "dl"],
    mass: ["masa", "ciezar", "waga"],
    size: ["srednica"],
    per: ["w", "na", "z"],
    one: ["jednego", "jeden", "jednej", "jednym"],
    metre: ["metr", "metra", "mb"],
    bar: ["preta", "pretow", "prety", "pret", "stali"],
  },
  rows: [
    { use: "total", words: ["ogółem", "ogołem", "łącznie", "łacznie", "razem", "suma"] },
    { use: "members-said", words: ["szt", "sztuk", "sztuki", "kpl", "ilosc", "liczba"] },
    { use: "running-metres", words: ["mb", "m.b", "metr biezacy", "metry biezace"] },
    { use: "carried", words: ["do przeniesienia", "z przeniesienia", "przeniesienie"] },
    { use: "subtotal", words: ["suma czesciowa", "suma strony"] },
  ],
};
