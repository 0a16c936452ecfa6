import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { MM_PER_UNIT } from "../../units/unit-table";
import type { ColumnKind } from "../bar-row";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import { massPerMetreOf, sizeElsewhere } from "../cells/size-elsewhere";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

/** What the columns by size hold of a row. */
export type BySizeUnit = "m" | "mm" | "cm" | "ft" | "kg" | "t";

const LEAST_VOTES = 3;
const OF_VOTES = 0.6;
/** rounded lengths; masses of one table against another's */
const LENGTH_WITHIN = 0.006;
const MASS_WITHIN = 0.025;
const LENGTHS = ["m", "mm", "ft", "cm"] as const;
const MASSES = { kg: 1, t: 1000 } as const;

/**
 * The unit in which most rows write, under the one column of their size, what number and length of their bars make;
 * null where they do not. Members that stand in a heading make it a whole number of times as much.
 */
export function unitBySize(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
  standard: Standard,
): BySizeUnit | null {
  const at = new Map(block.columns.map(({ kind, column }) => [kind, column]));
  const length = at.get("length");
  if (block.bySize.length === 0 || length === undefined) return null;
  const factor = lengths.get("length")?.factor ?? 1;
  const votes = new Map<BySizeUnit, number>();
  let tested = 0;
  for (const cells of rows) {
    const number = (kind: ColumnKind): number | null => {
      const column = at.get(kind);
      return column === undefined ? null : numberIn(cells[column], comma);
    };
    const filled = filledBySize(block.bySize, cells, comma);
    const [members, each] = [number("members") ?? 1, number("each")];
    const count = number("total") ?? (each === null ? null : members * each);
    const one = (number("length") ?? 0) * factor * (count ?? 0);
    if (filled === null || !(one > 0)) continue;
    tested += 1;
    const isWhole = at.has("total") || at.has("members");
    const unit = unitOf(filled.value, one, massOf(filled.size, standard), isWhole);
    if (unit !== null) votes.set(unit, (votes.get(unit) ?? 0) + 1);
  }
  const [best] = [...votes].sort(([, one], [, other]) => other - one);
  return best !== undefined && best[1] >= LEAST_VOTES && best[1] >= OF_VOTES * tested ? best[0] : null;
}

/** The one column by size that a row fills with a number above nought. */
export function filledBySize<Sized extends { readonly column: number }>(
  bySize: readonly Sized[],
  cells: readonly Cell[],
  comma: CommaUse,
): (Sized & { readonly value: number }) | null {
  let found: (Sized & { readonly value: number }) | null = null;
  for (const one of bySize) {
    const value = numberIn(cells[one.column], comma);
    if (value === null || !(value > 0)) continue;
    if (found !== null) return null;
    found = { ...one, value };
  }
  return found;
}

function unitOf(value: number, mm: number, perMetre: number | null, isWhole: boolean): BySizeUnit | null {
  const fits = (made: number, within: number): boolean => {
    const times = isWhole ? 1 : Math.max(1, Math.round(value / made));
    return Math.abs(value / (made * times) - 1) < within;
  };
  const ofLength = LENGTHS.find((unit) => fits(mm / MM_PER_UNIT[unit], LENGTH_WITHIN));
  if (ofLength !== undefined || perMetre === null) return ofLength ?? null;
  const kg = (mm / MM_PER_UNIT.m) * perMetre;
  return (["kg", "t"] as const).find((unit) => fits(kg / MASSES[unit], MASS_WITHIN)) ?? null;
}

function massOf(size: string, standard: Standard): number | null {
  const own = standard.readSize(size);
  return massPerMetreOf(isRefusal(own) ? sizeElsewhere(size) : own);
}
