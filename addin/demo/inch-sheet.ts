import type { DemoSheet } from "./demo-sheet";

const HEAD = 3;

/** A list in feet and inches of an invented job, bent bars by their path, with two slips. */
export const INCH_SHEET: DemoSheet = {
  name: "Bar list",
  rows: [
    ["Tallow Lane Yard"],
    ["Job: Osier Bend intake, list OB-3, ACI 318-19, feet and inches"],
    [],
    ["Member", "Mark", "Qty", "Size", "Length", "Path", "Weight (lb)", "Pour"],
    ["Intake mat", "M1", 44, "#6", "21'-4\"", null, 1410, "P1"],
    [null, "M2", 36, "#6", "17'-8\"", null, 955, "P1"],
    [null, "M3", 28, "#5", "5'-1\"", "1'-0\" +90 3'-4\" +90 1'-0\"", 148.6, "P1"],
    ["Intake wall", "W1", 52, "#5", "9'-6\"", null, 515, "P2"],
    [null, "W2", 52, "#5", "6'-10 1/2\"", "1'-2\" +90 5'-10\"", 373, "P2"],
    [null, "W3", 40, "#4", "8'-0\"", null, 214, "P2"],
    [null, "W4", 16, "#8", "6'-6\"", '3" +90 6\'-4"', 278, "P2"],
    ["Cover slab", "S1", 30, "#5", "10'-0\"", null, 313, "P3"],
    [null, "S2", 30, "#5", "100", null, 261, "P3"],
    [null, "S3", 24, "#4", "4'-2\"", '8" +90 3\'-0" +90 8"', 67, "P3"],
  ],
  widths: [16, 7, 7, 7, 10, 26, 12, 7],
  frozenRows: HEAD + 1,
  style: (row) => (row === 0 ? "title" : row === 1 ? "subtitle" : row === HEAD ? "head" : null),
};
