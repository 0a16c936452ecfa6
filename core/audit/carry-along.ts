import type { BarFacts } from "../bar/bar-facts";
import type { ColumnKind } from "../schedule/bar-row";
import { cutLength } from "../shapes/cut-length";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { isRefusal } from "../units/refusal";
import type { ReportedFix } from "./rule";

type Edit = ReportedFix["edits"][number];

/** A change that follows from another: mm for lengths, kg for the mass. */
export interface Carried {
  readonly at: "length" | "totalLength" | "mass";
  readonly to: number;
}

/** By how much two figures of one row may differ and still be told to agree. */
const AGREE = 0.01;
/** mm of a length that are worth a change of it */
const WORTH_A_CHANGE = 1;

/**
 * What else of the row changes with a fix: the length with its dimensions or former, the total length and
 * the mass with the length or the number of bars. Only cells that agreed before, and would not after, are
 * carried along.
 */
export function carriedAlong(facts: BarFacts, edits: readonly Edit[]): readonly Carried[] {
  const to = (at: ColumnKind): number | null => {
    const edit = edits.find((one) => one.at === at);
    return typeof edit?.to === "number" ? edit.to : null;
  };
  const { row } = facts;
  const carried: Carried[] = [];
  const length = to("length") ?? lengthAfter(facts, edits) ?? row.length;
  if (length !== null && row.length !== null && length !== row.length && to("length") === null)
    carried.push({ at: "length", to: length });
  const count = to("total") ?? facts.count;
  if (length === null || row.length === null || count === null || facts.count === null) return carried;
  const longer = (length / row.length) * (count / facts.count);
  const { mass } = row;
  const totalLength = row.totalLength ?? null;
  if (longer === 1 || !Number.isFinite(longer) || longer <= 0) return carried;
  if (totalLength !== null && to("totalLength") === null && agree(totalLength, row.length * facts.count))
    carried.push({ at: "totalLength", to: totalLength * longer });
  const { massRatio, massEach } = facts;
  if (mass === null || to("mass") !== null || massRatio === null || massEach === null) return carried;
  const factor = facts.sheet.habits.massFactor ?? 1;
  if (!agree(massRatio, factor)) return carried;
  const isOfRow = agree(mass, massEach * facts.count * factor);
  carried.push({ at: "mass", to: Number((mass * (isOfRow ? longer : length / row.length)).toFixed(3)) });
  return carried;
}

/** mm: the length that the bar would need with its legs as long as those limits ask; null where it stays, or did not fit before. */
export function lengthLengthened(
  facts: BarFacts,
  limits: readonly { readonly letter: string; readonly least: number | null }[],
): number | null {
  const edits = limits.flatMap(({ letter, least }) =>
    least === null ? [] : [{ at: letter as ColumnKind, to: least }],
  );
  const after = lengthAfter(facts, edits);
  return after === facts.row.length ? null : after;
}

/** The length to cut after dimensions or former change; null where it stays, or did not fit before. */
function lengthAfter(facts: BarFacts, edits: readonly Edit[]): number | null {
  const { row, cut } = facts;
  if (row.length === null || cut === null || facts.lengthJudgement.kind !== "fits") return null;
  const former = edits.find(({ at }) => at === "former")?.to;
  const dims = DIMENSION_LETTERS.map((letter, index) => {
    const edit = edits.find(({ at }) => at === letter);
    return edit === undefined ? (row.dims[index] ?? null) : typeof edit.to === "number" ? edit.to : null;
  });
  const isTouched =
    typeof former === "number" || DIMENSION_LETTERS.some((letter) => edits.some(({ at }) => at === letter));
  if (!isTouched) return null;
  const shape = facts.resolveWith(
    dims.slice(0, Math.max(row.dims.length, 1)),
    typeof former === "number" ? former : row.former,
  );
  if (isRefusal(shape)) return null;
  const after = cutLength(shape);
  if (isRefusal(after) || Math.abs(after.length - cut.length) < WORTH_A_CHANGE) return null;
  return after.length;
}

function agree(a: number, b: number): boolean {
  return b !== 0 && Math.abs(a / b - 1) <= AGREE;
}
