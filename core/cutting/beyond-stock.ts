import type { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { isFromCoil } from "../bar/is-from-coil";
import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { isRefusal, refusalText } from "../units/refusal";
import { pieceRefusal } from "./cutting-question";
import type { CuttingSupply } from "./cutting-supply";
import { planBySize } from "./plan-by-size";
import { bothReasons } from "./refused-text";
import { rowOfPiece } from "./row-of-piece";
import { rowsToCut, sizeRefusal } from "./rows-to-cut";
import { isShort } from "./short-of-stock";

/** Why no stock of the yard gives a row's bars, or not all of them, as its cut list says; null where it does, or they come off a coil. */
export type BeyondStock = (facts: BarFacts) => string | null;

/** mm: up to which bars of a size are given however many there are; what is held in numbers may run out. */
export function endlessLength(supply: CuttingSupply, size: string): number {
  const stock = supply.linesOf(size);
  if (stock === null) return Infinity;
  let most = 0;
  for (const { count, length } of stock) if (count === null) most = Math.max(most, length);
  return most - supply.endCrop;
}

/** Asks every bar of a book of the same stock as its cut list does. */
export function beyondStock(
  supply: CuttingSupply,
  schedules: readonly { readonly sheet: Sheet; readonly reading: ScheduleReading }[],
  standard: Standard,
): BeyondStock {
  const known = new Map<string, { stock: ReturnType<CuttingSupply["linesOf"]>; endless: number }>();
  let short: ReadonlyMap<string, string> | null = null;
  return (facts) => {
    const { sizeName, sheet, row } = facts;
    let ofSize = known.get(sizeName);
    if (ofSize === undefined) {
      const stock = supply.linesOf(sizeName);
      ofSize = { stock, endless: endlessLength(supply, sizeName) };
      known.set(sizeName, ofSize);
    }
    const { stock, endless } = ofSize;
    const length = barLength(facts, "to cut");
    if (stock === null || isRefusal(length) || isFromCoil(facts)) return null;
    const piece = { length: length.length, count: 1 };
    const refused = pieceRefusal(piece, { stock, endCrop: supply.endCrop }, supply.unit);
    if (refused !== null) {
      const ofSize = sizeRefusal(facts, standard);
      return refusalText(ofSize === null ? refused : bothReasons(ofSize, refused, supply.unit), supply.unit);
    }
    if (length.length <= endless) return null;
    short ??= shortRows(supply, schedules, standard);
    return short.get(placeOf(sheet.sheet.name, sheet.sheet.top + row.row + 1)) ?? null;
  };
}

const placeOf = (sheet: string | null, row: number): string => JSON.stringify([sheet, row]);

/** Rows of which the bars held do not give all, by the plan of the whole book. */
function shortRows(
  supply: CuttingSupply,
  schedules: Parameters<typeof beyondStock>[1],
  standard: Standard,
): ReadonlyMap<string, string> {
  const rows = schedules.flatMap(({ sheet, reading }) => rowsToCut(sheet, reading, standard).rows);
  const { refused } = planBySize(rows, supply);
  return new Map(
    refused
      .filter(isShort)
      .map((row) => [
        placeOf(row.sheet, rowOfPiece({ ...row, cell: row.cell ?? "" })),
        refusalText(row.reason, supply.unit),
      ]),
  );
}
