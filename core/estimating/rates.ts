/** What bars of some sizes cost and take. Money is in the workbook's own currency; null is not written down. */
export interface Rate {
  /** mm of nominal diameter, both ends within */
  readonly from: number;
  readonly upTo: number;
  /** money a tonne ordered, waste in it */
  readonly supply: number | null;
  /** money a tonne, net */
  readonly cutting: number | null;
  readonly bending: number | null;
  readonly fixing: number | null;
  /** hours a tonne, net */
  readonly hours: number | null;
  /** hours for a hundred bends */
  readonly bendHours: number | null;
  /** per cent of the net mass that is ordered beside it */
  readonly waste: number | null;
}

/** A cell of a table of rates that could not be read, by row and column of the table. */
export interface RateProblem {
  readonly row: number;
  readonly column: number;
  readonly typed: string;
  readonly wanted: string;
}

/** A yard's rates in the order they are asked. No price is ours. */
export interface Rates {
  readonly rates: readonly Rate[];
  readonly problems: readonly RateProblem[];
}

/** The first rate whose sizes fit a bar of this nominal diameter, mm; null where none does. */
export function rateOf({ rates }: Rates, diameter: number): Rate | null {
  return rates.find(({ from, upTo }) => diameter >= from && diameter <= upTo) ?? null;
}
