export type { Bundle, Bundles } from "./bundles";
export type {
  BarChange,
  PourChange,
} from "./compare-revisions";
export { notComparedWords } from "./compare-revisions";
export type { Load, Loads, LorryLimits } from "./loads";
export { groupName, namedGroups } from "./named-groups";
export { pourDates } from "./pour-dates";
export { type ReadSheet, type ReckonedTonnage, reckonTonnage, type TonnageGroup } from "./reckon-tonnage";
export { type RowMass, supersededWords } from "./row-mass";
export { type Tonnage, tonnageByPour } from "./tonnage-by-pour";
export { tonnageChart } from "./tonnage-chart";
export { notInTotalWords, tonnageNotes } from "./tonnage-notes";
export { totalAsTyped, type WeighedAsMade, weighedAsMadeWords } from "./weighed-as-made";
