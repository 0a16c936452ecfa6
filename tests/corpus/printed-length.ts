/** What a printed formula is worked out from, mm. */
export interface PrintedQuestion {
  readonly shape: string;
  readonly diameter: number;
  readonly dims: readonly (number | null)[];
}

/**
 * Radius r of BS 8666:2005 Table 2, typed for the corpus from the reproductions of the table at
 * fendersteel.co.uk and midlandrapid.co.uk, so that no length here leans on core.
 */
const PRINTED_RADIUS: Readonly<Record<number, number>> = {
  8: 16,
  10: 20,
  12: 24,
  16: 32,
  20: 70,
  25: 87,
  32: 112,
  40: 140,
};

/** mm by the formulas of BS 8666:2005 Table 3, typed for the corpus from the same places; unrounded. */
export function printedLength({ shape, diameter: d, dims }: PrintedQuestion): number {
  const r = printedRadius(d);
  const [a, b, c, e4, e5] = dims.map((dim) => dim ?? 0) as [number, number, number, number, number];
  switch (shape) {
    case "00":
    case "01":
      return a;
    case "11":
      return a + b - 0.5 * r - d;
    case "12":
      return a + b - 0.43 * e5 - 1.2 * d;
    case "13":
      return a + 0.57 * b + c - 1.6 * d;
    case "21":
    case "23":
      return a + b + c - r - 2 * d;
    case "26":
      return a + b + c;
    case "31":
    case "32":
      return a + b + c + e4 - 1.5 * r - 3 * d;
    case "41":
    case "44":
      return a + b + c + e4 + e5 - 2 * r - 4 * d;
    case "51":
      return 2 * (a + b + c) - 2.5 * r - 5 * d;
    case "75":
      return Math.PI * (a - d) + b;
    case "77":
      return b > a / 5 ? c * Math.sqrt((Math.PI * (a - d)) ** 2 + b ** 2) : c * Math.PI * (a - d);
    default:
      throw new RangeError(`no printed formula typed for shape ${shape}`);
  }
}

/** mm: r of Table 2 for a bar of the table. */
export function printedRadius(diameter: number): number {
  const radius = PRINTED_RADIUS[diameter];
  if (radius === undefined) throw new RangeError(`no printed radius typed for ${diameter} mm`);
  return radius;
}
