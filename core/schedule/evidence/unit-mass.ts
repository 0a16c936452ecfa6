import type { SizeCandidate } from "./candidates";
import { CANDIDATE, REST } from "./evidence.data";
import { chanceOf, dealtShare, type Kept, keptBy, logOdds } from "./log-odds";
import type { MassTable } from "./mass-tables";
import type { ValueColumn } from "./value-column";

/** A column that holds the mass of a metre or of a foot of each row's size. */
export interface UnitMassFit {
  readonly answer: ValueColumn;
  readonly size: SizeCandidate;
  readonly table: MassTable;
  readonly unit: "kg/m" | "lb/ft";
  readonly kept: Kept;
  readonly worth: number;
}

const POUNDS_PER_FOOT = -Math.log(REST.value.poundsPerFoot);

/** Columns of mass per metre, the surest first. */
export function unitMassFits(
  sizes: readonly SizeCandidate[],
  numbers: readonly ValueColumn[],
  grouped: ReadonlySet<ValueColumn>,
  rows: readonly number[],
): UnitMassFit[] {
  const fits: UnitMassFit[] = [];
  for (const size of sizes) {
    for (const { table, factor } of size.tables) {
      for (const answer of numbers) {
        if (answer === size.column || grouped.has(answer)) continue;
        const fit = fitted(size, table, factor, answer, rows);
        if (fit !== null) fits.push(fit);
      }
    }
  }
  return fits.sort((one, other) => other.worth - one.worth);
}

function fitted(
  size: SizeCandidate,
  table: MassTable,
  factor: SizeCandidate["tables"][number]["factor"],
  answer: ValueColumn,
  rows: readonly number[],
): UnitMassFit | null {
  const r = REST.value;
  const metric = keptBy(rows, answer, [factor], 0, r.unitMassWithin);
  const inch = keptBy(rows, answer, [factor], POUNDS_PER_FOOT, r.unitMassWithin);
  const isInch = inch.kept > metric.kept;
  const kept = isInch ? inch : metric;
  const isThin = size.column.distinct < CANDIDATE.value.factorsDistinct && kept.kept < r.unitMassOneSize;
  if (kept.share < r.unitMassShare || isThin || answer.wholeShare > r.unitMassWhole) return null;
  const dealt = dealtShare(rows, answer, [factor], isInch ? POUNDS_PER_FOOT : 0, r.unitMassWithin);
  const odds = logOdds(kept.kept, kept.broken, chanceOf(dealt, r.unitMassChance));
  if (kept.kept < r.unitMassKept || odds <= r.unitMassWorth) return null;
  return { answer, size, table, unit: isInch ? "lb/ft" : "kg/m", kept, worth: odds };
}
