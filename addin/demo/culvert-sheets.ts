import { type DemoSheet, type DemoValue, FIRST_HEADINGS } from "./demo-sheet";

const HEAD = [...FIRST_HEADINGS, "Pour", "Released"];

const REVISION_A: DemoValue[][] = [
  ["Culvert C1", "2001", "H16", 1, 40, 40, 5600, "00", 5600, null, null, "P8", "yes"],
  [null, "2002", "H16", 1, 40, 40, 3350, "21", 600, 2200, 600, "P8", "yes"],
  [null, "2003", "H12", 1, 64, 64, 1600, "11", 1200, 400, null, "P8", "yes"],
  [null, "2004", "H12", 1, 64, 64, 4800, "00", 4800, null, null, "P8", null],
  [null, "2005", "H10", 1, 90, 90, 1575, "51", 400, 300, 130, "P8", null],
  [null, "2006", "H20", 1, 24, 24, 7200, "00", 7200, null, null, "P9", null],
  [null, "2007", "H12", 1, 30, 30, 925, "21", 350, 250, 350, "P9", "yes"],
];

const REVISION_B: DemoValue[][] = [
  ["Culvert C1", "2001", "H16", 1, 40, 40, 5600, "00", 5600, null, null, "P8", "yes"],
  [null, "2002", "H16", 1, 40, 40, 3550, "21", 600, 2400, 600, "P8", "yes"],
  [null, "2003", "H12", 1, 72, 72, 1600, "11", 1200, 400, null, "P8", "yes"],
  [null, "2004", "H12", 1, 64, 64, 5000, "00", 5000, null, null, "P8", null],
  [null, "2005", "H10", 1, 90, 90, 1575, "51", 400, 300, 130, "P8", null],
  [null, "2007", "H12", 1, 30, 30, 925, "21", 350, 250, 350, "P9", "yes"],
  [null, "2008", "H20", 1, 24, 24, 7600, "00", 7600, null, null, "P9", null],
];

/** Two revisions of a short list of the same invented job, the older one cut from in part. */
export const CULVERT_SHEETS: readonly DemoSheet[] = [revision("A", REVISION_A), revision("B", REVISION_B)];

function revision(letter: string, rows: readonly DemoValue[][]): DemoSheet {
  return {
    name: `Culvert rev ${letter}`,
    rows: [
      ["Tallow Lane Yard"],
      [`Job: Marrow Fen pumping station, schedule MF-015, BS 8666:2005, revision ${letter}`],
      [],
      HEAD,
      ...rows,
    ],
    widths: [14, 11, 9, 12, 8, 8, 18, 8, 8, 8, 8, 7, 10],
    frozenRows: 4,
    style: (row) => (row === 0 ? "title" : row === 1 ? "subtitle" : row === 3 ? "head" : null),
  };
}
