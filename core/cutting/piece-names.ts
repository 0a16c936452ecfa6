import type { CutRow } from "./cut-row";

type Named = Pick<CutRow, "mark" | "schedule" | "sheet">;

/** How the pieces of these rows are called on a cut list: by their schedule too as soon as there are two. */
export function pieceNames(rows: readonly Named[]): (row: Named) => string {
  const isSeveral = new Set(rows.map(scheduleOf)).size > 1;
  return (row) => (isSeveral ? `${scheduleOf(row)} ${row.mark ?? "no mark"}` : (row.mark ?? "no mark"));
}

const scheduleOf = ({ schedule, sheet }: Named): string => schedule ?? sheet;
