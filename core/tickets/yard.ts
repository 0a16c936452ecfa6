import { emptyLog, type FittedLog, fitTrialLog } from "../bending/fit-trial-log";
import type { Shop } from "../shop/shop";
import type { Standard } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";

/** What a yard owns, with its trial log fitted once for all tickets. */
export interface Yard {
  /** null where the workbook has no Shop sheet */
  readonly shop: Shop | null;
  readonly log: FittedLog;
  /** why the trial log could not be read; null where it could, or where there is none */
  readonly logRefusal: Refusal | null;
}

/** The yard of a Shop sheet; a log without a header of trials counts as empty and says why. */
export function yardOf(shop: Shop | null, standard: Standard): Yard {
  if (shop === null) return { shop, log: emptyLog(standard), logRefusal: null };
  const log = fitTrialLog(shop.trials?.block ?? null, standard, shop.benders);
  return isRefusal(log)
    ? { shop, log: emptyLog(standard), logRefusal: log }
    : { shop, log, logRefusal: null };
}
