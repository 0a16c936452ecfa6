import { resolveStandard } from "../../standards/index";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { EVERYDAY_SIZES, OTHER_TABLES, ROUND_STEEL } from "./evidence.data";

/** Mass per metre by the number in a bar's name. */
export interface MassTable {
  readonly name: "own" | "metric" | "soft" | "inch" | "canada";
  /** kg/m */
  readonly masses: ReadonlyMap<number, number>;
}

const EVERYDAY: ReadonlySet<number> = new Set(EVERYDAY_SIZES.value);
const KNOWN = new WeakMap<Standard, readonly MassTable[]>();

/** True for a size that most lists use. */
export function isEverydaySize(size: number): boolean {
  return EVERYDAY.has(size);
}

/** The standard's own table first, then the others that a sheet may have been written by. */
export function massTables(standard: Standard): readonly MassTable[] {
  let tables = KNOWN.get(standard);
  if (tables === undefined) {
    const others: MassTable[] = [
      { name: "metric", masses: roundSteel() },
      { name: "soft", masses: massesOf(resolveStandard(OTHER_TABLES.soft)) },
      { name: "inch", masses: massesOf(resolveStandard(OTHER_TABLES.inch)) },
      { name: "canada", masses: massesOf(resolveStandard(OTHER_TABLES.canada)) },
    ];
    tables = [{ name: "own", masses: massesOf(standard) }, ...others];
    KNOWN.set(standard, tables);
  }
  return tables;
}

function massesOf(standard: ReturnType<typeof resolveStandard>): ReadonlyMap<number, number> {
  const masses = new Map<number, number>();
  if (isRefusal(standard)) return masses;
  for (const { size, massPerMetre } of standard.bars) {
    const number = Number(/\d+(?:\.\d+)?/.exec(size)?.[0] ?? Number.NaN);
    if (number > 0) masses.set(number, massPerMetre);
  }
  return masses;
}

function roundSteel(): ReadonlyMap<number, number> {
  const { density, diameters } = ROUND_STEEL.value;
  const perSquareMillimetre = density / 1e6;
  return new Map(
    diameters.map((diameter) => [diameter, (Math.PI / 4) * diameter ** 2 * perSquareMillimetre]),
  );
}
