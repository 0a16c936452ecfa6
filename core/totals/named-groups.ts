import { NO_POUR } from "./in-order-of-pours";
import type { ReckonedTonnage, TonnageGroup } from "./reckon-tonnage";
import type { Tonnage } from "./tonnage-by-pour";

const NO_NAME: Readonly<Record<TonnageGroup, string>> = {
  pour: NO_POUR,
  member: "no member",
  sheet: "no sheet",
};

/** What a group of bars is called: its own name, or words where it has none. */
export function groupName(name: string, groupedBy: TonnageGroup): string {
  return name === "" ? NO_NAME[groupedBy] : name;
}

/** Tonnes with words for the bars that name no pour, or whatever they are grouped by. */
export function namedGroups({ tonnage, groupedBy }: ReckonedTonnage): Tonnage {
  const pours = tonnage.pours.map((group) => ({ ...group, pour: groupName(group.pour, groupedBy) }));
  return { ...tonnage, pours };
}
