import type { Standard } from "../../standards/port";
import { filledColumns } from "../rows/row-cells";
import { headsSums } from "../rows/sum-rows";
import type { Sheet } from "../sheet";
import type { sheetAccess } from "../sheet-access";
import { type HeadersByArithmetic, headersByArithmetic } from "./headers-by-arithmetic";
import { pointedHeader, withPointed } from "./pointed-header";

const MOST_ROWS_WITHOUT_HEADER = 2000;

/** Headers of a sheet without known words: the one that the user pointed at, or those that the rows' own products tell. */
export function provenHeaders(
  { rowCount, columnCount }: Sheet,
  access: ReturnType<typeof sheetAccess>,
  standard: Standard,
): HeadersByArithmetic & { readonly isPointed: boolean } {
  const rows = Math.min(rowCount, MOST_ROWS_WITHOUT_HEADER);
  const cells = Array.from({ length: rows }, (_, row) => access.cells(row));
  const pointed = access.corrections === 0 ? null : pointedHeader(cells, columnCount, access.correction);
  if (pointed !== null) {
    const header = { ...pointed, firstBar: pointed.begins, kept: 0, tested: 0 };
    return { headers: [header], isTransposed: false, isPointed: true };
  }
  const { headers, isTransposed } = headersByArithmetic(cells, standard);
  // sizes below words for sums alone are no list, whatever their numbers look like
  const ofBars = headers.filter(({ begins, firstBar }) => {
    const words = cells[begins] ?? [];
    return begins >= firstBar || !headsSums(words, filledColumns(words));
  });
  const corrected = ofBars.map((found) => ({
    ...found,
    header: withPointed(found.header, access.correction),
  }));
  return { headers: corrected, isTransposed, isPointed: false };
}
