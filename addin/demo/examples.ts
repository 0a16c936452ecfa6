import { writeNewWorkbook } from "../xlsx/write/new-workbook";
import { newSheet } from "./demo-sheet";
import { DEMO_NAME, demoWorkbook } from "./demo-workbook";
import { EXTRAS_SHEET } from "./extras-sheet";
import { INCH_SHEET } from "./inch-sheet";

/** A workbook to try, of an invented yard. */
export interface Example {
  readonly key: "british" | "inches" | "messy";
  readonly title: string;
  /** what is worth looking at in it */
  readonly look: string;
  readonly fileName: string;
  bytes(): Uint8Array;
}

/** In the first, the results of its formulas stand as this build calculates them. */
export const EXAMPLES: readonly [Example, Example, Example] = [
  {
    key: "british",
    title: "A British list with slips in it",
    look: "Look at the unsafe rows first; then choose Pours for the tonnes, and Bench for a ticket. The yard's machines are on sheet Shop.",
    fileName: DEMO_NAME,
    bytes: demoWorkbook,
  },
  {
    key: "inches",
    title: "An American list in feet and inches",
    look: "Look at W4, whose leg of 3 in is too short for its former, and at S2, whose 100 has no unit and is not guessed.",
    fileName: "Osier Bend OB-3.xlsx",
    bytes: inchWorkbook,
  },
  {
    key: "messy",
    title: "A messy list, as a site sends it",
    look: "Choose How it was read, under Show: what each column was taken for. Three rows are asked about: a C that is a question mark, a missing E, a size of another country.",
    fileName: "Marrow Fen extras.xlsx",
    bytes: messyWorkbook,
  },
];

export function inchWorkbook(): Uint8Array {
  return writeNewWorkbook({
    sheets: [newSheet(INCH_SHEET)],
    names: new Map([["Barwright.Standard", '"ACI318:2019"']]),
  });
}

export function messyWorkbook(): Uint8Array {
  return writeNewWorkbook({
    sheets: [newSheet(EXTRAS_SHEET)],
    names: new Map([["Barwright.Standard", '"BS8666:2005"']]),
  });
}
