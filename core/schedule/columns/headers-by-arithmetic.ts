import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { Standard } from "../../standards/port";
import type { ColumnKind, ColumnUnit } from "../bar-row";
import { sizeCellReader } from "../cells/read-size-cell";
import { type FoundTable, findTables, type RoleEvidence, type TableEvidence } from "../evidence/index";
import type { Header } from "../header/find-header";
import { type HeaderColumn, sizeNamed } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
import { type Heading, readHeading } from "../rows/read-heading";
import type { Cell } from "../sheet";

/** A table that the arithmetic of its rows told, where no header of known words stands. */
export interface HeaderByArithmetic {
  readonly header: Header;
  /** the row at which the table begins: that of its unknown words, or its first bar */
  readonly begins: number;
  readonly firstBar: number;
  readonly kept: number;
  readonly tested: number;
}

/** What arithmetic makes of a sheet without a known header. */
export interface HeadersByArithmetic {
  readonly headers: readonly HeaderByArithmetic[];
  /** bars stand in columns, so that no table can be read row by row */
  readonly isTransposed: boolean;
}

const LEAST_BARS = 5;
const KEEPS = 0.75;
const KINDS: ReadonlySet<string> = new Set<ColumnKind>([
  ...(["size", "members", "each", "total", "length", "totalLength", "mass", "unitMass"] as const),
  ...(["spacing", "shape", "mark"] as const),
]);
/** what proves the amounts of a table; sizes that are written as such need no more than its legs */
const AMOUNTS: ReadonlySet<string> = new Set(["mass", "totalLength", "bySize"]);
const NAMED = 0.9;
const MOST_NUMBERS = 0.3;

/** Tables of which a product of size, count and length is kept by most rows; others stay unread. */
export function headersByArithmetic(
  cells: readonly (readonly Cell[])[],
  standard: Standard,
): HeadersByArithmetic {
  const { tables, isTransposed } = findTables(cells, standard);
  if (isTransposed) return { headers: [], isTransposed };
  const headers = tables.flatMap((table) => {
    const proof = surestProof(table.evidence) ?? proofByLooks(table, cells, standard);
    return proof === null ? [] : [headerOf(table, cells, proof, standard)];
  });
  return { headers, isTransposed };
}

interface Proof {
  readonly kept: number;
  readonly tested: number;
}

function surestProof({ roles, proofs }: TableEvidence): Proof | null {
  const held = new Set([...roles.values()].map(({ role }) => role));
  const isCounted = held.has("total") || held.has("each");
  if (!held.has("size") || !held.has("length") || !isCounted) return null;
  return (
    proofs.find(
      ({ identity, kept, tested }) => AMOUNTS.has(identity) && tested >= LEAST_BARS && kept >= KEEPS * tested,
    ) ?? null
  );
}

/**
 * Where no product tells, sizes that are written as sizes, one column of lengths and one of counts do, or counts and
 * legs that prove each other; no other column may hold numbers. Nothing confirms it, which the sheet then says.
 */
function proofByLooks(
  { evidence: { roles, proofs }, rows }: FoundTable,
  cells: readonly (readonly Cell[])[],
  standard: Standard,
): Proof | null {
  const of = (role: string) => [...roles.values()].filter((one) => one.role === role);
  const [size] = of("size");
  const counts = [...of("total"), ...of("each")];
  if (size === undefined || of("length").length !== 1 || counts.length === 0 || rows.length < LEAST_BARS)
    return null;
  const readSize = sizeCellReader(standard, false);
  const named = rows.filter((row) => {
    const cell = cells[row]?.[size.column];
    return typeof cell === "string" && /\D/.test(cell.trim()) && readSize(cell, "").size !== null;
  });
  if (named.length < NAMED * rows.length) return null;
  const isKept = (identity: string): boolean =>
    proofs.some((one) => one.identity === identity && one.kept >= KEEPS * one.tested);
  if (counts.length > 1 && !isKept("members")) return null;
  const isNumber = (cell: Cell | undefined): boolean => typeof cell === "number";
  const isSpare = of("other").some(({ column }) => {
    const numbers = rows.filter((row) => isNumber(cells[row]?.[column])).length;
    return numbers > MOST_NUMBERS * rows.length;
  });
  if (isSpare) return null;
  const legs = proofs.find(({ identity }) => identity === "legs");
  return legs ?? { kept: 0, tested: 0 };
}

function headerOf(
  { firstRow, lastRow, left, right, shared, evidence }: FoundTable,
  cells: readonly (readonly Cell[])[],
  { kept, tested }: Proof,
  standard: Standard,
): HeaderByArithmetic {
  const isOfMember = isCountedByMember(cells.slice(Math.max(0, firstRow - 1), lastRow), evidence);
  const over = cells[firstRow - 1] ?? [];
  const words = over.slice(left, right + 1).filter((cell) => typeof cell === "string" && cell.trim() !== "");
  const hasWords = words.length >= 2;
  const textOver = (column: number): string => {
    const cell = over[column];
    return hasWords && typeof cell === "string" ? cell.trim() : "";
  };
  const columns: HeaderColumn[] = [];
  const unknown: { column: number; header: string }[] = [];
  const taken = new Set<ColumnKind>();
  let legs = 0;
  for (let column = shared > 0 ? 0 : left; column <= right; column += 1) {
    const found = evidence.roles.get(column);
    const own = found?.role === "leg" ? DIMENSION_LETTERS[legs++] : kindOf(found, textOver(column));
    const kind = own === "total" && isOfMember ? "each" : own;
    if (kind === undefined || taken.has(kind)) {
      unknown.push({ column, header: textOver(column) });
      continue;
    }
    taken.add(kind);
    const unit = found === undefined || found.role === "leg" ? null : lengthOrMass(found.unit);
    columns.push({ kind, column, header: textOver(column), unit, corrected: false, by: "arithmetic" });
  }
  const bySize = sizesOver(cells.slice(Math.max(0, firstRow - MOST_OVER), firstRow), evidence, standard);
  const block = { left, right, columns, ignored: [], bySize, unknown, countIsSettled: true };
  // a heading right above belongs to the bars
  const first = !hasWords && isHeadingRow(over) ? firstRow - 1 : firstRow;
  const bottom = first - 1;
  const header = { top: hasWords ? bottom : first, bottom, blocks: [block] };
  return { header, begins: header.top, firstBar: first, kept, tested };
}

/** rows over the first bar in which the sizes of its columns stand */
const MOST_OVER = 3;

/** The sizes that stand over the columns by size; none where one of them has none. */
function sizesOver(
  over: readonly (readonly Cell[])[],
  { roles }: TableEvidence,
  standard: Standard,
): readonly { readonly size: string; readonly column: number }[] {
  const columns = [...roles].flatMap(([column, { role }]) => (role === "bySize" ? [column] : []));
  const sized = columns.flatMap((column) => {
    const sizes = over.flatMap((cells) => sizeNamed(String(cells[column] ?? ""), standard) ?? []);
    const size = sizes.at(-1);
    return size === undefined ? [] : [{ column, size }];
  });
  return sized.length < columns.length ? [] : sized.sort((one, other) => one.column - other.column);
}

/** Headings give members, and no product says that the count is of them all. */
function isCountedByMember(cells: readonly (readonly Cell[])[], { roles, proofs }: TableEvidence): boolean {
  const isTested = proofs.some(({ identity }) => AMOUNTS.has(identity));
  if (isTested || [...roles.values()].some(({ role }) => role === "members" || role === "each")) return false;
  return cells.some((row) => (headingOf(row)?.members ?? 1) > 1);
}

function isHeadingRow(row: readonly Cell[]): boolean {
  const heading = headingOf(row);
  return heading !== null && heading.members !== null;
}

/** What the one text of a row says as a heading. */
function headingOf(row: readonly Cell[]): Heading | null {
  const filled = row.filter((cell) => cell !== null && cell !== undefined && cell !== "");
  const [only] = filled;
  return filled.length === 1 && typeof only === "string" ? readHeading(only) : null;
}

/** Arithmetic tells amounts; of other columns a word over them may. */
function kindOf(found: RoleEvidence | undefined, text: string): ColumnKind | undefined {
  if (found !== undefined && KINDS.has(found.role)) return found.role as ColumnKind;
  const meaning = text === "" ? null : recogniseHeader(text);
  if (meaning === null || meaning.kind === "ignored" || KINDS.has(meaning.kind)) return undefined;
  return meaning.kind;
}

function lengthOrMass(unit: RoleEvidence["unit"]): ColumnUnit | null {
  return unit === null || unit === "kg/m" || unit === "lb/ft" ? null : unit;
}
