import type { LengthUnit } from "../units/length-unit";
import type { Refusal } from "../units/refusal";
import type { Citation, Cited } from "./citation";
import type { OwnStandard } from "./own-standard";
import type { ShapeDefinition, Use } from "./shape-definition";

export type { LengthUnit } from "../units/length-unit";
export type { DimLetter, ShapeAngle, ShapeDefinition, ShapeLimit, Use } from "./shape-definition";

/** One bar of a standard's table. */
export interface Bar {
  /** The table's own name: "16", "N16", "#5", "15M", "D16". */
  readonly size: string;
  /** mm */
  readonly diameter: number;
  /** mm2, as printed */
  readonly area: number;
  /** kg/m, as printed */
  readonly massPerMetre: number;
  /** lb/ft, where the table prints it */
  readonly poundsPerFoot?: number;
  readonly cite: Citation;
}

/** A size as somebody typed it, read by a standard. */
export interface SizeReading {
  readonly typed: string;
  /** mm; nominal diameter of the bar, or the plain number given */
  readonly diameter: number;
  /** null where the number is no bar of the table */
  readonly bar: Bar | null;
  /** "H" of "H16"; empty where none was typed */
  readonly prefix: string;
  /** kg/m by another standard, where this one has no such bar */
  readonly massPerMetre?: number;
}

/** A bar-type letter or grade that the standard knows. */
export interface Grade {
  readonly name: string;
  /** prefixes in a size that mean it, such as "H" */
  readonly prefixes: readonly string[];
  /** MPa; 0 where the specification of the job says it */
  readonly yield: number;
  /** A round bar without ribs. */
  readonly plain?: boolean;
  /** No longer made or only in old drawings: how it is read today. */
  readonly superseded?: string;
  /** mm: the largest bar that is made in it */
  readonly madeUpTo?: Cited<number>;
  /** says that the steel is not made to be welded */
  readonly notWelded?: Citation;
  readonly cite: Citation;
}

export interface FormerQuestion {
  /** mm */
  readonly diameter: number;
  readonly use: Use;
  readonly coating?: string;
  readonly grade?: string;
}

/** The least end leg beyond a bend. */
export interface EndLeg {
  /** mm, overall to the outside of the bend */
  readonly outside: number;
  /** mm of straight after the bend, where the document gives it so */
  readonly straight: number | null;
}

export type HookTurn = 90 | 135 | 180;

/** A standard end hook or, for use `link`, a stirrup hook. */
export interface Hook {
  readonly turn: HookTurn;
  /** mm, inside diameter of the bend */
  readonly former: number;
  /** mm, straight after the bend */
  readonly extension: number;
}

/** What an end adds to the length that is measured overall to the outside of its bend. */
export interface EndAllowance {
  /** mm, of a hook of 180 degrees */
  readonly hook: number;
  /** mm, of a bend of 90 degrees */
  readonly bend: number;
}

/** How a computed length becomes the length on the schedule. */
export interface LengthRounding {
  /** mm; 0 leaves it unrounded */
  readonly step: number;
  readonly direction: "up" | "nearest";
  readonly cite: Citation;
}

/** Deviation allowed on a dimension up to and including `upTo` mm. */
export interface ToleranceRow {
  readonly applies: "cut length" | "bent dimension" | "link dimension" | (string & {});
  readonly upTo: number;
  readonly plus: number;
  readonly minus: number;
}

/** mm, kg: figures of a standard about supply, transport and handling. */
export interface SupplyLimits {
  /** mm radius above which a bar is supplied straight */
  straightSupplyRadius(diameter: number): Cited<number> | null;
  /** mm: the shorter side of the rectangle round a bent bar */
  readonly transportWidth: Cited<number> | null;
  /** mm: stock length usually held */
  readonly stockLength: Cited<number> | null;
  /** mm: largest practical former for a continuous curve */
  readonly largestCurveFormer: Cited<number> | null;
}

/** Deductions taken from the sum of the legs, in bar diameters, and what a hook adds. */
export interface SiteDeductions {
  readonly bends: readonly {
    readonly angle: number;
    readonly perDiameter: number;
    /** this line's own trust, where it differs */
    readonly cite?: Citation;
  }[];
  /** what an end hook adds, by its turn, in bar diameters */
  readonly hooks: readonly {
    readonly turn: HookTurn;
    readonly perDiameter: number;
    readonly cite?: Citation;
  }[];
  /** mm: a hook never adds less */
  readonly leastHook: number;
  /** in bar diameters: the former that geometry takes where the document holds none for the bar */
  readonly formerPerDiameter: number;
}

/** What a code asks of bars beside one another, so far as a schedule shows it. */
export type DetailingRule =
  | "least lap"
  | "lapped bars"
  | "spacing of column links"
  | "size of column links"
  | "spiral, clear between turns"
  | "spiral, pitch"
  | "former of a link about its bar"
  | "bar that a link is bent round"
  | "slope of a column bar's crank";

/** Figures of one detailing rule; what it does not say is left out. */
export interface DetailingFigures {
  /** in diameters of the bar; of the main bar where a link is asked about */
  readonly perDiameter?: number;
  /** in diameters of the link */
  readonly perLink?: number;
  /** mm */
  readonly atLeast?: number;
  /** mm */
  readonly atMost?: number;
  /** of a slope, to a rise of 1: at least */
  readonly run?: number;
}

export interface RebendingLimit {
  /** mm of bar diameter */
  readonly upTo: number;
  /** name of the one grade that is bent again; null where it is not said */
  readonly grade: string | null;
}

/** A document and edition, as the rest of core asks it. Nothing else of a standard is visible. */
export interface Standard {
  /** as in the contract: "BS8666:2005" */
  readonly id: string;
  readonly title: string;
  /** What whoever relies on this edition must know first; null where there is nothing. */
  readonly caution: string | null;
  /** what its owner looked up and added, which is in force in it */
  readonly own: OwnStandard;
  readonly unit: LengthUnit;
  readonly bars: readonly Bar[];
  readonly grades: readonly Grade[];
  readonly uses: readonly Use[];
  /** Reads "16", 16, "H16", "#5", "15M", "Ø16"; refuses what is no number at all or not of this country. */
  readSize(typed: string | number): SizeReading | Refusal;
  /** Least inside bend diameter for fabrication, mm. Never a test mandrel. */
  former(question: FormerQuestion): Cited<number> | Refusal;
  /** The r that the printed formulas use, mm; grade by name or letter. */
  formulaRadius(diameter: number, use: Use, grade?: string): Cited<number> | Refusal;
  endLeg(diameter: number, use: Use, grade?: string): Cited<EndLeg> | Refusal;
  /**
   * mm of bar diameter up to which the least end leg is what bending itself needs; above it the leg is what
   * the document schedules. Null where end legs are the hooks that an anchorage counts on: no limit of bending.
   */
  readonly bendingNeedsEndLegUpTo: number | null;
  /** `former`, mm, stands in for the document's least where one is given. */
  hook(turn: HookTurn, diameter: number, use: Use, grade?: string, former?: number): Cited<Hook> | Refusal;
  /** h and n of the length formulas; null where the document's formulas have none */
  endAllowance(diameter: number, grade?: string): Cited<EndAllowance> | Refusal | null;
  readonly shapes: ReadonlyMap<string, ShapeDefinition>;
  /** some codes of the document's list are not held: one that is missing here may be one of its codes */
  readonly shapesInPart: boolean;
  readonly lengthRounding: LengthRounding;
  /** mm step that dimensions are scheduled in */
  readonly dimensionStep: Cited<number> | null;
  /** least straight between two bends, in bar diameters */
  readonly straightBetweenBends: Cited<number> | null;
  /** bends from which a shape may be impractical within tolerance */
  readonly manyBends: Cited<number> | null;
  readonly tolerances: Cited<readonly ToleranceRow[]> | null;
  /** degrees Celsius below which cold bending needs leave */
  readonly coldBending: Cited<number> | null;
  readonly rebending: Cited<string> | null;
  /** what may be bent a second time at all; null where the document does not say */
  readonly rebendingLimit: Cited<RebendingLimit> | null;
  readonly supply: SupplyLimits;
  /** what a code asks of bars beside one another; `diameter`, mm, is that of the bar, or of the main bar of a link */
  detailing(rule: DetailingRule, diameter: number): Cited<DetailingFigures> | null;
  /** null but for the rule that takes deductions in place of geometry */
  readonly siteDeductions: Cited<SiteDeductions> | null;
}
