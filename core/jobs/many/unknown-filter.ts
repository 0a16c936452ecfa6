import { defineRefusal, type Refusal } from "../../units/refusal";
import type { JobBar } from "./job-bar";
import { type BarFilter, isAsked } from "./job-totals";

type Named = Pick<JobBar, "pour" | "size">;

const noSuch = defineRefusal("job-filter-unknown", "value", "no {what} {asked}; {held}");
const noneLeft = defineRefusal(
  "job-filter-empty",
  "value",
  "no bar of {pours} is of size {sizes}; its sizes are {held}",
);

const MOST_NAMED = 20;

/**
 * Why a filter asks for what is not there: a pour or size that no bar has, or pours and sizes that no bar has
 * together. Null where every name is that of a bar, so that an empty answer never looks like a clean one.
 *
 * @example unknownFilter({ pours: ["P9"], sizes: null }, bars) // no pour P9; the pours are P1, P2, P3
 */
export function unknownFilter(filter: BarFilter, bars: readonly Named[]): Refusal | null {
  const { pours, sizes } = filter;
  const unknown = (typed: string, one: (name: string) => BarFilter): boolean =>
    !bars.some((bar) => isAsked(one(typed), bar));
  const pour = pours?.find((name) => unknown(name, (asked) => ({ pours: [asked], sizes: null })));
  if (pour !== undefined)
    return noSuch({ what: "pour", asked: quoted(pour), held: heldWords("pour", names(bars, "pour")) });
  const size = sizes?.find((name) => unknown(name, (asked) => ({ pours: null, sizes: [asked] })));
  if (size !== undefined)
    return noSuch({ what: "size", asked: quoted(size), held: heldWords("size", names(bars, "size")) });
  if (pours === null || sizes === null || bars.some((bar) => isAsked(filter, bar))) return null;
  const ofPours = bars.filter((bar) => isAsked({ pours, sizes: null }, bar));
  return noneLeft({
    pours: pours.map(quoted).join(", "),
    sizes: sizes.map(quoted).join(", "),
    held: listed(names(ofPours, "size")),
  });
}

const quoted = (name: string): string => (name.trim() === "" ? '""' : name.trim());

function heldWords(what: string, held: readonly string[]): string {
  if (held.length === 0) return `no bar row names a ${what}`;
  return held.length === 1 ? `the only ${what} is ${held[0]}` : `the ${what}s are ${listed(held)}`;
}

function listed(held: readonly string[]): string {
  const more = held.length - MOST_NAMED;
  const shown = held.slice(0, MOST_NAMED).join(", ");
  return more > 0 ? `${shown} and ${more} more` : shown;
}

/** In the order in which the bars name them first. */
function names(bars: readonly Named[], of: "pour" | "size"): string[] {
  return [...new Set(bars.map((bar) => (bar[of] ?? "").trim()))].filter((name) => name !== "");
}
