import type { FlagBand, SheetChanges } from "../../workbook/sheet-changes";
import type { Workbook } from "../read/open-workbook";
import type { Packed } from "../zip/write-zip";
import type { RowsApart, RowsTask } from "./rows-apart";
import { StylePatch } from "./style-patch";

/** A sheet that another thread rewrites and packs while this one makes what else is to stand in the copy. */
export interface BegunSheet {
  readonly sheet: string;
  /** those of its coloured rows are made already */
  readonly styles: StylePatch;
  /** What that thread made, given the part's text after its rows; null where it could not. */
  finish(tail: string): Packed | null;
}

/**
 * Has the one sheet that is changed rewritten by another thread, where rows are to be coloured and nothing else is
 * asked of its cells; null where it is not, or `begin` will not. Its cells are still asked for their styles.
 */
export function beginSheet(
  workbook: Workbook,
  changes: ReadonlyMap<string, SheetChanges>,
  styleAt: (row: number, column: number) => number,
  begin: (task: RowsTask) => RowsApart | null,
): BegunSheet | null {
  const [[sheet, change] = [null, null], ...others] = changes;
  const listing = sheet === null ? undefined : workbook.sheet(sheet);
  const flags = change === null ? null : onlyFlags(change);
  const { stylesPart, parts } = workbook;
  if (sheet === null || listing === undefined || flags === null || stylesPart === null || others.length > 0)
    return null;
  const entry = parts.archive.entries.get(parts.nameOf(listing.part) ?? "");
  if (entry === undefined) return null;
  // not its packed bytes, which may have to be read from the file
  const { name, method, crc, time, date, flags: bits, declaredSize, compressedSize, start } = entry;
  const before = parts.text(stylesPart);
  const apart = begin({
    entry: { name, method, crc, time, date, flags: bits, declaredSize, compressedSize, start },
    head: workbook.layout(listing).head,
    flags,
    styles: before,
  });
  if (apart === null) return null;
  const styles = new StylePatch(before);
  addFlagStyles(styles, flags, styleAt);
  const made = styles.text();
  return {
    sheet,
    styles,
    finish: (tail) => {
      const done = apart.finish(tail);
      // cells go by the styles' numbers: both threads have to have made the same
      return done?.styles === made ? done.packed : null;
    },
  };
}

/** The rows to be coloured; null where more is asked. */
function onlyFlags(change: SheetChanges): readonly FlagBand[] | null {
  const { flags = [], notes: _, clear, ...others } = change;
  const isMore = clear === true || Object.values(others).some((value) => value !== undefined);
  return isMore || flags.length === 0 ? null : flags;
}

/** Makes the styles of coloured rows in the order in which rewriting the rows does. */
function addFlagStyles(
  styles: StylePatch,
  flags: readonly FlagBand[],
  styleAt: (row: number, column: number) => number,
): void {
  for (const { row, firstColumn, lastColumn, colour } of [...flags].sort((a, b) => a.row - b.row))
    for (let column = firstColumn; column <= lastColumn; column += 1)
      styles.flagged(styleAt(row, column), colour);
}
