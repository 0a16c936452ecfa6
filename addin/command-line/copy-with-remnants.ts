import {
  bookedCutsFrom,
  bookedCutsText,
  bookedTwice,
  cutOf,
  remnantBooking,
  type SizePlan,
} from "../../core/cutting";
import { isAmongHeld, type NotToMake } from "../../core/jobs";
import type { Sheet } from "../../core/schedule";
import { hasShopName, isShopSheet } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { parseAddress } from "../workbook/cell-address";
import { textConstant } from "../workbook/defined-name";
import { SETTING_NAMES } from "../workbook/setting-names";
import { settingPieces } from "../workbook/setting-pieces";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import type { BookFile } from "./open-book";

/** A planned cut whose remnants are to stand in a copy of its book. */
export interface CutToBook {
  readonly book: BookFile;
  readonly groups: readonly SizePlan[];
  /** mm */
  readonly leastRemnant: number;
  readonly standard: Standard;
  /** the schedules that were planned */
  readonly sheets: readonly Sheet[];
  readonly notToMake: readonly NotToMake[];
  /** the same steel is booked a second time on purpose */
  readonly isAgain: boolean;
}

/**
 * Bytes of the book with the plan's remnants on its Shop sheet, and what was written in words. Only the
 * cells concerned, the name that remembers the cut and what registers them change. Refuses a book without
 * a Shop sheet, and a cut whose remnants are written already.
 */
export function copyWithRemnants(cut: CutToBook): { bytes: Uint8Array; said: string[] } {
  const { book, groups, leastRemnant, standard, sheets, isAgain } = cut;
  if (book.workbook === null) throw new InputRefused("--out with remnants needs an .xlsx file as BOOK");
  const name = book.sheets.find(
    (sheet) => hasShopName(sheet.name) && isShopSheet(book.read(sheet.name)),
  )?.name;
  if (name === undefined)
    throw new InputRefused(
      "the book has no Shop sheet to write remnants to: add one, with the pane or by hand",
    );
  const booked = bookedCutsFrom(book.setting(SETTING_NAMES.cutLists));
  if (booked === null)
    throw new InputRefused(
      `the name ${SETTING_NAMES.cutLists} of the book cannot be read: take it out of the book`,
    );
  const planned = new Set(groups.flatMap(({ rows }) => rows.map(({ sheet }) => sheet)));
  const from = sheets.filter((sheet) => planned.has(sheet.name)).map((sheet) => sheet.name);
  const own = cutOf(from.join(", "), groups, new Date().toISOString().slice(0, 10));
  const twice = bookedTwice(booked, own);
  if (twice !== null && !isAgain)
    throw new InputRefused(`${twice}; nothing was written, --again does it all the same`);
  const booking = remnantBooking(book.read(name), standard, groups, leastRemnant, isAmongHeld(cut.notToMake));
  if (isRefusal(booking)) throw new InputRefused(refusalText(booking));
  const writes = booking.edits.map(({ cell, to }) => ({ ...parseAddress(cell)!, value: to }));
  const kept = settingPieces(SETTING_NAMES.cutLists, bookedCutsText(booked, own));
  const names = new Map([...kept].map(([piece, text]) => [piece, textConstant(text)]));
  const bytes = patchWorkbook(
    book.workbook,
    { sheets: new Map([[name, { writes }]]), names },
    { newDeflater: nativeDeflater },
  );
  const said = booking.changes.map(({ row, size, length, before, after }) => {
    const bars = before === null ? `${after} new` : `${before} on hand before, ${after} after`;
    return `${name} row ${row}: remnants of ${size}, ${length} mm: ${bars}`;
  });
  const nothing =
    said.length === 0 ? [`${name}: no rest of ${leastRemnant} mm or more, no remnant used`] : [];
  return { bytes, said: [...said, ...nothing, ...booking.notes] };
}
