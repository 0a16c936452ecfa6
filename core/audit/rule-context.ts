import type { OwnProblem } from "../own/own-sheet";
import type { Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import type { Standard } from "../standards/port";
import type { LimitsInForce } from "./limits";

/** What every rule may ask beside the facts of its row or sheet. */
export interface RuleContext {
  readonly standard: Standard;
  /** nobody chose the standard */
  readonly isStandardAssumed: boolean;
  /** nobody chose it, and it is the one that the sheets themselves name */
  readonly isStandardNamed: boolean;
  readonly limits: LimitsInForce;
  /** machines, formers in stock and lifting gear of the Shop sheet; null where the book has none */
  readonly shop: Workshop | null;
  /** the sheet Standard with what of it could not be taken; null where the book has none */
  readonly own: OwnContext | null;
}

/** The workbook's own copy of its documents. */
export interface OwnContext {
  readonly sheet: Sheet;
  readonly problems: readonly OwnProblem[];
}
