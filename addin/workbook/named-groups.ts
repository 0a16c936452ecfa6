import type { ReckonedTonnage, Tonnage, TonnageGroup } from "../../core/totals";

const NO_NAME: Readonly<Record<TonnageGroup, string>> = {
  pour: "no pour",
  member: "no member",
  sheet: "no sheet",
};

/** Tonnes with words for the bars that name no pour, or whatever they are grouped by. */
export function namedGroups({ tonnage, groupedBy }: ReckonedTonnage): Tonnage {
  const pours = tonnage.pours.map((group) =>
    group.pour === "" ? { ...group, pour: NO_NAME[groupedBy] } : group,
  );
  return { ...tonnage, pours };
}
