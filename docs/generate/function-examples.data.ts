/** A cell, a row of cells, or rows of cells, as a formula writes them. */
type Argument =
  | string
  | number
  | null
  | readonly (string | number)[]
  | readonly (readonly (string | number)[])[];

/** One call that a page shows with its answer; null leaves an argument out. */
export interface FunctionExample {
  readonly name: string;
  readonly args: readonly Argument[];
}

/** Calls by invented bars; pages run them, so that no answer is typed. */
export const FUNCTION_EXAMPLES: readonly FunctionExample[] = [
  { name: "DEVELOPED", args: ["21", "H16", [1000, 400, 500], "BS8666:2005"] },
  { name: "DEVELOPED", args: ["600 +90 400", "H16"] },
  { name: "DEVELOPED", args: ["21", "H16", [1000, 50, 500]] },
  { name: "CUTLENGTH", args: ["21", "H16", [1000, 400, 500], "BS8666:2005"] },
  {
    name: "CUTLENGTH",
    args: [
      [["11"], ["21"]],
      [["H12"], ["H16"]],
      [
        [900, 300, ""],
        [900, 300, 300],
      ],
    ],
  },
  { name: "CUTLENGTH", args: ["40 +90 30", "#8", null, "ACI318:2019"] },
  { name: "CUTLENGTH", args: ["1000 +90 4000 +90 1000", 20, null, "INDIA-SITE"] },
  { name: "CUTLENGTH", args: ["48", "H10", [500, 300, 130], "BS8666:2005"] },
  { name: "MASS", args: ["H16"] },
  { name: "MASS", args: ["#8", "ACI318:2019", "lb/ft"] },
  { name: "DIAMETER", args: ["15M", "CSA-A23.1:2019"] },
  { name: "AREA", args: ["N20", "AS3600:2018"] },
  { name: "FORMER", args: ["H25"] },
  { name: "FORMER", args: ["N20", "AS3600:2018", "main", "galvanized"] },
  { name: "MINLEG", args: ["H16", "BS8666:2005", "link"] },
  { name: "ROWMASS", args: ["21", "H16", [1000, 400, 500], 24, "BS8666:2005", "t"] },
  { name: "MARKS", args: ["21", "H16", [1000, 400, 500]] },
  {
    name: "COMPENSATED",
    args: [
      90,
      "H16",
      null,
      null,
      null,
      [
        ["size", "former", "grade", "bent to", "released"],
        ["H16", 64, "H", 92, 90],
        ["H16", 64, "H", 93, 91.2],
        ["H16", 64, "H", 47, 45.1],
        ["H16", 64, "H", 138, 135.2],
      ],
    ],
  },
  { name: "COMPENSATED", args: [90, "H20"] },
  {
    name: "TONNAGE",
    args: [
      [["P1"], ["P1"], ["P2"]],
      [["H16"], ["H20"], ["H16"]],
      [[120.5], [340], [88]],
    ],
  },
  {
    name: "CUTPLAN",
    args: [
      [[4200], [2600], [1750]],
      [[12], [20], [9]],
    ],
  },
  { name: "LAP", args: ["H16"] },
  {
    name: "COST",
    args: [
      [["H16"], ["H20"], ["H16"]],
      [[1000], [500], [250]],
      [["P1"], ["P1"], ["P2"]],
      [
        ["size", "supply per tonne", "bend per tonne", "hours per tonne", "waste %"],
        ["up to 16", 100, 20, 8, 5],
        ["over 16", 90, 10, 5, 4],
      ],
    ],
  },
  {
    name: "CHECK",
    args: [
      [
        [
          "Bar mark",
          "Type and size",
          "No. of members",
          "No. in each",
          "Total no.",
          "Length of each bar",
          "Shape code",
          "A",
          "B",
          "C",
        ],
        ["01", "H16", 2, 6, 12, 1850, "21", 1000, 400, 500],
        ["02", "H16", 2, 6, 13, 1850, "21", 1000, 400, 500],
      ],
    ],
  },
  { name: "EXPLAIN", args: ["26", "H16", [900, 400, 600, 180]] },
  {
    name: "EXPLAIN",
    args: ["hook135 242 +90 392 +90 242 +90 392 hook135", 8, null, "INDIA-SITE", null, "link"],
  },
];
