import type { Workshop } from "../shop/workshop";
import type { Standard } from "../standards/port";
import type { LimitsInForce } from "./limits";

/** What every rule may ask beside the facts of its row or sheet. */
export interface RuleContext {
  readonly standard: Standard;
  readonly limits: LimitsInForce;
  /** machines, formers in stock and lifting gear of the Shop sheet; null where the book has none */
  readonly shop: Workshop | null;
}
