import { namedInCells } from "../bar/named-in-cells";
import { isFindingsSheet } from "../own/own-papers";
import { isOwnSheet } from "../own/own-sheet";
import { readSchedule } from "../schedule/read-schedule";
import type { Sheet } from "../schedule/sheet";
import { hasShopName } from "../shop/has-shop-name";
import { isShopSheet } from "../shop/is-shop-sheet";
import { contradicts, namesDocument, resolveStandard } from "../standards/index";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** Rows at the top of a sheet, and at its foot, in which a list says what it goes by. */
const ROWS_OF_ENDS = 100;

/**
 * The id of the document that the sheets themselves name, for a check for which nobody chose one; null where none
 * is named, where one of them goes with the standard given, where two of them contradict each other, or where bars
 * have sizes that it does not hold and the standard given does.
 *
 * @param standard the default, which the sheets are read by
 */
export function standardNamed(sheets: readonly Sheet[], standard: Standard): string | null {
  const byLists = new Set<string>();
  const byOthers = new Set<string>();
  const sizes: string[] = [];
  for (const sheet of sheets) {
    if (isShopSheet(sheet) || isOwnSheet(sheet) || isFindingsSheet(sheet) || !mayName(sheet)) continue;
    const reading = readSchedule(sheet, standard);
    // notes on a sheet of the yard's are none of the job's
    if (hasShopName(sheet.name) && reading.bars.length === 0) continue;
    const ids = reading.bars.length > 0 ? byLists : byOthers;
    for (const { id, isNamed } of namedInCells(sheet, reading)) if (isNamed) ids.add(id);
    for (const { sizeTyped } of reading.bars) if (sizeTyped !== null) sizes.push(sizeTyped);
  }
  // a letter beside the schedule may speak of another job
  const all = [...(byLists.size > 0 ? byLists : byOthers)];
  if (all.some((id) => !contradicts(id, standard.id))) return null;
  const named = all.find((id) => all.every((other) => !contradicts(other, id))) ?? null;
  return named !== null && holdsSizes(named, sizes, standard) ? named : null;
}

/** Sizes such as "T12" are none of a document that names its bars otherwise. */
function holdsSizes(id: string, sizes: readonly string[], standard: Standard): boolean {
  const named = resolveStandard(id);
  if (isRefusal(named)) return false;
  const isAbroad = (typed: string): boolean =>
    isRefusal(named.readSize(typed)) && !isRefusal(standard.readSize(typed));
  return sizes.filter(isAbroad).length * 2 <= sizes.length;
}

function mayName({ rowCount, columnCount, cell }: Sheet): boolean {
  for (let row = 0; row < rowCount; row += 1) {
    if (row === ROWS_OF_ENDS && rowCount > 2 * ROWS_OF_ENDS) row = rowCount - ROWS_OF_ENDS;
    for (let column = 0; column < columnCount; column += 1) {
      const text = cell(row, column);
      if (typeof text === "string" && namesDocument(text)) return true;
    }
  }
  return false;
}

/** The standard of the id that the sheets name, with what the one given brings of its own; that one where they name none. */
export function inForceBy(named: string | null, standard: Standard): Standard {
  const resolved = named === null ? standard : resolveStandard(named, standard.own);
  return isRefusal(resolved) ? standard : resolved;
}
