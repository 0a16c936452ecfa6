import type { ReckonedTonnage } from "../totals/reckon-tonnage";
import type { NotInTotal } from "../totals/row-mass";
import { totalAsTyped, type WeighedAsMade } from "../totals/weighed-as-made";

/** Tonnes of a book as plain data, in the shape that scripts rely on. */
export interface TonnageReport {
  readonly unit: "t";
  readonly pours: readonly {
    readonly pour: string;
    readonly bySize: Readonly<Record<string, number>>;
    readonly total: number;
  }[];
  readonly bySize: Readonly<Record<string, number>>;
  /** null while `held` says why */
  readonly total: number | null;
  readonly rows: number;
  readonly groupedBy: string;
  readonly held: string | null;
  readonly notInTotal: readonly NotInTotal[];
  /** what the total would be by the lengths as typed, and the rows that make the difference; not there where none does */
  readonly asTyped?: { readonly total: number; readonly rows: readonly WeighedAsMade[] };
}

/** Totals that are held back are not told. */
export function tonnageReport({
  tonnage,
  groupedBy,
  notInTotal,
  asTyped,
  held,
}: Pick<ReckonedTonnage, "tonnage" | "notInTotal" | "asTyped" | "held"> & {
  readonly groupedBy: string;
}): TonnageReport {
  const { unit, rows } = tonnage;
  const pours = held === null ? tonnage.pours : [];
  const bySize = held === null ? tonnage.bySize : new Map<string, number>();
  const total = held === null ? tonnage.total : null;
  return {
    unit,
    pours: pours.map((pour) => ({ pour: pour.pour, bySize: plainObject(pour.bySize), total: pour.total })),
    bySize: plainObject(bySize),
    total,
    rows,
    groupedBy,
    held,
    notInTotal: notInTotal.map(({ sheet, row, cell, why }) => ({ sheet, row, cell, why })),
    ...(held === null &&
      asTyped.length > 0 && { asTyped: { total: totalAsTyped(asTyped, tonnage.total), rows: asTyped } }),
  };
}

/** Own properties only, whatever a size is called. */
export function plainObject(map: ReadonlyMap<string, number>): Record<string, number> {
  return Object.fromEntries(map);
}
