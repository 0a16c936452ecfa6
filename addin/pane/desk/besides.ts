import type { Sheet } from "../../../core/schedule/sheet";

/** Other sheets of a workbook that stand before one and behind it: it may be superseded by one of them. */
export interface Besides {
  readonly before: readonly Sheet[];
  readonly behind: readonly Sheet[];
}

export const NO_BESIDES: Besides = { before: [], behind: [] };

/** All that an audit of one sheet is to read, in the order of the workbook. */
export function sheetsToRead(
  sheet: Sheet,
  shop: Sheet | null,
  { before, behind }: Besides,
): readonly Sheet[] {
  return [...before, sheet, ...behind, ...(shop === null ? [] : [shop])];
}
