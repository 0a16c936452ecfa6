import type { BarRow, ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { CodesMeant } from "./codes-meant";
import type { FactsInHand } from "./facts-in-hand";
import { type IdentityHabits, sameSpeaking } from "./identity-habits";
import type { KindsOfBars } from "./kinds-of-bars";
import type { KnownOfBars } from "./known-of-bars";
import type { WordsOfBars } from "./said-words";
import type { StatedLength } from "./stated-length";

/** What most of a sheet's sizes and grades are, where the standard in force does not hold them. */
export interface StandardMeant {
  readonly id: string;
  readonly first: BarRow;
  readonly misfits: number;
  readonly fitting: number;
}

/** What of a sheet speaks against the document in force, where the sheet does not name it. */
export interface DocumentHabits {
  /** many lengths of bent bars are others than the document makes of their dimensions */
  readonly lengthsElsewhere: boolean;
  /** most links end shorter than the document prints, and no letter of its bar types stands before their sizes */
  readonly endsOwnWay: boolean;
  /** by which the lengths of a code are over those of the document, as `ownDeviations` writes it; else nothing */
  readonly lengthsOwnWay: string;
}

/** What a rule for one row must know of its sheet's habits. */
export interface SheetHabits extends DocumentHabits {
  /** share of bars that say a grade */
  readonly gradeShare: number;
  /** share of bars that say a shape */
  readonly shapeShare: number;
  /** some dimension stands in brackets */
  readonly usesBrackets: boolean;
  /** the same mark means another bar in another member */
  readonly marksRestart: boolean;
  /** typed mass over computed mass, where nearly all rows share one factor away from 1 */
  readonly massFactor: number | null;
  /** share of typed lengths that are no multiple of the step that the standard prints */
  readonly offStepShare: number;
  /** several lengths are off that step and nearly all keep another one, which is no part of it */
  readonly keepsAnotherStep: boolean;
  /** most lengths of bent bars are sums of their legs and not what is cut */
  readonly lengthsAreSums: boolean;
  /** another standard than the one in force, that the sizes and grades are of */
  readonly standardMeant: StandardMeant | null;
  /** the letters that nearly all sizes have and the standard in force, which the sheet names, has not: "D12"; empty where there are none */
  readonly lettersElsewhere: string;
  /** most shapes are neither codes of the standard nor paths: the sheet has a way of its own */
  readonly shapesOwnWay: boolean;
  /** most bars have a shape code; bar types show no standard, as T, R, H and Y are of many */
  readonly showsStandard: boolean;
  /** how long bars may be by a title or note */
  readonly statedLength: StatedLength | null;
  /** the largest former of each diameter, where the list keeps leasts of its own below those in force: "|20:100|" */
  readonly formersOwnWay: string;
  /** a title or note says that laps are in the lengths */
  readonly lapsIncluded: boolean;
  /** shape codes of which most rows leave the free dimension blank, each between bars: "|11|21|" */
  readonly freeLeftBlank: string;
  /** letters beyond those of its code that one bar alone of the code gives: "|11:C|" */
  readonly strayLetters: string;
  /** kg/m that a line of the sheet states for a diameter: what bars of no standard held are weighed by */
  readonly statedMasses: ReadonlyMap<number, number>;
  /** the products that most rows keep */
  readonly identities: IdentityHabits;
}

/** The sheet as one of its rows sees it. */
export interface SheetOfRow {
  readonly sheet: Sheet;
  readonly reading: Pick<ScheduleReading, "tables" | "pasted">;
  readonly habits: SheetHabits;
  /** another standard whose list the sheet's shape codes are of; asked of the standard in force */
  codesMeant(standard: Standard): CodesMeant | null;
  readonly words: WordsOfBars;
  readonly kinds: KindsOfBars;
  readonly inHand: FactsInHand;
  /** by the places of the bars */
  readonly known: KnownOfBars;
}

/** True where no rule for a row would judge otherwise, but for what the row's own masses break. */
export function sameHabits(a: SheetHabits, b: SheetHabits): boolean {
  return (
    isMost(a.gradeShare) === isMost(b.gradeShare) &&
    isMost(a.shapeShare) === isMost(b.shapeShare) &&
    a.usesBrackets === b.usesBrackets &&
    a.marksRestart === b.marksRestart &&
    a.massFactor === b.massFactor &&
    isMost(a.offStepShare) === isMost(b.offStepShare) &&
    a.keepsAnotherStep === b.keepsAnotherStep &&
    a.shapesOwnWay === b.shapesOwnWay &&
    a.freeLeftBlank === b.freeLeftBlank &&
    a.strayLetters === b.strayLetters &&
    a.formersOwnWay === b.formersOwnWay &&
    a.lapsIncluded === b.lapsIncluded &&
    a.statedLength?.typed === b.statedLength?.typed &&
    a.statedLength?.cell === b.statedLength?.cell &&
    a.standardMeant?.id === b.standardMeant?.id &&
    a.lettersElsewhere === b.lettersElsewhere &&
    a.statedMasses === b.statedMasses &&
    sameSpeaking(a.identities, b.identities) &&
    a.lengthsAreSums === b.lengthsAreSums &&
    a.lengthsElsewhere === b.lengthsElsewhere &&
    a.endsOwnWay === b.endsOwnWay &&
    a.lengthsOwnWay === b.lengthsOwnWay
  );
}

export function isMost(share: number): boolean {
  return share > 0.5;
}
