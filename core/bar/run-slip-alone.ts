import { MM_PER_UNIT } from "../units/unit-table";
import { RUN_HABIT } from "./identities.data";
import { isCount, isTurned, type TestedRun, WAYS } from "./run-ways";

/** A row whose count is a slip of the one that its own run and spacing give, where too few rows show a habit. */
export interface SlipAlone extends TestedRun {
  readonly expected: number;
  /** others whose counts go with their runs */
  readonly kept: number;
  readonly tested: number;
}

/** A spacing without its unit under a run in metres: from here on in millimetres, below in centimetres. */
const LEAST_IN_MM = 40;

/** The one row that is off, where all others go with their runs in one way or another; null of none and of several. */
export function slipAlone(rows: readonly TestedRun[]): SlipAlone | null {
  const tested = rows.flatMap((one) => gapsWithUnits(one) ?? []);
  const off = tested.filter(({ row, gaps }) => !goesWith(row, gaps));
  const [slip, another] = off;
  if (slip === undefined || another !== undefined) return null;
  const expected = countsOf(slip.gaps).find((count) => isSlip(slip.row.count, count));
  if (expected === undefined) return null;
  return { ...slip.row, expected, kept: tested.length - 1, tested: tested.length };
}

function gapsWithUnits(row: TestedRun): { readonly row: TestedRun; readonly gaps: number } | null {
  const { leastGaps, mostGaps } = RUN_HABIT.value;
  if (row.gaps !== null) return row.gaps < leastGaps ? null : { row, gaps: row.gaps };
  const plain = row.run / row.spacing;
  const gaps =
    plain >= leastGaps
      ? plain
      : plain * (row.spacing >= LEAST_IN_MM ? MM_PER_UNIT.m : MM_PER_UNIT.m / MM_PER_UNIT.cm);
  return gaps >= leastGaps && gaps <= mostGaps ? { row, gaps } : null;
}

function countsOf(gaps: number): readonly number[] {
  return [...new Set(WAYS.map((way) => way(gaps)))];
}

/** One more or less is an end bar, a multiple is of several members, faces or layers. */
function goesWith(row: TestedRun, gaps: number): boolean {
  const { mostTimes } = RUN_HABIT.value;
  return countsOf(gaps).some((count) => {
    const times = row.count / count;
    if (Math.abs(row.count - count) <= 1 || isCount(row, count)) return true;
    return Number.isInteger(times) && times <= mostTimes;
  });
}

/** Digits exchanged, a figure of tens or hundreds misread, or half as many. */
function isSlip(count: number, expected: number): boolean {
  if (isTurned(count, expected) || 2 * count === expected) return true;
  const [typed, meant] = [String(count), String(expected)];
  if (typed.length !== meant.length || typed.length < 2 || typed.at(-1) !== meant.at(-1)) return false;
  return [...typed].filter((digit, at) => digit !== meant[at]).length === 1;
}
