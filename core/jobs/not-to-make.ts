import { type HoldsOfRow, whysInWords } from "../audit/holds";
import type { CutRow } from "../cutting/cut-row";
import { rowOfPiece } from "../cutting/row-of-piece";
import { shortened } from "../schedule/cells/longest-text";
import { counted } from "../units/counted";

/** Pieces of a row that may hurt somebody, or that cannot be bent as it stands. */
export interface NotToMake {
  readonly size: string;
  readonly mark: string | null;
  readonly schedule?: string | null;
  readonly count: number;
  readonly sheet: string;
  /** address of its length */
  readonly cell: string;
  /** the findings of the row, the worst first */
  readonly why: string;
}

/** The rows of a cut list that are not to be made until somebody clears them: by the findings of their sheets, or by their shape. */
export function piecesNotToMake(rows: readonly CutRow[], holdsOfRow: HoldsOfRow): NotToMake[] {
  return rows.flatMap((piece) => {
    const { size, mark, schedule = null, count, sheet, cell, unmade } = piece;
    const why = whysInWords(holdsOfRow(sheet, rowOfPiece(piece))) ?? unmade;
    return why === undefined ? [] : [{ size, mark, schedule, count, sheet, cell, why }];
  });
}

/** The rows of a cut list that are planned as any other and perhaps unsafe or unbendable: to be asked about before they are made. */
export function piecesToAsk(
  rows: readonly CutRow[],
  asksOfRow: HoldsOfRow,
  notToMake: readonly NotToMake[],
): NotToMake[] {
  const held = new Set(notToMake.map(({ sheet, cell }) => `${cell} ${sheet}`));
  return piecesNotToMake(
    rows.filter(({ sheet, cell }) => !held.has(`${cell} ${sheet}`)).map(({ unmade: _, ...row }) => row),
    asksOfRow,
  );
}

/** Tells the pieces of a plan that are among these. */
export function isAmongHeld(notToMake: readonly NotToMake[]): (size: string, mark: string) => boolean {
  const held = new Set<string>();
  for (const { size, mark, schedule, sheet } of notToMake) {
    const name = mark ?? "no mark";
    // a plan of several schedules calls its pieces by both
    held.add(JSON.stringify([size, name])).add(JSON.stringify([size, `${schedule ?? sheet} ${name}`]));
  }
  return (size, mark) => held.has(JSON.stringify([size, mark]));
}

/** "H16, mark 01, 10 bars, Slab!G5: former 40 mm is below the least 64 mm for H16" */
export function notToMakeText(
  { size, mark, count, sheet, cell, why }: NotToMake,
  namesSheet: boolean,
): string {
  const place = namesSheet ? `${sheet}!${cell}` : cell;
  const named = [
    shortened(size),
    mark === null ? null : `mark ${shortened(mark)}`,
    counted(count, "bar"),
    place,
  ];
  return `${named.filter((part) => part !== null).join(", ")}: ${why}`;
}
