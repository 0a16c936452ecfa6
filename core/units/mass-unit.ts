import { defineRefusal, type Refusal } from "./refusal";

const massUnitUnknown = defineRefusal(
  "mass-unit-unknown",
  "value",
  `unit "{typed}" is no unit of mass here: write {held}`,
);

const KG_PER_POUND = 0.45359237;
const METRES_PER_FOOT = 0.3048;
/** `t` is the tonne, `ton` the ton of 2000 lb. */
const KG_IN_UNIT: ReadonlyMap<string, number> = new Map([
  ["kg", 1],
  ["t", 1000],
  ["lb", KG_PER_POUND],
  ["ton", 2000 * KG_PER_POUND],
]);

/** kg of one unit of mass: kg, t, lb or ton (2000 lb). Refuses other words. */
export function kilogramsIn(unit: string): number | Refusal {
  const typed = unit.trim().toLowerCase();
  return KG_IN_UNIT.get(typed) ?? massUnitUnknown({ typed: unit, held: [...KG_IN_UNIT.keys()].join(", ") });
}

/** lb/ft of a mass per metre in kg/m. */
export function poundsPerFoot(kilogramsPerMetre: number): number {
  return (kilogramsPerMetre * METRES_PER_FOOT) / KG_PER_POUND;
}
