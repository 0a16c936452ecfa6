import { proofWords, type RefusedRow, refusedText, type SizePlan } from "../../core/cutting";
import { type NotToMake, notToMakeText } from "../../core/jobs";
import { fromMillimetres } from "../../core/units/convert-length";
import { counted } from "../../core/units/counted";
import type { LengthUnit } from "../../core/units/length-unit";
import { refusalText } from "../../core/units/refusal";
import { heatWords } from "../print/heat-words";
import type { Streams } from "./streams";

/** A plan and the rows that are in none. */
interface PlanTold {
  readonly groups: readonly SizePlan[];
  readonly refused: readonly RefusedRow[];
  readonly notToMake: readonly NotToMake[];
  /** perhaps unsafe or unbendable, and planned as any other */
  readonly toAsk: readonly NotToMake[];
}

interface HowTold {
  readonly namesSheets: boolean;
  readonly isSummary: boolean;
}

const lengthIn =
  (unit: LengthUnit) =>
  (mm: number): number =>
    Number(fromMillimetres(mm, unit).toPrecision(12));

/** A plan in the shape that scripts rely on. */
export function jsonPlan({ groups, refused, notToMake, toAsk }: PlanTold, unit: LengthUnit) {
  const out = lengthIn(unit);
  return {
    groups: groups.map((group) => jsonGroup(group, out)),
    refused: refused.map((row) => jsonRefused(row, out, unit)),
    notToMake: notToMake.map(({ schedule: _, ...row }) => row),
    toAsk: toAsk.map(({ schedule: _, ...row }) => row),
  };
}

/** A plan for a person, and the rows that are in none; in short a line a size, and how many rows. */
export function printCutList(
  { groups, refused, notToMake, toAsk }: PlanTold,
  { namesSheets, isSummary }: HowTold,
  unit: LengthUnit,
  streams: Streams,
): void {
  for (const group of groups) printPlan(group, isSummary, unit, streams);
  if (notToMake.length > 0) {
    const rows = notToMake.length === 1 ? "1 row is" : `${notToMake.length} rows are`;
    streams.result(`planned, but ${rows} not to be made until cleared`);
    for (const row of isSummary ? [] : notToMake) streams.result(`  ${notToMakeText(row, namesSheets)}`);
  }
  if (toAsk.length > 0) {
    streams.result(`planned, but ${counted(toAsk.length, "row")} to be asked about before they are made`);
    for (const row of isSummary ? [] : toAsk) streams.result(`  ${notToMakeText(row, namesSheets)}`);
  }
  printRefused(refused, groups.length === 0, { namesSheets, isSummary }, unit, streams);
}

function jsonGroup({ size, grade, stock, plan, list }: SizePlan, out: (mm: number) => number) {
  return {
    size,
    ...(grade === null ? {} : { grade }),
    stock: [...new Set(stock.map(({ length }) => out(length)))],
    bars: plan.bars,
    stockLength: out(plan.stockLength),
    lowerBound: plan.boundIn === "bars" ? plan.lowerBound : out(plan.lowerBound),
    pieces: plan.pieces,
    wasteRatio: plan.wasteRatio,
    patterns: plan.patterns.map((pattern, at) => ({
      stock: out(pattern.stock),
      cuts: pattern.cuts.map(({ length, count }) => ({ length: out(length), count })),
      times: pattern.times,
      ...(list[at]!.heats.length === 0 ? {} : { heats: list[at]!.heats }),
    })),
  };
}

function jsonRefused(row: RefusedRow, out: (mm: number) => number, unit: LengthUnit) {
  const { size, grade, mark, sheet, cell, length, count, longestStock, reason } = row;
  return {
    size,
    grade,
    mark,
    sheet,
    cell,
    length: length === null ? null : out(length),
    count,
    longestStock: longestStock === null ? null : out(longestStock),
    code: reason.code,
    message: refusalText(reason, unit),
  };
}

function printPlan(group: SizePlan, isSummary: boolean, unit: LengthUnit, streams: Streams): void {
  const out = lengthIn(unit);
  const { size, grade, plan, list } = group;
  const got = plan.boundIn === "bars" ? plan.barsBought : `${out(plan.stockLength)} ${unit}`;
  const bound = plan.boundIn === "bars" ? plan.lowerBound : `${out(plan.lowerBound)} ${unit}`;
  const proof = proofWords(plan, String(bound));
  const waste = (plan.wasteRatio * 100).toFixed(1);
  const name = size === "" ? "all pieces" : [size, grade].filter((part) => part !== null).join(" ");
  const remnants = plan.bars - plan.barsBought;
  const own = remnants === 0 ? "" : ` (${remnants} of them remnants)`;
  streams.result(
    `${name}: ${counted(plan.bars, "bar")}${own} for ${counted(plan.pieces, "piece")}, ${waste} % left over; ${got} to buy, ${proof}`,
  );
  if (isSummary) return;
  for (const [at, { stock, cuts, times, offcut, remnant }] of plan.patterns.entries()) {
    const words = cuts.map(({ length, count }) => `${count} x ${out(length)}`).join(" + ");
    const from = remnant ? " remnant" : "";
    // a plain number is millimetres
    const named = unit === "mm" ? "" : ` ${unit}`;
    const { heats } = list[at]!;
    const ofHeats = heats.length === 0 ? "" : `; ${heatWords(heats)}`;
    streams.result(
      `  ${times} x ${out(stock)}${named}${from}: ${words}, rest ${out(offcut)}${named}${ofHeats}`,
    );
  }
}

function printRefused(
  refused: readonly RefusedRow[],
  isAll: boolean,
  { namesSheets, isSummary }: HowTold,
  unit: LengthUnit,
  streams: Streams,
): void {
  if (refused.length === 0) return;
  const rows = refused.length === 1 ? "1 row is" : `${refused.length} rows are`;
  streams.result(isAll ? `nothing can be planned: ${rows} refused` : `in no plan: ${rows} refused`);
  for (const row of isSummary ? [] : refused)
    streams.result(`  ${refusedText(namesSheets ? row : { ...row, sheet: null }, unit)}`);
}
