import type { LanguageWords } from "../language-words";

/** Column headings, Nordic. */
export const NORDIC: LanguageWords = {
  language: "Nordic",
  provenance: "common practice",
  columns: [
    { kind: "member", words: ["bygningsdel", "byggdel", "konstruktionsdel", "konstruksjon", "staður"] },
    { kind: "mark", words: ["littera", "littra", "lnr", "pos nr", "stang nr", "merke", "numer"] },
    { kind: "size", words: ["dim", "diameter", "stangdiameter"] },
    {
      kind: "total",
      words: ["stk", "totalt antal", "totalt antall", "antal i alt", "antall i alt", "antal ialt"],
    },
    {
      kind: "length",
      words: ["langd", "lengde", "klipplangd", "kappelengde", "laengde", "klippelaengde"],
    },
    {
      kind: "totalLength",
      words: [
        "total langd",
        "total lengde",
        "total laengde",
        "samlet laengde",
        "totallangd",
        "totallengde",
        "heildarlengd",
      ],
    },
    {
      kind: "shape",
      words: [
        "bockningstyp",
        "boyetype",
        "bojetype",
        "bukketype",
        "formkode",
        "bøyetype",
        "bøyeform",
        "bøjetype",
        "bukkeform",
      ],
    },
    {
      kind: "mass",
      words: ["vikt", "vekt", "vaegt", "total vikt", "total vekt", "samlet vaegt", "heildarþyngd"],
    },
    { kind: "former", words: ["dorn", "dorndiameter", "bukkedorn", "bockdorn"] },
    { kind: "grade", words: ["stalsort", "kvalitet", "stalkvalitet", "armeringstype"] },
    { kind: "pour", words: ["gjutetapp", "gjutning", "støp", "støpeetappe", "støbeetape", "støbning"] },
    { kind: "pour", words: ["etapp", "etappe", "etape"], weak: true },
    { kind: "remark", words: ["anmarkning", "merknad", "bemaerkning", "anm", "bem", "athugasemd"] },
  ],
  parts: {
    size: ["þvermal", "stærð"],
    count: ["antal", "antall", "stk", "ant", "fjoldi"],
    member: ["element", "elementer", "del", "dele"],
    total: ["totalt", "samlet", "sum", "heildar", "alls", "tot"],
    length: ["langd", "langder", "lengde", "lengder", "laengde", "laengder", "lengd", "lengdir"],
    mass: ["vikt", "vekt", "vaegt", "masse", "þyngd"],
    per: ["per", "pr", "i"],
    one: ["enkelt", "en"],
    metre: ["meter", "lm"],
    bar: ["jarn", "stang", "stanger", "klipp", "kapp"],
  },
  rows: [
    { use: "total", words: ["i alt", "ialt", "samlet", "samtals", "sum", "totalsum", "alls"] },
    { use: "members-said", words: ["stk", "antal", "antall"] },
    {
      use: "running-metres",
      words: [
        "lpm",
        "lopmeter",
        "lopande m",
        "lopande meter",
        "lobende m",
        "lobende meter",
        "løbende m",
        "løbende meter",
        "lopemeter",
        "løpemeter",
        "lm",
      ],
    },
    { use: "carried", words: ["transport", "overfort", "overfores", "overfors", "overført", "overføres"] },
    { use: "subtotal", words: ["delsum", "delsumma"] },
  ],
};
