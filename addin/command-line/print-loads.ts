import type { Bundle, Loads, LorryLimits } from "../../core/totals";
import { counted } from "../../core/units/counted";
import type { LengthUnit } from "../../core/units/length-unit";
import { parseLength } from "../../core/units/parse-length";
import { printMass } from "../../core/units/print-mass";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";
import type { GivenOptions } from "./read-options";
import type { Streams } from "./streams";

/** What the options say a lorry may carry. */
export function lorryGiven(given: GivenOptions, unit: LengthUnit): Partial<LorryLimits> {
  return {
    ...numberGiven(given.text("lorry-load")),
    ...lengthGiven(given.text("lorry-length"), unit),
  };
}

/** Loads as scripts get them. */
export function jsonLoads({ loads, left }: Loads) {
  return {
    loads: loads.map((load) => ({ ...load, loading: load.loading.map(jsonBundle) })),
    left: left.map(({ bundle, why }) => ({ ...jsonBundle(bundle), why })),
  };
}

/** Loads for a person; of several schedules each bundle says its own. In short what is not to leave, or on no lorry, alone is named. */
export function printLoads(
  { loads, left }: Loads,
  unit: LengthUnit,
  streams: Streams,
  {
    isSeveral = false,
    isSummary = false,
  }: { readonly isSeveral?: boolean; readonly isSummary?: boolean } = {},
): void {
  const words = (bundle: Bundle): string => {
    const schedule = isSeveral ? `${bundle.item.schedule ?? "no schedule"}, ` : "";
    return schedule + bundleWords(bundle, unit);
  };
  for (const { number, day, loading, mass } of loads) {
    const pours = [...new Set(loading.map(({ item }) => item.pour ?? "no pour"))].reverse();
    streams.result(
      `load ${number}, ${day ?? "no day written"}: ${counted(loading.length, "bundle")}, ${printMass(mass, unit, 1)}, ${pours.join(", ")}`,
    );
    for (const bundle of loading)
      if (!isSummary || (bundle.item.held ?? []).length > 0) streams.result(`  ${words(bundle)}`);
  }
  for (const { bundle, why } of left) streams.result(`on no lorry, ${why}: ${words(bundle)}`);
}

function numberGiven(option: string | null): { mass?: number } {
  if (option === null) return {};
  const mass = Number(option);
  if (!(mass > 0) || !Number.isFinite(mass))
    throw new InputRefused(`--lorry-load ${option} is no mass: give kilograms, over 0`);
  return { mass };
}

function lengthGiven(option: string | null, unit: LengthUnit): { length?: number } {
  if (option === null) return {};
  const length = parseLength(option, unit);
  if (isRefusal(length)) throw new InputRefused(`--lorry-length: ${refusalText(length)}`);
  return { length };
}

function jsonBundle({ item, count, mass, number, of }: Bundle) {
  const { schedule = null, pour, member, mark, size, heats, held = [], asked = [] } = item;
  return {
    schedule,
    pour,
    member,
    mark,
    size,
    bundle: number,
    of,
    bars: count,
    mass,
    heats: heats ?? [],
    held,
    asked,
  };
}

function bundleWords({ item, count, mass, number, of }: Bundle, unit: LengthUnit): string {
  const heats = item.heats ?? [];
  const ofHeats = heats.length === 0 ? "" : `, heat ${heats.join(" or ")}`;
  const hold = (item.held ?? []).length === 0 ? "" : " HOLD";
  return `${item.mark ?? "no mark"}${hold} bundle ${number} of ${of}: ${count} x ${item.size}, ${printMass(mass, unit, 1)}${ofHeats}`;
}
