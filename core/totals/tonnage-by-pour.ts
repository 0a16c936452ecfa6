import { ExactSum } from "./exact-sum";
import { FirstSpelling } from "./first-spelling";

/** The mass of one row. */
export interface TonnageLine {
  readonly pour: string;
  readonly size: string;
  /** kg */
  readonly mass: number;
}

/** Tonnes; the totals are the exact decimal sums of the rows. */
export interface Tonnage {
  readonly unit: "t";
  readonly pours: readonly {
    readonly pour: string;
    readonly bySize: ReadonlyMap<string, number>;
    readonly total: number;
  }[];
  readonly bySize: ReadonlyMap<string, number>;
  readonly total: number;
  readonly rows: number;
}

const KILOGRAMS_PER_TONNE = 1000;

/** Tonnes by pour and size, pours and sizes in the order they first come; bars without a
 * pour are under "". "h16" and "H16" are one size. */
export function tonnageByPour(lines: Iterable<TonnageLine>): Tonnage {
  const pours = new Map<string, { bySize: Map<string, ExactSum>; total: ExactSum }>();
  const bySize = new Map<string, ExactSum>();
  const total = new ExactSum();
  const pourNames = new FirstSpelling();
  const sizeNames = new FirstSpelling();
  let rows = 0;
  for (const line of lines) {
    const { mass } = line;
    const pour = pourNames.of(line.pour);
    const size = sizeNames.of(line.size);
    let sums = pours.get(pour);
    if (sums === undefined) {
      sums = { bySize: new Map(), total: new ExactSum() };
      pours.set(pour, sums);
    }
    sumOf(sums.bySize, size).add(mass);
    sums.total.add(mass);
    sumOf(bySize, size).add(mass);
    total.add(mass);
    rows += 1;
  }
  return {
    unit: "t",
    pours: [...pours].map(([pour, sums]) => ({
      pour,
      bySize: tonnes(sums.bySize),
      total: sums.total.over(KILOGRAMS_PER_TONNE),
    })),
    bySize: tonnes(bySize),
    total: total.over(KILOGRAMS_PER_TONNE),
    rows,
  };
}

function sumOf(sums: Map<string, ExactSum>, key: string): ExactSum {
  let sum = sums.get(key);
  if (sum === undefined) {
    sum = new ExactSum();
    sums.set(key, sum);
  }
  return sum;
}

function tonnes(sums: ReadonlyMap<string, ExactSum>): Map<string, number> {
  return new Map([...sums].map(([key, sum]) => [key, sum.over(KILOGRAMS_PER_TONNE)]));
}
