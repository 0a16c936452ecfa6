import { bundleItem } from "../tickets/bundle-item";
import type { Ticket } from "../tickets/ticket";
import { type Bundles, makeBundles } from "../totals/bundles";
import { defineRefusal, type Refusal } from "../units/refusal";

const limitUnknown = defineRefusal(
  "lifting-limit-unknown",
  "not-held",
  "no lifting limit is known, so no bundle can be made up: write Hoist or crane kg on the Shop sheet",
);
const noLimit = defineRefusal(
  "lifting-limit-bad",
  "value",
  "{limit} kg is no lifting limit: give one over 0",
);

export interface LabelsJob {
  readonly bundles: Bundles;
  readonly notes: readonly string[];
}

/** Bundles under a lifting limit, kg, with their labels; refuses where none is known. */
export function labelsOf(tickets: readonly Ticket[], limit: number | null): LabelsJob | Refusal {
  if (limit === null) return limitUnknown({});
  if (!(limit > 0) || !Number.isFinite(limit)) return noLimit({ limit });
  const items = tickets.flatMap((ticket) => bundleItem(ticket) ?? []);
  const left = tickets.length - items.length;
  return {
    bundles: makeBundles(items, limit),
    notes: [
      ...(left === 0 ? [] : [`${left} bar rows without count, length or mass: they are in no bundle`]),
      ...items.flatMap(({ mark, size, held = [] }) =>
        held
          .slice(0, 1)
          .map((why) => `not to be made or sent until cleared: ${mark ?? "no mark"} ${size}: ${why}`),
      ),
    ],
  };
}
