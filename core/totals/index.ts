export { type Bundle, type BundleItem, type Bundles, makeBundles } from "./bundles";
export type {
  BarChange,
  ChangedCell,
  ComparisonQuestion,
  PourChange,
  RevisionComparison,
} from "./compare-revisions";
export type { Load, Loads, LorryLimits } from "./loads";
export { groupName, namedGroups } from "./named-groups";
export { pourDates } from "./pour-dates";
export { type ReadSheet, type ReckonedTonnage, reckonTonnage, type TonnageGroup } from "./reckon-tonnage";
export { isInTotal, type NotInTotal, type RowMass, weighRows } from "./row-mass";
export { type Tonnage, type TonnageLine, tonnageByPour } from "./tonnage-by-pour";
export { tonnageChart } from "./tonnage-chart";
export { notInTotalWords, tonnageNotes } from "./tonnage-notes";
