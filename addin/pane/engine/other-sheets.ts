import type { Sheet } from "../../../core/schedule/sheet";

/** Other sheets of a workbook that stand before one and behind it: it may be superseded by one of them. */
export interface OtherSheets {
  readonly before: readonly Sheet[];
  readonly behind: readonly Sheet[];
}

export const NO_OTHER_SHEETS: OtherSheets = { before: [], behind: [] };

/** All that an audit of one sheet is to read, in the order of the workbook. */
export function sheetsToRead(
  sheet: Sheet,
  shop: Sheet | null,
  { before, behind }: OtherSheets,
): readonly Sheet[] {
  return [...before, sheet, ...behind, ...(shop === null ? [] : [shop])];
}
