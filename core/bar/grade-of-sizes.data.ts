import type { Cited } from "../standards/citation";

/** How a grade is told to be of other sizes than its bar: by notes, by the letters of sizes, by thickness. */
export const GRADE_OF_SIZES: Cited<{
  /** rows that must keep what one breaks */
  readonly leastKept: number;
  /** rows of the grade itself beside the one */
  readonly leastOfGrade: number;
  /** times the thickest other bar of the grade: a link of the next size up is sound */
  readonly thicker: number;
  /** share of the rows that may break a note, before it is taken for something else */
  readonly most: number;
  /** characters of a note that is looked at */
  readonly longest: number;
}> = {
  value: { leastKept: 4, leastOfGrade: 2, thicker: 1.9, most: 0.1, longest: 200 },
  cite: { document: "lists with a grade for each size", provenance: "derived" },
};

/** mm: the thickest bars of steels that are drawn or rolled thin alone. */
export const MADE_UP_TO: Cited<Readonly<Record<string, number>>> = {
  value: { CA60: 10, HPB300: 22, HPB235: 22, B450A: 10 },
  cite: { document: "NBR 7480 (CA-60), GB/T 1499.1 (HPB), NTC 2018 (B450A)", provenance: "memory" },
};

/** Words by which a note is of all steel of a list; lower case, as patterns. */
export const ALL_STEEL: Cited<readonly string[]> = {
  value: [
    ...[
      "all (?:the )?(?:steel|bars|rebars?|reinforcement|reo)(?!\\p{L})",
      "gesamter (?:beton)?stahl",
      "samtlig armering",
      "alle stäbe",
    ],
    ...[
      "todo el acero",
      "todas las barras",
      "todo o aço",
      "tout l['’]acier",
      "tous les aciers",
      "tutto l['’]acciaio",
    ],
    ...[
      "cała stal",
      "вся арматура",
      "вся сталь",
      "tüm donatı",
      "alle staal",
      "al het staal",
      "كل الحديد",
      "全部钢筋",
    ],
  ],
  cite: { document: "titles of bar schedules by country", provenance: "common practice" },
};

/** Words before a grade of figures alone; lower case, as patterns. */
export const GRADE_WORDS: Cited<readonly string[]> = {
  value: ["gr(?:ade|ado|au)?s?", "fy", "sınıf", "مقاومة", "רמה"],
  cite: { document: "titles of bar schedules by country", provenance: "common practice" },
};

/** Words by which a note sets sizes apart; lower case, without accents, as patterns. */
export const SIZE_BOUNDS: Cited<{
  readonly fromBefore: readonly string[];
  readonly fromBehind: readonly string[];
  readonly toBefore: readonly string[];
  readonly toBehind: readonly string[];
  readonly range: readonly string[];
}> = {
  value: {
    fromBefore: ["≥", ">=", "ab", "from", "desde", "a partir de", "od", "от", "від", "de la", "des", "da"],
    fromBehind: [
      ...[
        "以上",
        "及以上",
        "이상",
        "ขึ้นไป",
        "and up",
        "and over",
        "and above",
        "and larger",
        "upwards",
        "si peste",
        "и более",
      ],
      ...[
        "і більше",
        "ve ustu",
        "ve uzeri",
        "y mayores",
        "y mas",
        "e acima",
        "e oltre",
        "und mehr",
        "und dicker",
        "et plus",
      ],
      ...[
        "i wiecej",
        "i grubsze",
        "en dikker",
        "فما فوق",
        "و بالاتر",
        "و بیشتر",
        "trở lên",
        "tro len",
        "ke atas",
      ],
    ],
    toBefore: [
      "≤",
      "<=",
      "bis",
      "up to",
      "hasta",
      "ate",
      "fino a",
      "do",
      "до",
      "pana la",
      "jusqu'a",
      "tot",
      "t/m",
    ],
    toBehind: [
      ...[
        "以下",
        "及以下",
        "이하",
        "ลงมา",
        "and under",
        "and below",
        "and smaller",
        "si sub",
        "и менее",
        "ve alti",
        "y menores",
      ],
      ...["e abaixo", "und weniger", "und dunner", "et moins", "i mniej", "فما دون", "tro xuong", "ke bawah"],
    ],
    range: [
      "-",
      "–",
      "—",
      "~",
      "～",
      "…",
      "\\.\\.\\.",
      "÷",
      "to",
      "bis",
      "do",
      "до",
      "a",
      "al",
      "tot",
      "till",
      "から",
      "至",
    ],
  },
  cite: { document: "notes of bar schedules by country", provenance: "memory" },
};
