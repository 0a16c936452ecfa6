import type { Cell } from "../../../core/schedule/sheet";

export const HEADS = ["Bar mark", "Size", "Total no.", "Length mm", "Mass kg"];
/** kg by hand with 0.888 and 1.579 kg/m (UK three-decimal table) */
export const BARS: Cell[][] = [
  ["01", "H12", 10, 2000, 17.76],
  ["02", "H12", 20, 3000, 53.28],
  ["03", "H16", 20, 2000, 63.16],
  ["04", "H16", 10, 4000, 63.16],
  ["05", "H12", 10, 5000, 44.4],
];
