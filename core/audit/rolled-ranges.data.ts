import type { Cited } from "../standards/citation";

/** What a document, or the mills of a country, hold of bars whose sizes are millimetres. */
export interface RolledRange {
  /** as a list may call it */
  readonly document: string;
  /** letters before its number, and the number; none for what a country rolls under several */
  readonly names: readonly (readonly [letters: string, number: string])[];
  /** mm */
  readonly diameters: readonly number[];
}

export const ROLLED_RANGES: Cited<{
  readonly ranges: readonly RolledRange[];
  /** mm: thinner ones are wire too, which every country draws */
  readonly from: number;
  /** mm: no bar is thicker */
  readonly to: number;
  /** different sizes of a list beside the one that is asked about, where a document is named and where none is */
  readonly leastSizes: number;
  readonly leastUnnamed: number;
}> = {
  value: {
    from: 8,
    to: 60,
    leastSizes: 3,
    leastUnnamed: 4,
    ranges: [
      {
        document: "GOST 34028",
        names: [
          ["ГОСТ Р?", "34028"],
          ["ГОСТ Р?", "52544"],
          ["ГОСТ", "5781"],
          ["GOST R?", "34028"],
        ],
        diameters: [6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50],
      },
      {
        document: "DSTU 3760",
        names: [["ДСТУ", "3760"]],
        diameters: [6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40],
      },
      {
        document: "NBR 7480",
        names: [["NBR", "7480"]],
        diameters: [
          2.4, 3.4, 3.8, 4.2, 4.6, 5, 5.5, 6, 6.3, 6.4, 7, 8, 9.5, 10, 12.5, 16, 20, 22, 25, 32, 40,
        ],
      },
      {
        document: "UNE 36065",
        names: [
          ["UNE", "36065"],
          ["UNE", "36068"],
        ],
        diameters: [6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40],
      },
      { document: "DIN 488", names: [["DIN", "488"]], diameters: [6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40] },
      {
        document: "SIA 262",
        names: [["SIA", "262"]],
        diameters: [6, 8, 10, 12, 14, 16, 18, 20, 22, 26, 30, 34, 40],
      },
      { document: "BS 4449", names: [["BS", "4449"]], diameters: [6, 8, 10, 12, 16, 20, 25, 32, 40, 50] },
      { document: "SANS 920", names: [["SANS", "920"]], diameters: [6, 8, 10, 12, 16, 20, 25, 32, 40] },
      {
        document: "JIS G 3112",
        names: [["JIS ?G", "3112"]],
        diameters: [6, 8, 9, 10, 13, 16, 19, 22, 25, 28, 29, 32, 35, 38, 41, 51],
      },
      {
        document: "KS D 3504",
        names: [["KS ?D", "3504"]],
        diameters: [6, 8, 10, 13, 16, 19, 22, 25, 29, 32, 35, 38, 41, 43, 51, 57],
      },
      {
        document: "CNS 560",
        names: [["CNS", "560"]],
        diameters: [6, 8, 10, 13, 16, 19, 22, 25, 29, 32, 36, 39, 43, 50, 57],
      },
      {
        document: "GB/T 1499.2",
        names: [
          ["GB(?:/T)?", "1499"],
          ["GB", "50010"],
        ],
        diameters: [6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 50],
      },
      {
        document: "SNI 2052",
        names: [["SNI", "2052"]],
        diameters: [6, 8, 10, 13, 16, 19, 22, 25, 29, 32, 36, 40, 50, 54, 57],
      },
      {
        document: "TIS 20 and TIS 24",
        names: [["TIS|มอก\\.?", "2[04]"]],
        diameters: [6, 8, 9, 10, 12, 15, 16, 19, 20, 22, 25, 28, 32, 34, 36, 40],
      },
      {
        document: "TCVN 1651",
        names: [["TCVN", "1651"]],
        diameters: [6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 50],
      },
      {
        document: "IS 1786",
        names: [["IS", "1786"]],
        diameters: [6, 8, 10, 12, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50],
      },
      {
        document: "ISO 6935-2",
        names: [["ISO", "6935"]],
        diameters: [6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40, 50],
      },
      {
        document: "TS 708",
        names: [["TS", "708"]],
        diameters: [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 25, 26, 28, 30, 32, 36, 40, 50],
      },
      {
        document: "AS/NZS 4671",
        names: [["AS/?NZS", "4671"]],
        diameters: [6, 6.5, 10, 12, 16, 20, 24, 25, 28, 32, 36, 40, 50],
      },
    ],
  },
  cite: { document: "nominal diameters of the steel standards that lists name", provenance: "memory" },
};
