import type { PlanarPath } from "../shapes/path";
import type { BarToBend, Steel, WantedFormer } from "../shop/bar-to-bend";
import { type MachineRanking, rankMachines } from "../shop/rank-machines";
import type { Workshop } from "../shop/workshop";
import { Memo } from "../units/memo";
import { isRefusal } from "../units/refusal";
import type { BarFacts } from "./bar-facts";
import { linkSides } from "./link-sides";
import { tolerancedBar, toleranceOf } from "./tolerance-of";

/** What the benders of a workshop make of a row; null for what no bender bends, and where none is named. */
export function machinesFor(facts: BarFacts, workshop: Workshop): MachineRanking | null {
  if (workshop.shop.benders.length === 0) return null;
  let known = remembered.get(workshop);
  if (known === undefined) {
    known = { rankings: new Memo(MOST_REMEMBERED), row: null, ranking: null };
    remembered.set(workshop, known);
  }
  // several rules ask of one row, one after another
  if (known.row !== facts.row) {
    known.ranking = rankingOf(facts, workshop, known.rankings);
    known.row = facts.row;
  }
  return known.ranking;
}

interface Remembered {
  /** by what the bar is to a bender: the same geometry is judged once */
  readonly rankings: Memo<string, MachineRanking>;
  row: object | null;
  ranking: MachineRanking | null;
}

const MOST_REMEMBERED = 200_000;
const remembered = new WeakMap<Workshop, Remembered>();

function rankingOf(
  facts: BarFacts,
  workshop: Workshop,
  rankings: Memo<string, MachineRanking>,
): MachineRanking | null {
  const { row, diameter, former } = facts;
  if (diameter === null || former === null || row.shape === null || facts.isStraight) return null;
  const { grade, size, shape, dims, radius } = row;
  const key = `${size?.prefix}|${diameter}|${grade}|${former}|${row.former}|${shape}|${dims.join()}|${radius}`;
  const known = rankings.get(key);
  if (known !== undefined) return known;
  const bar = barToBend(facts, workshop);
  return bar === null ? null : rankings.keep(key, rankMachines(workshop, bar));
}

/** The row as a bender must take it; null for what is not bent about formers, or cannot be made at all. */
export function barToBend(facts: BarFacts, workshop: Workshop): BarToBend | null {
  const { shapeInForce: shape } = facts;
  const path = shape?.path ?? null;
  if (shape === null || path?.kind !== "planar" || path.turns.length === 0) return null;
  if (isRefusal(facts.developed)) return null;
  const sides = linkSides(facts);
  return {
    path,
    diameter: shape.diameter,
    formers: wantedFormers(facts, path, shape.former.value),
    steel: steelOf(facts, workshop),
    linkInside: sides === null ? null : sides.short - 2 * shape.diameter,
    unit: facts.standard.unit,
  };
}

/** The steel that a row names. */
export function steelOf({ row }: BarFacts, workshop: Workshop): Steel {
  return workshop.steel(row.grade, row.size?.prefix ?? "");
}

function wantedFormers(facts: BarFacts, { turns }: PlanarPath, inForce: number): WantedFormer[] {
  const least = facts.leastFormer?.value ?? 0;
  const isLeast = facts.row.former === null;
  return turns.map(({ radius }): WantedFormer => {
    if (radius === null) return { diameter: inForce, slack: 0, isLeast, least: 0 };
    const width = 2 * radius;
    const tolerance = toleranceOf(facts.standard, "bent dimension", width, tolerancedBar(facts));
    const slack = tolerance === null ? 0 : Math.min(tolerance.plus, tolerance.minus);
    return { diameter: width, slack, isLeast: false, least: Math.min(width, least) };
  });
}
