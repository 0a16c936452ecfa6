import type { Cited } from "../standards/citation";

/** How a title or a note says formers as multiples of the diameter: beginnings of words, lower case, without accents. */
export const STATED_FORMERS: Cited<{
  readonly words: readonly string[];
  /** diameters that a former may be asked to have */
  readonly least: number;
  readonly most: number;
  /** mm: numbers beside them that are sizes of bars */
  readonly thinnest: number;
  readonly thickest: number;
  /** characters of a part of a note that is looked at */
  readonly longest: number;
  /** formers that keep what is said before another one is told, and the share of those that do not */
  readonly kept: number;
  readonly share: number;
}> = {
  value: {
    words: [
      ...[
        "former",
        "mandr",
        "dorn",
        "doorn",
        "dor(?!\\p{L})",
        "dorr",
        "buigrol",
        "biegeroll",
        "bend dia",
        "pin ",
      ],
      ...["\u043e\u043f\u0440\u0430\u0432", "\u6298\u66f2\u3052\u5185\u6cd5"],
    ],
    ...{ least: 2, most: 12, thinnest: 6, thickest: 40, longest: 200, kept: 2, share: 0.25 },
  },
  cite: { document: "notes of bar lists on formers", provenance: "memory" },
};
