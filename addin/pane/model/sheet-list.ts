import type { SheetSummary } from "../../workbook/workbook-port";

/** What became of a workbook's sheets between two looks at them. */
export interface SheetListChange {
  /** new names by the old ones */
  readonly renamed: ReadonlyMap<string, string>;
  /** names of sheets that are no longer there */
  readonly gone: readonly string[];
  /** the same sheets stand in the same order, seen or hidden as before */
  readonly isSame: boolean;
}

/** Sheets are told by their ids, so that one renamed is still itself. */
export function sheetListChange(
  before: readonly SheetSummary[],
  now: readonly SheetSummary[],
): SheetListChange {
  const nameNow = new Map(now.map(({ id, name }) => [id, name]));
  const renamed = new Map<string, string>();
  const gone: string[] = [];
  for (const { id, name } of before) {
    const called = nameNow.get(id);
    if (called === undefined) gone.push(name);
    else if (called !== name) renamed.set(name, called);
  }
  const shape = (list: readonly SheetSummary[]): string =>
    JSON.stringify(list.map(({ id, name, visible }) => [id, name, visible]));
  return { renamed, gone, isSame: shape(before) === shape(now) };
}
