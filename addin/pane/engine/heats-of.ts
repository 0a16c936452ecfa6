import { heatsByRow, plansWithHeats } from "../../../core/jobs";
import { Workshop } from "../../../core/shop";
import type { HeatsOfRow } from "../../../core/tickets";
import { barsRead, type KeptCheck } from "./kept-check";

/** the cut list is planned once a check, however many tickets are looked at */
const known = new WeakMap<KeptCheck, HeatsOfRow>();

/** Which heat the pieces of each row come of, by the cut list of the whole sheet, as the command line's tickets say. */
export function heatsOf(kept: KeptCheck): HeatsOfRow {
  const heats = known.get(kept) ?? plannedHeats(kept);
  known.set(kept, heats);
  return heats;
}

function plannedHeats(kept: KeptCheck): HeatsOfRow {
  const { standard } = kept.audit.report;
  const schedules = [{ sheet: kept.sheet, reading: barsRead(kept) }];
  const workshop = new Workshop(kept.shop, standard);
  return heatsByRow(plansWithHeats({ schedules, workshop, standard }));
}
