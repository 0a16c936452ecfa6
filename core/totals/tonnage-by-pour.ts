import { KG_PER_UNIT } from "../units/unit-table";
import { ExactSum } from "./exact-sum";
import { FirstSpelling } from "./first-spelling";
import { thinToThick } from "./thin-to-thick";

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

/** Tonnes by pour and size, pours in the order they first come and sizes from thin to thick; bars without a
 * pour are under "". "h16" and "H16" are one size. */
export function tonnageByPour(lines: Iterable<TonnageLine>): Tonnage {
  const sums = new TonnageSums();
  for (const line of lines) sums.add(line);
  return sums.tonnage();
}

/** The same sums, row by row, where not all rows are held at once. */
export class TonnageSums {
  private readonly pours = new Map<string, { bySize: Map<string, ExactSum>; total: ExactSum }>();
  private readonly bySize = new Map<string, ExactSum>();
  private readonly total = new ExactSum();
  private readonly pourNames = new FirstSpelling();
  private readonly sizeNames = new FirstSpelling();
  private rows = 0;

  /** Adds a row and answers the name that its pour goes by. */
  add(line: TonnageLine): string {
    const { mass } = line;
    const pour = this.pourNames.of(line.pour);
    const size = this.sizeNames.of(line.size);
    let sums = this.pours.get(pour);
    if (sums === undefined) {
      sums = { bySize: new Map(), total: new ExactSum() };
      this.pours.set(pour, sums);
    }
    sumOf(sums.bySize, size).add(mass);
    sums.total.add(mass);
    sumOf(this.bySize, size).add(mass);
    this.total.add(mass);
    this.rows += 1;
    return pour;
  }

  tonnage(): Tonnage {
    return {
      unit: "t",
      pours: [...this.pours].map(([pour, sums]) => ({
        pour,
        bySize: tonnes(sums.bySize),
        total: sums.total.over(KG_PER_UNIT.t),
      })),
      bySize: tonnes(this.bySize),
      total: this.total.over(KG_PER_UNIT.t),
      rows: this.rows,
    };
  }
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
  const inOrder = [...sums].sort(([a], [b]) => thinToThick(a, b));
  return new Map(inOrder.map(([size, sum]) => [size, sum.over(KG_PER_UNIT.t)]));
}
