import type { StandardTables } from "./standard-tables";

/** What every document brings; the rest is not held unless it is given. */
type Needed = "id" | "title" | "names" | "bars" | "grades" | "shapes" | "lengthRounding" | "notHeld";

const NOTHING_HELD: Omit<StandardTables, Needed> = {
  unit: "mm",
  caution: null,
  sizesInMillimetres: true,
  gradeUnsaid: null,
  uses: ["main", "link"],
  formers: [],
  formulaRadii: null,
  endLegs: [],
  bendingNeedsEndLegUpTo: null,
  hooks: [],
  allowances: null,
  shapesInPart: false,
  dimensionStep: null,
  straightBetweenBends: null,
  manyBends: null,
  tolerances: null,
  coldBending: null,
  rebending: null,
  rebendingLimit: null,
  straightSupplyRadius: null,
  transportWidth: null,
  stockLength: null,
  largestCurveFormer: null,
  siteDeductions: null,
  detailing: [],
  testMandrels: [],
};

/** The tables of one document and edition; what it does not give is not held. */
export function defineStandard(
  tables: Pick<StandardTables, Needed> & Partial<Omit<StandardTables, Needed>>,
): StandardTables {
  return { ...NOTHING_HELD, ...tables };
}
