import type { DemoSheet } from "./demo-sheet";

const ROWS: DemoSheet["rows"] = [
  ["EXTRAS TO SITE, week 9", null, null, null, null, null, null, null, null, null],
  [
    "Marrow Fen / rang in by the ganger, typed up in the yard",
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
  ],
  [],
  ["Mark", "Shape", "Bar", "Nos", "Dimensions (mm)", null, null, null, "Cut", "Where"],
  [null, null, "size", "total", "A", "B", "C", "D", "length", null],
  ["E1", 0, "H 12", 20, "1 800", null, null, null, 1800, "wall W1, behind the pipe"],
  ["E2", 21, "H12", "16", 400, 250, 400, null, 1000, "  wall W1"],
  ["E3", 11, "h16", 8, 900, 450, null, null, 1325, "plinth"],
  [],
  ["Column kickers", null, null, null, null, null, null, null, null, null],
  ["E4", 51, "H10", 24, 420, 420, 130, null, 1850, null],
  ["E5", 51, "H10", 24, 420, 180, "?", null, 1375, "ask for C"],
  ["E6", 11, "H32", 4, 1200, 300, null, null, 1425, "cranked by hand?"],
  ["Sub-total", null, null, "=SUM(D6:D13)", null, null, null, null, null, null],
  [],
  ["Mark", "Shape", "Bar", "Nos", "A", "B", "C", "D", "Cut", "Where"],
  ["E7", "00", "T20", 12, 2.4, null, null, null, 2400, "headwall"],
  ["E8", "26", "H16", 10, 1100, 380, 900, 80, 2400, "headwall"],
  ["E9", "41", "H12", 18, 150, 45, 200, 45, 450, "chairs, E missing"],
  ["E10", "21", "#5", 6, 600, 300, 600, null, 1450, "off an American drawing"],
  [],
  ["Prices agreed by telephone, see diary", null, null, null, null, null, null, null, null, null],
];

/** A second sheet as sites send them: two header rows, gaps, a repeated header, texts for numbers. */
export const EXTRAS_SHEET: DemoSheet = {
  name: "Extras",
  rows: ROWS,
  widths: [16, 8, 8, 8, 12, 8, 8, 8, 9, 30],
  frozenRows: 0,
  style(row, column) {
    if (row === 0) return "title";
    if (row === 1) return "small";
    if (row === 3 || row === 4 || row === 15) return "head";
    if (row === 13) return "sum";
    return row === 11 && column === 6 ? "queried" : null;
  },
};
