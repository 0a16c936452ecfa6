/** Dims of one example bar, in column order, as formulas over r, d, P and P(links). */
export interface ShapeExample {
  readonly code: string;
  /** end legs of the least projection, sides with 4d of straight between their bends */
  readonly least: readonly string[];
  /** every length 1000 mm where the shape admits it; slopes at about 30 degrees */
  readonly thousand: readonly string[];
}

/** One bar of every BS 8666 code that has a length by geometry, short and long. */
export const SHAPE_EXAMPLES: readonly ShapeExample[] = [
  { code: "00", least: ["P"], thousand: ["1000"] },
  { code: "01", least: ["P"], thousand: ["1000"] },
  { code: "11", least: ["P", "P"], thousand: ["1000", "1000"] },
  { code: "12", least: ["2r + 6d", "2r + 6d", "2r"], thousand: ["1000", "1000", "500"] },
  { code: "13", least: ["P + r", "2(r + d)", "P + r"], thousand: ["1000", "1000", "1000"] },
  { code: "14", least: ["P", "2(r + d) + 0.5P", "P + 2r"], thousand: ["1000", "700", "1000"] },
  { code: "15", least: ["P", "0.5P + 0.9d", "P"], thousand: ["1000", "500 + 0.9d", "1000"] },
  { code: "21", least: ["P", "2r + 6d", "P"], thousand: ["1000", "1000", "1000"] },
  { code: "22", least: ["P", "2r + 6d", "2(r + d)", "P + r"], thousand: ["1000", "1000", "1000", "1000"] },
  { code: "23", least: ["P", "2r + 6d", "P"], thousand: ["1000", "1000", "1000"] },
  {
    code: "24",
    least: ["P", "2r + 6d", "P", "r + 3d"],
    thousand: ["1000", "1000", "1000", "500"],
  },
  {
    code: "25",
    least: ["P", "P", "0.5P + 0.9d", "0.5P + 0.9d", "2r + 6d"],
    thousand: ["1000", "1000", "500 + 0.9d", "300 + d", "1000"],
  },
  {
    code: "26",
    least: ["P", "2r + 6d", "P", "r + 3.9d"],
    thousand: ["1000", "1000", "1000", "500 + 0.9d"],
  },
  { code: "27", least: ["P", "2r + 6d", "P", "r + 3d"], thousand: ["1000", "1000", "1000", "500"] },
  {
    code: "28",
    least: ["P", "2r + 6d", "P", "r + 3.9d"],
    thousand: ["1000", "1000", "1000", "500 + 0.9d"],
  },
  { code: "29", least: ["P", "2r + 6d", "P + d", "3d"], thousand: ["1000", "1000", "1000", "100"] },
  {
    code: "31",
    least: ["P", "2r + 6d", "2r + 6d", "P"],
    thousand: ["1000", "1000", "1000", "1000"],
  },
  {
    code: "32",
    least: ["P", "2r + 6d", "2r + 6d", "P"],
    thousand: ["1000", "1000", "1000", "1000"],
  },
  { code: "33", least: ["12d + 2r + 30", "2(r + d)", "P + r"], thousand: ["1000", "1000", "1000"] },
  {
    code: "34",
    least: ["P", "2r + 6d", "2r + 6d", "r + 3.9d", "P"],
    thousand: ["1000", "1000", "1000", "500 + 0.9d", "1000"],
  },
  {
    code: "35",
    least: ["P", "2r + 6d", "2r + 6d", "r + 3.9d", "P"],
    thousand: ["1000", "1000", "1000", "500 + 0.9d", "1000"],
  },
  {
    code: "36",
    least: ["P", "2r + 6d", "2r + 6d", "P", "0.5P + 0.9d"],
    thousand: ["1000", "1000", "1000", "1000", "500 + 0.9d"],
  },
  {
    code: "41",
    least: ["P", "2r + 6d", "2r + 6d", "2r + 6d", "P"],
    thousand: ["1000", "1000", "1000", "1000", "1000"],
  },
  {
    code: "44",
    least: ["P", "2r + 6d", "2P", "2r + 6d", "P"],
    thousand: ["1000", "1000", "1000", "1000", "1000"],
  },
  {
    code: "46",
    least: ["P", "2r + 6d", "2r + 6d", "r + 3.9d", "P"],
    thousand: ["1000", "1000", "1000", "500 + 0.9d", "1000"],
  },
  { code: "47", least: ["P + 2r + 6d", "2r + 6d", "P"], thousand: ["1000", "1000", "1000"] },
  { code: "48", least: ["P(links) + 2r + 6d", "2r + 6d", "P(links)"], thousand: ["1000", "1000", "1000"] },
  { code: "51", least: ["P(links)", "P(links)", "P(links)"], thousand: ["1000", "1000", "1000"] },
  { code: "52", least: ["P(links) + 2r", "P(links) + 2r", "P(links)"], thousand: ["1000", "1000", "1000"] },
  {
    code: "56",
    least: ["P(links) + 2d", "P(links)", "P(links)", "P(links) + d", "P(links)"],
    thousand: ["1000", "1000", "800", "1020", "800"],
  },
  { code: "63", least: ["P(links)", "P(links)", "P(links)"], thousand: ["1000", "1000", "1000"] },
  {
    code: "64",
    least: ["P", "2r + 6d", "2r + 6d", "2r + 6d", "2r + 6d", "P"],
    thousand: ["1000", "1000", "1000", "1000", "1000", "1000"],
  },
  { code: "67", least: ["12d + P", "", "", "10d"], thousand: ["1000", "", "", "1000"] },
  { code: "75", least: ["2r + 2d", "P"], thousand: ["1000", "1000"] },
  { code: "77", least: ["2r + 2d", "2d", "10"], thousand: ["1000", "150", "10"] },
  {
    code: "98",
    least: ["2r + 6d", "2r + 6d", "P", "P"],
    thousand: ["1000", "1000", "1000", "1000"],
  },
];
