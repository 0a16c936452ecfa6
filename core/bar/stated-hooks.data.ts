import type { Cited } from "../standards/citation";

/** How a title or a note says the least of a hook: beginnings of words, lower case, without accents. */
export const STATED_HOOKS: Cited<{
  readonly least: readonly string[];
  /** what the part of a note is of where it holds them, hooks or not */
  readonly others: readonly string[];
  /** behind a number: of a multiple of the diameter, of millimetres, of centimetres and of inches */
  readonly diameters: readonly string[];
  /** the same where the word may go on */
  readonly diametersBegin: readonly string[];
  readonly millimetres: readonly string[];
  readonly centimetres: readonly string[];
  readonly inches: readonly string[];
  /** letters and signs before a size, and words between a length and the size that it is of */
  readonly sizes: readonly string[];
  readonly of: readonly string[];
  /** characters of a part of a note that is looked at; diameters and mm that a hook may be asked to have */
  readonly longest: number;
  readonly mostDiameters: number;
  readonly from: number;
  readonly to: number;
  /** hooks that keep what is said before another one is told, and the share of those that do not */
  readonly kept: number;
  readonly share: number;
}> = {
  value: {
    least: [
      ...[
        "min",
        "least",
        "not less",
        "not below",
        "minst",
        "mind",
        "mini",
        "minim",
        "au moins",
        "ten minste",
      ],
      ...[
        "al menos",
        "no menor",
        "pelo menos",
        "almeno",
        "vahint",
        "co najmn",
        "nejmen",
        "najmen",
        "najmanj",
        "en az",
      ],
      ...["не менее", "не менш", "мин", "τουλαχ", "ελαχ", "以上", "最小", "toi thieu", "ไม่น้อยกว่า"],
      ...["حداقل", "لا يقل", "لا تقل", "ادنى", "לפחות", "מינימום"],
    ],
    others: [
      ...["former", "mandr", "dorn", "doorn", "dor ", "pin ", "roll", "bieger", "оправ", "折曲げ内法"],
      ...["cover", "lap", "enrob", "recouvr", "copriferr", "sovrapp", "recub", "trasla", "emend"],
    ],
    diameters: ["db", "ds", "d", "\u00f8", "\u0434"],
    diametersBegin: ["diam", "bar diam", "times diam", "times the diam", "\u0434\u0438\u0430\u043c"],
    millimetres: ["mm", "\u043c\u043c", "\u0645\u0645", "\u0645\u06cc\u0644\u06cc"],
    centimetres: ["cm", "\u0441\u043c", "\u0633\u0645", "\u0633\u0627\u0646\u062a\u06cc", "\u05e1\u05de"],
    inches: ['"', "inch", "in"],
    sizes: ["db", "rb", "hd", "d", "h", "t", "y", "b", "n"],
    of: ["for", "bei", "a", "para", "pour", "til", "vid", "pro"],
    longest: 200,
    mostDiameters: 20,
    from: 25,
    to: 600,
    kept: 1,
    share: 0.5,
  },
  cite: { document: "notes of bar lists on the least of a hook", provenance: "memory" },
};
