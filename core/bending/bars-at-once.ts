import { defineRefusal, type Refusal } from "../units/refusal";
import { CAPACITY_LIMITS } from "./capacity.data";
import type { RatedBars } from "./machine";

export interface BarsAtOnce {
  /** 0 is beyond the machine: not even one */
  readonly bars: number;
  /** `plate`: this bar or a heavier one is on the plate; `estimate`: scaled, so ask the maker */
  readonly basis: "plate" | "estimate";
  /** mm and MPa of the plate's row that decided */
  readonly row: RatedBars;
}

const plateUnknown = defineRefusal(
  "plate-not-known",
  "not-held",
  "the plate of {machine} is not written down, so bars at once are not known: copy size, grade and bars from the plate to the Shop sheet",
);
const plateGradeUnknown = defineRefusal(
  "plate-grade-not-known",
  "not-held",
  "the plate of {machine} is written down without a grade, so it says nothing for {yield} MPa: copy the grade from the plate to the Shop sheet",
);

/**
 * Bars of one size that a machine bends or cuts at once. The plate where it names the bar or a heavier one;
 * else scaled by plastic moment (diameter cubed) or by area (squared) and yield, never above a row of the
 * plate for a lighter bar, and marked an estimate. The plate and the manual govern (derived).
 *
 * Refuses (unsure) a plate that is not written down, or is without its grade.
 *
 * @example
 * barsAtOnce({ name: "M1", rated: [{ diameter: 32, yield: 500, bars: 1 }] }, { diameter: 32, yield: 600 }, "bend"); // 0
 */
export function barsAtOnce(
  machine: { readonly name: string; readonly rated: readonly RatedBars[] },
  bar: { readonly diameter: number; readonly yield: number },
  work: "bend" | "cut",
): BarsAtOnce | Refusal {
  if (machine.rated.length === 0) return plateUnknown({ machine: machine.name });
  const rows = machine.rated.filter((row): row is RatedBars & { yield: number } => row.yield !== null);
  if (rows.length === 0) return plateGradeUnknown({ machine: machine.name, yield: bar.yield });
  const exact = rows.filter(
    (row) => Math.abs(row.diameter - bar.diameter) < SAME_SIZE && row.yield >= bar.yield,
  );
  const named =
    mostBars(exact) ?? mostBars(rows.filter((row) => row.diameter >= bar.diameter && row.yield >= bar.yield));
  if (exact.length > 0 && named !== null) return { bars: named.bars, basis: "plate", row: named };
  const estimate = scaled(rows, bar, work);
  if (named !== null && named.bars >= estimate.bars) return { bars: named.bars, basis: "plate", row: named };
  return estimate;
}

/** mm within which a size of the plate is this size */
const SAME_SIZE = 0.3;

function scaled(
  rows: readonly (RatedBars & { yield: number })[],
  bar: { diameter: number; yield: number },
  work: "bend" | "cut",
): BarsAtOnce {
  const power = work === "bend" ? 3 : 2;
  const duty = (row: RatedBars & { yield: number }) =>
    row.bars * (row.diameter / bar.diameter) ** power * (row.yield / bar.yield);
  const strongest = rows.reduce((best, row) => (duty(row) > duty(best) ? row : best));
  const lighter = rows.filter((row) => row.diameter <= bar.diameter && row.yield <= bar.yield);
  const ceiling = Math.min(CAPACITY_LIMITS.value.mostEstimated, ...lighter.map((row) => row.bars));
  const bars = Math.min(ceiling, Math.floor(duty(strongest) + 1e-9));
  return { bars, basis: "estimate", row: strongest };
}

function mostBars<Row extends RatedBars>(rows: readonly Row[]): Row | null {
  return rows.reduce<Row | null>((best, row) => (best === null || row.bars > best.bars ? row : best), null);
}
