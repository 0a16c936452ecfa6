import type { Standard, ToleranceRow } from "../standards/port";
import type { BarFacts } from "./bar-facts";

/** What a length may be out by, mm; both unsigned. */
export interface Deviation {
  readonly plus: number;
  readonly minus: number;
}

/** What a tolerance may turn on besides the length. */
export interface TolerancedBar {
  /** the table's own name: "16", "#6" */
  readonly size: string | null;
  readonly isPlain: boolean;
  readonly use: string;
}

/** What a tolerance turns on besides the length. */
export function tolerancedBar(facts: BarFacts): TolerancedBar {
  return { size: facts.bar?.size ?? null, isPlain: facts.isPlain, use: facts.use };
}

/**
 * The deviation that the standard allows on a length of this kind, mm; null where it holds none. A line
 * for links, for plain bars or for named sizes goes before the general one. `length` in mm.
 *
 * @example toleranceOf(standard, "bent dimension", 1500, bar); // BS 8666:2005: +5 -10
 */
export function toleranceOf(
  standard: Standard,
  kind: "cut length" | "bent dimension",
  length: number,
  bar: TolerancedBar,
): Deviation | null {
  const rows = standard.tolerances?.value ?? [];
  const kinds = kind === "bent dimension" && bar.use === "link" ? ["link dimension", kind] : [kind];
  for (const wanted of kinds) {
    const fitting = rows.filter((row) => length <= row.upTo && fits(row, wanted, bar));
    // the narrowest line: with a condition before without, the lowest upper length first
    const [row] = fitting.sort(
      (a, b) => Number(isConditional(b)) - Number(isConditional(a)) || a.upTo - b.upTo,
    );
    if (row !== undefined) return { plus: row.plus, minus: row.minus };
  }
  return null;
}

const isConditional = (row: ToleranceRow): boolean => row.applies.includes(",");

function fits(row: ToleranceRow, kind: string, bar: TolerancedBar): boolean {
  const [applies, condition] = row.applies.split(/,\s*/, 2);
  if (applies !== kind) return false;
  if (condition === undefined) return true;
  if (/^plain bar/.test(condition)) return bar.isPlain;
  const from = /^(#|D?)(\d+) and larger$/.exec(condition);
  const number = /^(#|D?)(\d+)$/.exec(bar.size ?? "");
  if (from !== null) {
    return number !== null && number[1] === from[1] && Number(number[2]) >= Number(from[2]);
  }
  return condition.split(/ and |, /).includes(bar.size ?? "");
}
