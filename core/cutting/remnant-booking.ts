import { cellAddress } from "../schedule/cell-address";
import type { Sheet } from "../schedule/sheet";
import { findSections, type ShopSection } from "../shop/find-sections";
import { readShop } from "../shop/read-shop";
import type { ShopStock } from "../shop/shop";
import {
  SHOP_COLUMNS,
  SHOP_REMNANT,
  SHOP_REMNANT_COLUMNS,
  SHOP_REMNANTS_TITLE,
} from "../shop/shop-words.data";
import { isSameSize } from "../shop/stock-of-size";
import type { Standard } from "../standards/port";
import { defineRefusal, type Refusal } from "../units/refusal";
import { freeRemnantRows } from "./free-remnant-rows";
import type { SizePlan } from "./plan-by-size";
import { type IsHeld, withoutHeld } from "./without-held";

const noCountColumn = defineRefusal(
  "remnants-without-count",
  "value",
  'row {row} of the Shop sheet holds a remnant that the plan cuts up, and its list has no column "{column}" to take it off: add that column',
);
const notOnHand = defineRefusal(
  "remnants-not-on-hand",
  "value",
  "the plan cuts up {bars} remnants of {size}, {length} mm, that the Shop sheet does not hold: make the cut list again",
);

/** One line of remnants before and after. */
export interface RemnantChange {
  /** row of the Shop sheet as it is numbered there */
  readonly row: number;
  readonly size: string;
  /** mm */
  readonly length: number;
  /** bars on hand; null for a line that is new */
  readonly before: number | null;
  readonly after: number;
  /** a line without bars that is written over; null where there is none */
  readonly replaces: { readonly size: string; readonly length: number } | null;
}

/** What a plan changes on the Shop sheet. */
export interface RemnantBooking {
  readonly changes: readonly RemnantChange[];
  readonly edits: readonly { readonly cell: string; readonly to: string | number }[];
  /** row of a heading that is written for the remnants; null where the sheet's own list has room */
  readonly headingRow: number | null;
  readonly notes: readonly string[];
}

/**
 * Edits of the Shop sheet that take off the remnants which the plans cut up and add the rests that go back
 * to the rack, from `leastRemnant` mm on. A used-up line stays with 0 bars, for a blank row would end the
 * list. Rests go to a line of the same size and length, else into a free row of a list with all four
 * columns, else under a heading of their own below everything. Rests are whole mm, rounded down.
 */
export function remnantBooking(
  sheet: Sheet,
  standard: Standard,
  all: readonly SizePlan[],
  leastRemnant: number,
  isHeld: IsHeld = () => false,
): RemnantBooking | Refusal {
  const { firm: plans, notes: ofHeld } = withoutHeld(all, isHeld);
  const sections = findSections(sheet);
  const held = heldLines(sheet, standard, sections);
  const ofSize = (size: string, length: number): HeldLine[] =>
    held.filter(
      ({ line }) => isSameSize(line.size ?? "", size, standard) && Math.abs(line.length - length) < NOISE,
    );
  for (const { size, plan } of plans) {
    for (const { stock, remnant, times } of plan.patterns) {
      const refusal = remnant ? takeOff(ofSize(size, stock), size, stock, times, sheet) : null;
      if (refusal !== null) return refusal;
    }
  }
  const { rests, notes } = restsOf(plans, leastRemnant);
  const added: Rest[] = [];
  for (const rest of rests) {
    const known = ofSize(rest.size, rest.length).find(
      ({ line, section }) => section.columns.has("count") && line.heat === rest.heat,
    );
    if (known === undefined) added.push(rest);
    else known.after += rest.count;
  }
  return written(sheet, sections, held, added, [...notes, ...ofHeld]);
}

/** mm: noise of inch conversions */
const NOISE = 1e-6;

interface HeldLine {
  readonly line: ShopStock;
  readonly section: ShopSection;
  readonly before: number;
  after: number;
}

interface Rest {
  readonly size: string;
  readonly length: number;
  readonly heat: string | null;
  count: number;
}

function heldLines(sheet: Sheet, standard: Standard, sections: readonly ShopSection[]): HeldLine[] {
  return readShop(sheet, standard).stock.flatMap((line) => {
    const section = sections.find(({ rows }) => rows.includes(line.row));
    const before = line.count ?? 1;
    return line.remnant && line.size !== null && section !== undefined
      ? [{ line, section, before, after: before }]
      : [];
  });
}

/** Takes bars off lines in the order of the sheet. */
function takeOff(
  lines: readonly HeldLine[],
  size: string,
  length: number,
  bars: number,
  sheet: Sheet,
): Refusal | null {
  let left = bars;
  for (const held of lines) {
    const taken = Math.min(left, held.after);
    if (taken > 0 && !held.section.columns.has("count"))
      return noCountColumn({ row: sheet.top + held.line.row + 1, column: SHOP_COLUMNS.count[0] });
    held.after -= taken;
    left -= taken;
  }
  return left === 0 ? null : notOnHand({ bars: left, size, length });
}

/** Rests worth keeping, equal ones of a heat together, longest first within a size. */
function restsOf(plans: readonly SizePlan[], leastRemnant: number): { rests: Rest[]; notes: string[] } {
  const notes: string[] = [];
  const rests: Rest[] = [];
  for (const { size, grade, list } of plans) {
    const kept = list.filter(({ offcut }) => offcut > 0 && offcut >= leastRemnant - NOISE);
    if (kept.length === 0) continue;
    if (size === "" || grade !== null) {
      const whose = grade === null ? "no known size" : `${size} ${grade}, whose grade the sheet cannot say,`;
      notes.push(`rests of ${whose} are not written: note them by hand`);
      continue;
    }
    const alike = new Map<string, Rest>();
    for (const { offcut, bars, heats } of kept) {
      const length = Math.floor(offcut + NOISE);
      for (const one of heats.length === 0 ? [{ heat: null, bars }] : heats) {
        const key = JSON.stringify([length, one.heat]);
        const known = alike.get(key) ?? { size, length, heat: one.heat, count: 0 };
        known.count += one.bars;
        alike.set(key, known);
      }
    }
    rests.push(...[...alike.values()].sort((a, b) => b.length - a.length));
  }
  return { rests, notes };
}

function written(
  sheet: Sheet,
  sections: readonly ShopSection[],
  held: readonly HeldLine[],
  added: readonly Rest[],
  notes: readonly string[],
): RemnantBooking {
  const changes: RemnantChange[] = [];
  const edits: { cell: string; to: string | number }[] = [];
  const write = (row: number, column: number, to: string | number): void => {
    edits.push({ cell: cellAddress(sheet, row, column), to });
  };
  const numbered = (row: number): number => sheet.top + row + 1;
  for (const { line, section, before, after } of held) {
    if (before === after) continue;
    write(line.row, section.columns.get("count")!, after);
    const { size, length, row } = line;
    changes.push({ row: numbered(row), size: size ?? "", length, before, after, replaces: null });
  }
  // an empty line with its heat stays: it says where bars came from
  const emptied = held
    .filter(({ line, before, after }) => before === 0 && after === 0 && line.heat === null)
    .map(({ line }) => line);
  const nowhere = new Set<string>();
  const { rows, headingRow } = freeRemnantRows(sheet, sections, emptied, added.length);
  if (headingRow !== null) {
    write(headingRow, 0, SHOP_REMNANTS_TITLE);
    [...SHOP_REMNANT_COLUMNS, "heat" as const].forEach((column, at) => {
      write(headingRow + 1, at, SHOP_COLUMNS[column][0]);
    });
  }
  added.forEach(({ size, length, count, heat }, index) => {
    const { row, columns, replaces } = rows[index]!;
    write(row, columns.size, /^\d+(\.\d+)?$/.test(size) ? Number(size) : size);
    write(row, columns.stockLength, length);
    write(row, columns.count, count);
    write(row, columns.kind, SHOP_REMNANT);
    if (heat !== null && columns.heat !== undefined) write(row, columns.heat, heat);
    else if (heat !== null) nowhere.add(heat);
    const before = replaces === null ? null : { size: replaces.size ?? "", length: replaces.length };
    changes.push({ row: numbered(row), size, length, before: null, after: count, replaces: before });
  });
  const lost = [...nowhere].join(", ");
  const noColumn =
    lost === ""
      ? []
      : [
          `the list of remnants has no column "${SHOP_COLUMNS.heat[0]}": rests of ${lost} are written without`,
        ];
  return {
    changes,
    edits,
    headingRow: headingRow === null ? null : numbered(headingRow),
    notes: [...notes, ...noColumn],
  };
}
