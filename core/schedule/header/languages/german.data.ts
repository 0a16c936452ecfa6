import type { LanguageWords } from "../language-words";

/** Column headings, German. */
export const GERMAN: LanguageWords = {
  language: "German",
  cite: { document: "column headings of bar schedules in German", provenance: "common practice" },
  columns: [
    { kind: "member", words: ["bauteil", "element", "bauteilbezeichnung", "elementbezeichnung"] },
    { kind: "mark", words: ["pos nr", "positionsnummer", "positions nr", "pos nummer"] },
    {
      kind: "size",
      words: ["durchmesser", "ø", "ds", "stab ø", "stabdurchmesser", "ø ds", "durchm", "ø stab"],
    },
    { kind: "grade", words: ["stahlsorte", "stahlgute", "sorte", "gute"] },
    {
      kind: "members",
      words: [
        "anzahl bauteile",
        "anzahl fertigteile",
        "stuckzahl bauteile",
        "stuckzahl fertigteile",
        "bauteile",
        "anzahl elemente",
      ],
    },
    { kind: "each", words: ["stuck je bauteil", "je bauteil", "anzahl je bauteil", "stk je bauteil"] },
    { kind: "total", words: ["gesamtanzahl", "gesamtstuckzahl"] },
    { kind: "length", words: ["einzellange", "stablange", "schnittlange", "einzel lange", "zuschnittlange"] },
    { kind: "shape", words: ["biegeform", "form", "biegeskizze", "skizze", "formschlussel", "biegetyp"] },
    { kind: "mass", words: ["gewicht", "masse", "gesamtgewicht", "gesamtmasse"] },
    { kind: "pieceMass", words: ["kg/stuck", "kg/stk", "kg je stuck", "masse kg/stuck", "gewicht/stuck"] },
    { kind: "unitMass", words: ["metergewicht", "gewicht je m", "gewicht/m", "einheitsgewicht"] },
    { kind: "totalLength", words: ["gesamtlange", "gesamt lange", "summe lange"] },
    { kind: "spacing", words: ["abstand", "stababstand"] },
    { kind: "former", words: ["biegerolle", "dbr", "biegerollendurchmesser", "biegedorn"] },
    { kind: "coating", words: ["beschichtung"] },
    {
      kind: "pour",
      words: [
        "betonierabschnitt",
        "bauabschnitt",
        "betoniertakt",
        "betonierfolge",
        "lieferabschnitt",
        "abschnitt",
        "lieferung",
      ],
    },
    { kind: "pour", words: ["takt", "bauphase"], weak: true },
    { kind: "revision", words: ["index", "revision"] },
    { kind: "remark", words: ["bemerkung", "bemerkungen", "hinweis", "lage", "anmerkung"] },
  ],
  parts: {
    count: ["anzahl", "stuck", "stk", "st", "stuckzahl", "menge", "anz"],
    member: ["bauteil", "bauteile", "element", "elemente"],
    total: ["gesamt", "summe", "insgesamt", "alle"],
    length: ["lange", "stablange", "schnittlange"],
    mass: ["gewicht", "masse"],
    size: ["durchmesser", "dm", "ds"],
    per: ["je", "pro", "im"],
    one: ["einzel", "ein", "einer"],
    metre: ["meter", "lfm"],
    bar: ["stab", "stabe", "eisen", "stahl"],
  },
  rows: [
    { use: "total", words: ["gesamtgewicht", "gesamtmasse", "gesamtlange", "summe"] },
    { use: "members-said", words: ["stk", "stck", "stuck", "anz", "anzahl"] },
    {
      use: "running-metres",
      words: ["lfm", "lfdm", "lfd m", "lfd.m", "lfd meter", "laufende meter", "laufmeter", "lfd mtr"],
    },
    { use: "carried", words: ["uebertrag", "vortrag", "seitenubertrag", "zu ubertragen"] },
  ],
};
