import type { LanguageWords } from "../language-words";

/** Column headings, Czech and Slovak. */
export const CZECH_AND_SLOVAK: LanguageWords = {
  language: "Czech and Slovak",
  provenance: "common practice",
  columns: [
    { kind: "former", words: ["trn", "prumer trnu", "priemer trna", "ohybaci trn"] },
    { kind: "member", words: ["konstrukce", "nazev prvku"] },
    { kind: "spacing", words: ["roztec", "vzdalenost"] },
    { kind: "grade", words: ["ocel", "trida oceli"] },
    { kind: "mark", words: ["polozka", "cislo polozky", "pol", "ozn", "znacka", "oznaceni"] },
    { kind: "size", words: ["prumer", "profil", "priemer"] },
    { kind: "total", words: ["pocet kusu", "pocet kusov"] },
    { kind: "length", words: ["delka", "dlzka", "delka prutu"] },
    { kind: "length", words: ["rozvinuta delka", "rozv delka", "rozvinuta dlzka", "rozv dlzka"] },
    { kind: "totalLength", words: ["celkova delka", "celkova dlzka"] },
    { kind: "shape", words: ["tvar"] },
    { kind: "mass", words: ["hmotnost", "celkova hmotnost"] },
    { kind: "pour", words: ["betonaz", "etapa betonaze", "pracovni zaber"] },
    { kind: "pour", words: ["etapa"], weak: true },
    { kind: "remark", words: ["poznamka", "pozn", "poznamky"] },
  ],
  parts: {
    count: ["pocet", "ks", "kusu", "kusov", "mnozstvi"],
    member: ["prvek", "prvku", "prvkov", "prvok", "prvky", "dilec", "dilcu"],
    total: ["celkem", "celkova", "celkovy", "spolu", "celkovo", "celk"],
    length: ["delka", "delky", "dlzka", "dlzky"],
    mass: ["hmotnost", "hmotn"],
    size: ["prumer", "priemer"],
    per: ["na", "v", "pro", "pre"],
    one: ["jednoho", "jedneho", "jednom"],
    metre: ["bm", "metru", "metr"],
    bar: ["pruty", "prutu", "prut", "vlozka", "vlozky"],
  },
  rows: [
    { use: "members-said", words: ["ks", "kusu", "kusy", "kus", "pocet"] },
    { use: "running-metres", words: ["bm", "b.m", "bezny metr", "bezne metry", "bezny meter"] },
    { use: "carried", words: ["prenos", "k prenosu", "prevod", "z prenosu"] },
    { use: "subtotal", words: ["mezisoucet", "medzisucet", "soucet", "sucet"] },
  ],
};
