import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Finnish. */
export const FINNISH: LanguageWords = {
  language: "Finnish",
  provenance: "memory",
  columns: [
    { kind: "former", words: ["tela", "taivutustela", "telan halkaisija", "taivutushalkaisija"] },
    { kind: "mark", words: ["positio", "tunnus", "merkki"] },
    { kind: "member", words: ["rakenneosa", "rakenne"] },
    { kind: "shape", words: ["muoto", "tyyppi", "taivutustyyppi"] },
    { kind: "totalLength", words: ["kokonaispituus"] },
    { kind: "mass", words: ["kokonaispaino", "kokonaismassa", "paino", "massa"] },
    { kind: "unitMass", words: ["metripaino"] },
    { kind: "pour", words: ["valu", "valulohko", "valuvaihe", "valuosa"] },
    { kind: "pour", words: ["lohko"], weak: true },
    { kind: "remark", words: ["huomautus", "huom"] },
    { kind: "spacing", words: ["jako", "k jako", "k/k", "jako k/k", "k-jako"] },
    { kind: "grade", words: ["teraslaji", "laatu", "luokka", "terasluokka"] },
    { kind: "length", words: ["katkaisupituus", "leikkauspituus"] },
    { kind: "members", words: ["osia", "osien maara"] },
    { kind: "size", words: ["tangon ø"] },
  ],
  parts: {
    count: ["kpl", "maara", "lkm", "kappaletta"],
    member: ["osa", "elementti", "rakenneosa", "elem", "osan"],
    total: ["yhteensa", "yht", "kokonais"],
    length: ["pituus", "kokonaispituus"],
    mass: ["paino"],
    size: ["halkaisija"],
    one: ["yksikko"],
    metre: ["metri"],
    bar: ["terastanko", "tanko", "tangon", "teras"],
  },
  rows: [
    { use: "total", words: ["yhteensa", "yht", "summa"] },
    { use: "members-said", words: ["kpl"] },
    { use: "running-metres", words: ["jm", "juoksumetri", "juoksumetria"] },
    { use: "carried", words: ["siirto", "siirretaan"] },
    { use: "subtotal", words: ["valisumma"] },
  ],
};
