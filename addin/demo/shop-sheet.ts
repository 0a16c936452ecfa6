import { SHOP_SHEET, shopTemplate } from "../../core/shop";
import type { DemoSheet, DemoValue } from "./demo-sheet";

/** machine, largest angle, guard radius, orbit radius, back-rest distance, pins, formers */
const BENDERS: DemoValue[][] = [
  ["Old Maud", 190, 4000, 75, 60, "30", "32, 40, 48, 64, 80"],
  ["The Ox", 190, 5000, 185, 120, "50", "112, 140, 175, 224"],
];

/** machine, work, size, yield, bars at once */
const PLATES: DemoValue[][] = [
  ["Old Maud", "bend", "H10", 500, 5],
  ["Old Maud", "bend", "H12", 500, 4],
  ["Old Maud", "bend", "H16", 500, 2],
  ["The Ox", "bend", "H20", 500, 3],
  ["The Ox", "bend", "H25", 500, 2],
  ["The Ox", "bend", "H32", 500, 1],
  ["Snapper", "cut", "H10", 500, 10],
  ["Snapper", "cut", "H12", 500, 8],
  ["Snapper", "cut", "H16", 500, 4],
  ["Snapper", "cut", "H20", 500, 3],
  ["Snapper", "cut", "H25", 500, 2],
  ["Snapper", "cut", "H32", 500, 1],
];

/** machine, kerf, end crop */
const CUTTERS: DemoValue[][] = [["Snapper", 0, 10]];

/** size, stock length, bars held, kind */
const STOCK: DemoValue[][] = [
  [null, 12000, null, "stock"],
  ["H10", 9000, 120, "stock"],
  ["H16", 4200, 6, "remnant"],
  ["H12", 3100, 10, "remnant"],
];

/** by the sheet's own words, in its order: hoist, lift by hand, transport width, lorry load and length, least remnant, temperature */
const LIMITS: DemoValue[] = [1000, 25, null, 8000, 12000, 900, 12];

/** date, machine, size, former, grade, form, heat, bent to, released */
const TRIALS: DemoValue[][] = [
  ["2026-03-02", "Old Maud", "H10", 40, "B500B", "bar", "K771", 94, 90.3],
  ["2026-03-02", "Old Maud", "H10", 40, "B500B", "bar", "K771", 140, 134.6],
  ["2026-03-02", "Old Maud", "H12", 48, "B500B", "bar", "K802", 94, 90.1],
  ["2026-03-03", "Old Maud", "H12", 48, "B500B", "bar", "K802", 96, 92.2],
  ["2026-03-03", "Old Maud", "H12", 48, "B500B", "bar", "K802", 141, 135.4],
  ["2026-03-03", "Old Maud", "H16", 64, "B500B", "bar", "K640", 94, 90.2],
  ["2026-03-03", "Old Maud", "H16", 64, "B500B", "bar", "K640", 50, 47.6],
  ["2026-03-04", "The Ox", "H20", 140, "B500B", "bar", "K655", 96, 90.1],
  ["2026-03-04", "The Ox", "H20", 140, "B500B", "bar", "K655", 48, 44.7],
  ["2026-03-04", "The Ox", "H25", 175, "B500B", "bar", "K655", 96, 90.4],
  ["2026-03-05", "The Ox", "H32", 224, "B500B", "bar", "K590", 96, 90.3],
];

/** blank rows under the stock, for the rests of cut lists */
const ROOM = 30;

const SECTIONS = [BENDERS, PLATES, CUTTERS, STOCK];

/** The demonstration's yard: machines, stock, limits and trial bends, all invented. */
export const DEMO_SHOP_SHEET: DemoSheet = {
  name: SHOP_SHEET,
  rows: filled().map(({ cells }) => cells),
  widths: [24, 18, 20, 20, 28, 14, 30, 14, 14],
  frozenRows: 0,
  style(row) {
    const kind = filled()[row]?.kind;
    return kind === "title" ? "label" : kind === "head" ? "head" : null;
  },
};

/** The empty Shop sheet with its blank rows written in, as a yard would. */
function filled(): { kind: string; cells: DemoValue[] }[] {
  const rows: { kind: string; cells: DemoValue[] }[] = [];
  let section = -1;
  let limit = 0;
  for (const { kind, cells } of shopTemplate()) {
    const values = cells.map((cell) => (typeof cell === "object" || typeof cell === "boolean" ? null : cell));
    const isLimit = kind === "blank" && values.length > 0;
    if (isLimit) rows.push({ kind, cells: [...values, LIMITS[limit++] ?? null] });
    // room that a yard has filled is no blank row any longer
    else if (kind !== "blank") {
      if (kind === "title" && rows.length > 0) rows.push({ kind: "blank", cells: [] });
      rows.push({ kind, cells: values });
    }
    if (kind === "head") {
      section += 1;
      const written = SECTIONS[section] ?? (cells.includes("released") ? TRIALS : []);
      rows.push(...written.map((line) => ({ kind: "blank", cells: line })));
      if (written === STOCK) rows.push(...Array.from({ length: ROOM }, () => ({ kind: "blank", cells: [] })));
    }
  }
  return rows;
}
