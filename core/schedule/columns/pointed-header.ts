import type { ColumnKind } from "../column-kind";
import type { Header } from "../header/find-header";
import type { HeaderColumn } from "../header/header-blocks";
import type { HeaderSource } from "../header/header-source";
import type { ColumnCorrection } from "../read-options";
import type { Cell } from "../sheet";

/** kinds that have to be pointed at before they make a table without any word */
const LEAST_POINTED = 3;
const COUNTS: ReadonlySet<string> = new Set(["total", "each"]);
const NUMBERS: ReadonlySet<string> = new Set(["size", "total", "each", "length"]);

type CorrectionAt = HeaderSource["correction"];

/** The table of columns that somebody pointed at by their letters, where no word heads them. */
export interface PointedHeader {
  readonly header: Header;
  /** row of its first bar */
  readonly begins: number;
}

/** Null where too few columns are pointed at, or no row fills those that a bar needs. */
export function pointedHeader(
  cells: readonly (readonly Cell[])[],
  columnCount: number,
  correction: CorrectionAt,
): PointedHeader | null {
  const columns: HeaderColumn[] = [];
  const ignored: number[] = [];
  for (let column = 0; column < columnCount; column += 1) {
    const said = correction("", column);
    if (said?.kind === "ignored") ignored.push(column);
    else if (said?.kind !== undefined) columns.push(pointed(column, said.kind, said.unit));
  }
  const kinds = new Set<string>(columns.map(({ kind }) => kind));
  const isCounted = [...COUNTS].some((kind) => kinds.has(kind));
  if (kinds.size < LEAST_POINTED || !isCounted || !(kinds.has("size") || kinds.has("length"))) return null;
  const needed = columns.filter(({ kind }) => NUMBERS.has(kind));
  const begins = cells.findIndex((row) => needed.every(({ column }) => holdsNumber(row[column])));
  if (begins < 0) return null;
  const block = { left: 0, right: columnCount - 1, columns, ignored, bySize: [], unknown: [] };
  return { header: { top: begins, bottom: begins - 1, blocks: [block] }, begins };
}

/** A header that the rows' arithmetic made, with what somebody pointed at in the place of what it says there. */
export function withPointed(header: Header, correction: CorrectionAt): Header {
  return {
    ...header,
    blocks: header.blocks.map((block) => {
      let { columns } = block;
      for (let column = block.left; column <= block.right; column += 1) {
        const own = columns.find((one) => one.column === column);
        const said = correction(own?.header ?? "", column);
        const kind = said?.kind ?? own?.kind;
        if (said === null || kind === undefined) continue;
        const others = columns.filter((one) => one.column !== column && one.kind !== kind);
        const unit = said.unit ?? (said.kind === undefined ? own?.unit : null) ?? undefined;
        columns = kind === "ignored" ? others : [...others, pointed(column, kind, unit)];
      }
      return { ...block, columns: [...columns].sort((one, other) => one.column - other.column) };
    }),
  };
}

function pointed(column: number, kind: ColumnKind, unit: ColumnCorrection["unit"] | undefined): HeaderColumn {
  return { kind, column, header: "", unit: unit ?? null, corrected: true };
}

function holdsNumber(cell: Cell | undefined): boolean {
  return typeof cell === "number" || (typeof cell === "string" && /\d/.test(cell));
}
