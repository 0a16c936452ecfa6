import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { ColumnKind } from "../column-kind";
import { markKey } from "../mark-key";
import type { Header } from "./find-header";
import type { HeaderBlock } from "./header-blocks";
import type { HeaderSource } from "./header-source";

const ROWS_LOOKED_AT = 200;
/** share of its marks that the list has */
const KNOWN = 0.6;
const LEAST_KNOWN = 2;
const AMOUNTS: ReadonlySet<string> = new Set<ColumnKind>([
  ...([
    "size",
    "members",
    "each",
    "total",
    "mass",
    "pieceMass",
    "unitMass",
    "totalLength",
    "spacing",
  ] as const),
]);

/**
 * True for a table of the sketches of marks that a list before it has: marks, shapes and lengths, and no size, number or
 * mass. It says how the bars of that list are bent, and holds no bars of its own.
 */
export function listsDetails(
  source: HeaderSource,
  header: Header,
  { columns, bySize }: HeaderBlock,
  marksBefore: () => ReadonlySet<string>,
): boolean {
  const mark = columns.find(({ kind }) => kind === "mark");
  if (mark === undefined || bySize.length > 0 || columns.some(({ kind }) => AMOUNTS.has(kind))) return false;
  const marks: string[] = [];
  const last = Math.min(source.rowCount, header.bottom + 1 + ROWS_LOOKED_AT);
  for (let row = header.bottom + 1; row < last; row += 1) {
    const cell = source.cells(row)[mark.column];
    if (cell === null || cell === undefined || String(cell).length > LONGEST_VALUE) continue;
    const key = detailKey(String(cell));
    if (key !== "") marks.push(key);
  }
  if (marks.length === 0) return false;
  const before = marksBefore();
  const known = marks.filter((key) => before.has(key)).length;
  return known >= LEAST_KNOWN && known >= KNOWN * marks.length;
}

/** Marks of a sheet's bars so far, and of those of the sheets before, as details name them. */
export function marksOf(
  bars: readonly { readonly mark: string | null }[],
  before: readonly string[] = [],
): ReadonlySet<string> {
  return new Set([...bars.flatMap(({ mark }) => (mark === null ? [] : [detailKey(mark)])), ...before]);
}

/** "4*" of the list is "4" of the details: a star says that there are some. */
function detailKey(mark: string): string {
  return markKey(cleanText(mark).replace(/[*†]+/g, ""), null);
}
