import type { Cited } from "../standards/citation";

/** Beginnings of words by which a title or note says how long bars are delivered; lower case, without accents. */
export const STATED_LENGTH: Cited<{
  readonly bars: readonly string[];
  readonly stock: readonly string[];
  readonly most: readonly string[];
  /** that laps are in the lengths */
  readonly laps: readonly string[];
  readonly included: readonly string[];
  /** mm: shorter or longer ones are of something else */
  readonly from: number;
  readonly to: number;
  /** share of the lengths that may be beyond it before it is taken for something else */
  readonly beyond: number;
  /** characters of a part of a note that is looked at */
  readonly longest: number;
}> = {
  value: {
    bars: [
      ...["bar", "rebar", "rod", "varilla", "fierro", "tramo", "stab", "eisen", "pret", "demir", "donati"],
      ...["stang", "steng", "teras", "tanko", "ραβδ", "прут", "стержн", "арматур", "钢筋", "鋼筋", "鉄筋"],
      ...["thep", "besi", "prut", "sipk", "staven", "staaf", "szal", "betonacel", "vergalh", "철근", "เหล็ก"],
      ...["حديد", "قضبان", "سياخ", "سيخ", "شاخه", "میلگرد", "آرماتور", "ברזל", "מוט"],
      ...["tyc", "palic", "stryp", "stien", "varda", "varras", "stæng", "stong", "βεργ", "стрижн", "прът"],
    ],
    stock: [
      ...[
        "stock",
        "commerc",
        "comerc",
        "handels",
        "handlow",
        "lager",
        "liefer",
        "mill length",
        "boyu",
        "stok",
      ],
      ...["定尺", "εμποριου", "livr", "delivery", "transport", "lorry", "truck", "fabriekslengte", "прокат"],
      ...["kommerz", "ticari", "처음길이", "정척", "kataloglaeng"],
    ],
    most: [
      ...[
        "max",
        "no bar over",
        "not over",
        "no longer than",
        "not longer than",
        "enimmais",
        "hochst",
        "en fazla",
      ],
      ...["lebih panjang", "nie dluzsz", "не более", "не длиннее", "maks", "au plus", "powyzej"],
    ],
    laps: ["lap", "ubergreif", "recouvrement", "traslap", "empalme", "sovrapposi", "overlap"],
    included: ["incl", "already in", "in length", "enthalten", "compris", "compres", "allowed for"],
    from: 4_500,
    to: 25_000,
    beyond: 0.3,
    longest: 90,
  },
  cite: { document: "words in titles and notes of schedules by country", provenance: "common practice" },
};
