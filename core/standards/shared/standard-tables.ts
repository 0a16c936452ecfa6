import type { Citation, Cited, PrintedTable } from "../citation";
import type {
  DetailingFigures,
  DetailingRule,
  Grade,
  HookTurn,
  LengthRounding,
  LengthUnit,
  RebendingLimit,
  ShapeDefinition,
  SiteDeductions,
  ToleranceRow,
  Use,
} from "../port";

/** One printed line of a bar table. Where the page prints inches, those are what is held. */
export interface PrintedBar {
  readonly size: string;
  /** mm */
  readonly diameter?: number;
  readonly diameterInches?: number;
  /** mm2 */
  readonly area: number;
  readonly areaSquareInches?: number;
  readonly massPerMetre: number;
  readonly poundsPerFoot?: number;
  /** This line alone: sources differ. */
  readonly conflict?: string;
  /** this line alone, where its owner looked it up */
  readonly cite?: Citation;
}

/** Which bars a row speaks of. What is left out holds for all; the first row that fits answers. */
export interface BarCondition {
  readonly uses?: readonly Use[];
  readonly grades?: readonly string[];
  /** mm, exactly this diameter */
  readonly diameter?: number;
  /** mm, up to and including */
  readonly upTo?: number;
  /** mm, below and not including */
  readonly below?: number;
  /** up to and including the diameter of this bar of the table */
  readonly upToSize?: string;
  readonly sizes?: readonly string[];
  /** This line alone: sources differ. */
  readonly conflict?: string;
  /** this line alone, where its owner looked it up */
  readonly cite?: Citation;
}

/** Fabrication former: a multiple of the diameter or a printed figure in the standard's unit. */
export interface FormerRow extends BarCondition {
  /** left out: uncoated bars */
  readonly coatings?: readonly string[];
  readonly perDiameter?: number;
  readonly former?: number;
}

/**
 * Mandrel of a bend or re-bend TEST of the bar, in diameters. A type of its own, without the fields
 * of a former row, so that no test mandrel can stand in a table of formers.
 */
export interface TestMandrelRow {
  readonly test: "bend" | "rebend";
  readonly testGrades?: readonly string[];
  /** mm, up to and including */
  readonly testUpTo: number;
  /** as the page prints it: the mandrel's diameter, or its radius */
  readonly testMandrelPerDiameter?: number;
  readonly testRadiusPerDiameter?: number;
}

/** A radius for one diameter, in the standard's unit. */
export interface RadiusRow {
  readonly diameter: number;
  readonly radius: number;
  /** This line alone: sources differ. */
  readonly conflict?: string;
  /** this line alone, where its owner looked it up */
  readonly cite?: Citation;
}

/** Least end leg: printed overall, or a straight that r + d is added to. */
export interface EndLegRow extends BarCondition {
  /** in the standard's unit, printed, overall to the outside of the bend */
  readonly outside?: number;
  /** straight after the bend, in diameters */
  readonly straightPerDiameter?: number;
  /** in the standard's unit: the straight is never less */
  readonly leastStraight?: number;
  /** in the standard's unit: the computed overall leg goes up to this step */
  readonly roundedUpTo?: number;
}

export interface HookRow extends BarCondition {
  readonly turns: readonly HookTurn[];
  /** the hook's own former, in diameters; the least of the bar where it is left out */
  readonly formerPerDiameter?: number;
  readonly extensionPerDiameter?: number;
  /** in the standard's unit */
  readonly leastExtension?: number;
  /** the same length of bar as the hook of 180 degrees has */
  readonly lengthOfFullHook?: boolean;
  /** in the standard's unit: what the hook adds beyond the leg's outside is never less */
  readonly leastAllowance?: number;
  /** reaches the least end leg of this use */
  readonly endLegOf?: Use;
}

/** h and n of the length formulas, in the standard's unit. */
export interface AllowanceRow extends BarCondition {
  readonly hookAllowance: number;
  readonly bendAllowance: number;
}

/** What a code asks of bars beside one another; lengths in the standard's unit. */
export interface DetailingRow extends DetailingFigures {
  readonly rule: DetailingRule;
  /** mm of the bar's diameter, or of the main bar's where links are spoken of: up to and including */
  readonly upTo?: number;
  /** This line alone: sources differ. */
  readonly conflict?: string;
  /** this line alone, where it has a source of its own */
  readonly cite?: Citation;
}

/**
 * Everything held of one document and edition, as data; `buildStandard` answers from it. Lengths are
 * in the standard's unit, except bar diameters in conditions, which are mm.
 */
export interface StandardTables {
  readonly id: string;
  readonly title: string;
  /** what whoever relies on this edition must know first */
  readonly caution: string | null;
  readonly unit: LengthUnit;
  /** other names that the document goes by, without edition */
  readonly names: readonly string[];
  readonly bars: readonly PrintedTable<PrintedBar>[];
  /** a number in a size is the bar's nominal mm, so that "16mm" is the bar 16 */
  readonly sizesInMillimetres: boolean;
  /** letters before a size are those of the country's steel, which the document leaves open: one or two are read */
  readonly anyTypeLetters?: boolean;
  /** d in "3d" is the number in the bar's name and not its nominal diameter */
  readonly multiplesOfName?: boolean;
  readonly grades: readonly Grade[];
  /** the grade taken where none is said, by use */
  readonly gradeUnsaid: Readonly<Record<"main" | "link", string>> | null;
  readonly uses: readonly Use[];
  readonly formers: readonly PrintedTable<FormerRow>[];
  readonly formulaRadii: PrintedTable<RadiusRow> | null;
  readonly endLegs: readonly PrintedTable<EndLegRow>[];
  readonly hooks: readonly PrintedTable<HookRow>[];
  readonly allowances: PrintedTable<AllowanceRow> | null;
  readonly bendingNeedsEndLegUpTo: number | null;
  readonly shapes: readonly ShapeDefinition[];
  /** some codes of its list are not held */
  readonly shapesInPart: boolean;
  readonly lengthRounding: LengthRounding;
  readonly dimensionStep: Cited<number> | null;
  readonly straightBetweenBends: Cited<number> | null;
  readonly manyBends: Cited<number> | null;
  readonly tolerances: Cited<readonly ToleranceRow[]> | null;
  readonly coldBending: Cited<number> | null;
  readonly rebending: Cited<string> | null;
  readonly rebendingLimit: Cited<RebendingLimit> | null;
  readonly straightSupplyRadius: PrintedTable<RadiusRow> | null;
  readonly transportWidth: Cited<number> | null;
  readonly stockLength: Cited<number> | null;
  readonly largestCurveFormer: Cited<number> | null;
  readonly siteDeductions: Cited<SiteDeductions> | null;
  readonly detailing: readonly PrintedTable<DetailingRow>[];
  readonly testMandrels: readonly PrintedTable<TestMandrelRow>[];
  /** what the document has and this folder does not hold */
  readonly notHeld: readonly string[];
}
