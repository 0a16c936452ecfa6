import type { Standard } from "../../standards/port";
import type { ColumnKind, ColumnUnit } from "../bar-row";
import { DIM_LETTERS } from "../cells/length-field";
import { type FoundTable, findTables, type RoleEvidence, type TableEvidence } from "../evidence/index";
import type { Header } from "../header/find-header";
import type { HeaderColumn } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
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
const AMOUNTS: ReadonlySet<string> = new Set(["mass", "totalLength", "bySize"]);

/** Tables of which a product of size, count and length is kept by most rows; others stay unread. */
export function headersByArithmetic(
  cells: readonly (readonly Cell[])[],
  standard: Standard,
): HeadersByArithmetic {
  const { tables, isTransposed } = findTables(cells, standard);
  if (isTransposed) return { headers: [], isTransposed };
  const headers = tables.flatMap((table) => {
    const proof = surestProof(table.evidence);
    return proof === null ? [] : [headerOf(table, cells, proof)];
  });
  return { headers, isTransposed };
}

function surestProof({ roles, proofs }: TableEvidence): { kept: number; tested: number } | null {
  const held = new Set([...roles.values()].map(({ role }) => role));
  const isCounted = held.has("total") || held.has("each");
  if (!held.has("size") || !held.has("length") || !isCounted) return null;
  return (
    proofs.find(
      ({ identity, kept, tested }) => AMOUNTS.has(identity) && tested >= LEAST_BARS && kept >= KEEPS * tested,
    ) ?? null
  );
}

function headerOf(
  { firstRow, left, right, shared, evidence }: FoundTable,
  cells: readonly (readonly Cell[])[],
  { kept, tested }: { readonly kept: number; readonly tested: number },
): HeaderByArithmetic {
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
    const kind = found?.role === "leg" ? DIM_LETTERS[legs++] : kindOf(found, textOver(column));
    if (kind === undefined || taken.has(kind)) {
      unknown.push({ column, header: textOver(column) });
      continue;
    }
    taken.add(kind);
    const unit = found === undefined || found.role === "leg" ? null : lengthOrMass(found.unit);
    columns.push({ kind, column, header: textOver(column), unit, corrected: false, by: "arithmetic" });
  }
  const block = { left, right, columns, ignored: [], bySize: [], unknown, countIsSettled: true };
  const bottom = firstRow - 1;
  const header = { top: hasWords ? bottom : firstRow, bottom, blocks: [block] };
  return { header, begins: header.top, firstBar: firstRow, kept, tested };
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
