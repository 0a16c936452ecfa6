import { defineRefusal, type Refusal } from "./refusal";
import { KG_PER_UNIT, MM_PER_UNIT } from "./unit-table";

const massUnitUnknown = defineRefusal(
  "mass-unit-unknown",
  "value",
  `unit "{typed}" is no unit of mass here: write {held}`,
);

/** `t` is the tonne, `ton` the ton of 2000 lb. */
const KG_IN_UNIT: ReadonlyMap<string, number> = new Map([
  ...Object.entries(KG_PER_UNIT),
  ["ton", 2000 * KG_PER_UNIT.lb],
]);

/** kg of one unit of mass: kg, t, lb or ton (2000 lb). Refuses other words. */
export function kilogramsIn(unit: string): number | Refusal {
  const typed = unit.trim().toLowerCase();
  return KG_IN_UNIT.get(typed) ?? massUnitUnknown({ typed: unit, held: [...KG_IN_UNIT.keys()].join(", ") });
}

/** lb/ft of a mass per metre in kg/m. */
export function poundsPerFoot(kilogramsPerMetre: number): number {
  return (kilogramsPerMetre * (MM_PER_UNIT.ft / MM_PER_UNIT.m)) / KG_PER_UNIT.lb;
}
