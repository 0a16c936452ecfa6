import type { CellProblem } from "../schedule/bar-row";
import { isLengthOfBar } from "../shapes/contradicting-dims";
import { courseTrust } from "../shapes/course";
import { defineRefusal, isRefusal, Refusal } from "../units/refusal";
import type { BarFacts } from "./bar-facts";
import { isLengthBorneOut } from "./length-borne-out";
import { givesMoreThanTaken } from "./stray-letters";

/**
 * What a length is asked for. `as scheduled` is what the row says; `as computed` what follows from shape and
 * dimensions; `to cut` is the scheduled one, since the person at the shear works by the schedule, else the
 * computed one; `to weigh` is the computed one, as a worksheet function gives it, else the scheduled one. What only a
 * course that is recalled gives, without a printed length beside it, weighs nothing that has a length of its own, nor
 * does what a code makes of some of the dimensions and not of all that are given: the code may be the slip; nor what
 * the dimensions make where the row's mass or total length follows from the length that it says.
 */
export type BarPurpose = "as scheduled" | "as computed" | "to cut" | "to weigh";

/** A length of one bar, mm, above nought, and where it comes from. */
export interface BarLength {
  readonly length: number;
  readonly from: "schedule" | "computed";
}

const notScheduled = defineRefusal("length-not-scheduled", "value", "no length is written in the row");
const notComputed = defineRefusal("length-not-computed", "value", "shape and dimensions give no length");
const noLength = defineRefusal(
  "length-not-known",
  "value",
  "no length is written, and shape and dimensions give none",
);
const notAboveNought = defineRefusal(
  "length-not-above-nought",
  "value",
  "the length {typed} is no length of a bar: correct it",
);

const lengthOpen = defineRefusal(
  "length-open",
  "value",
  "{reason}; until the cell is corrected the bar has no length",
);

/** The length of a row's bar for a purpose; refuses what is not known and what no bar can have. */
export function barLength(facts: BarFacts, purpose: BarPurpose): BarLength | Refusal {
  const scheduled = scheduledLength(facts);
  if (purpose === "as scheduled") return scheduled ?? notScheduled({});
  const computed = computedLength(facts);
  if (purpose === "as computed") return computed;
  // another dimension of the row may have slipped with it, so that what follows from those is no better
  const open = facts.row.length === null ? facts.row.problems?.find(isOpenUnit) : undefined;
  if (open !== undefined) return lengthOpen({ reason: open.reason });
  // dimensions that contradict each other make no bar, whatever length stands beside them
  if (isRefusal(computed) && CONTRADICTIONS.has(computed.code)) return computed;
  // the shapes of a sheet of another standard are none of this one's
  const isForeign = facts.sheet.habits.standardMeant !== null && scheduled !== null;
  const known = isRefusal(computed) || isForeign ? null : computed;
  if (isRefusal(scheduled)) return scheduled;
  const isSurer = purpose === "to cut" || restsOnRecalledCourse(facts) || isOutvoted(facts, scheduled, known);
  return (isSurer ? (scheduled ?? known) : (known ?? scheduled)) ?? noLength({});
}

function isOutvoted(facts: BarFacts, scheduled: BarLength | null, known: BarLength | null): boolean {
  if (scheduled === null || known === null || scheduled.length === known.length) return false;
  return givesMoreThanTaken(facts) || isLengthBorneOut(facts);
}

/** A length that stands in the row and may be in another unit than its column. */
function isOpenUnit({ field, guess, asks }: CellProblem): boolean {
  return field === "length" && guess === "unit-of-cell" && asks === true;
}

function restsOnRecalledCourse({ definition }: BarFacts): boolean {
  return definition !== null && definition.formula === null && courseTrust(definition) !== "sure";
}

const CONTRADICTIONS: ReadonlySet<string> = new Set(["dimensions-contradict", "length-beyond-reason"]);

function scheduledLength({ row }: BarFacts): BarLength | Refusal | null {
  if (row.length === null) return null;
  if (!isLengthOfBar(row.length)) return notAboveNought({ typed: row.length });
  return { length: row.length, from: "schedule" };
}

function computedLength(facts: BarFacts): BarLength | Refusal {
  const { computedLength: length } = facts;
  if (length !== null) return { length, from: "computed" };
  const cut = facts.cutOrRefusal;
  if (cut === null) return notComputed({});
  return cut instanceof Refusal ? cut : { length: cut.length, from: "computed" };
}
