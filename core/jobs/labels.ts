import { whysInWords } from "../audit/holds";
import { bundleItem } from "../tickets/bundle-item";
import type { RowToSend } from "../tickets/row-to-send";
import { type BundleItem, type Bundles, makeBundles } from "../totals/bundles";
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

/** bars in no bundle that are named one by one */
const MOST_NAMED = 20;

/** Bundles under a lifting limit, kg, with their labels; refuses where none is known. */
export function labelsOf(tickets: readonly RowToSend[], limit: number | null): LabelsJob | Refusal {
  if (limit === null) return limitUnknown({});
  if (!(limit > 0) || !Number.isFinite(limit)) return noLimit({ limit });
  const items: BundleItem[] = [];
  const left: RowToSend[] = [];
  for (const ticket of tickets) {
    const item = bundleItem(ticket);
    if (item === null) left.push(ticket);
    else items.push(item);
  }
  const isSeveral = new Set(items.map(({ schedule }) => schedule ?? null)).size > 1;
  const named = left.slice(0, MOST_NAMED).map(({ mark, sheet, row }) => mark ?? `${sheet} row ${row}`);
  const more = left.length > MOST_NAMED ? ` and ${left.length - MOST_NAMED} more` : "";
  return {
    bundles: makeBundles(items, limit),
    notes: [
      ...(left.length === 0
        ? []
        : [`in no bundle, without count, length or mass: ${named.join(", ")}${more}`]),
      ...items.flatMap((item) => barNotes(item, isSeveral)),
    ],
  };
}

/** What somebody must know who sees no paper of the bar but its bundle. */
function barNotes({ schedule, mark, size, held = [], asked = [] }: BundleItem, isSeveral: boolean): string[] {
  const bar = `${isSeveral ? `${schedule ?? "no schedule"} ` : ""}${mark ?? "no mark"} ${size}`;
  const why = whysInWords(held);
  if (why !== undefined) return [`not to be made or sent until cleared: ${bar}: ${why}`];
  return asked.slice(0, 1).map((why) => `to be asked about before it is made or sent: ${bar}: ${why}`);
}
