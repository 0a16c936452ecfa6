/** Header of the invented schedule that is put into other programs' workbooks. */
export const FOREIGN_HEADER = [
  "Bar mark",
  "Type and size",
  "No. of mbrs",
  "No. of bars in each",
  "Total no.",
  "Length of each bar",
  "Shape code",
  "A",
  "B",
  "C",
  "D",
  "Former",
  "Pour",
] as const;

/** Its bars: 0102 is longer than any stock, 0103 has a leg that is too short, 0105 a former that is too small. */
export const FOREIGN_ROWS: readonly (readonly (string | number | null)[])[] = [
  ["0101", "H16", 1, 48, 48, 4600, "21", 600, 3450, 600, null, null, "P1"],
  ["0102", "H16", 1, 54, 54, 13500, "00", 13500, null, null, null, null, "P1"],
  ["0103", "H16", 1, 66, 66, 1325, "11", 1250, 90, null, null, null, "P1"],
  ["0104", "H12", 3, 16, 48, 2350, "21", 650, 1150, 600, null, null, "P2"],
  ["0105", "H16", 3, 14, 42, 2800, "21", 700, 1450, 700, null, 40, "P2"],
  ["0106", "H12", 1, 140, 140, 2075, "21", 900, 320, 900, null, null, "P2"],
];
