import type { BarFacts } from "../bar/bar-facts";
import type { SlipFactor } from "../bar/length-judgement";
import type { CellProblem } from "../schedule/bar-row";
import { lengthRestsOn } from "./length-rests-on";
import type { RowReport } from "./rule";

type SlipReport = RowReport<
  {
    readonly slip: "{field} {from} {to} {factor}";
    readonly read: "{field} {from} {to} {factor}";
    readonly open: "{field} {from} {to} {factor}";
  },
  { readonly correct: { readonly label: string; readonly safety: "needs-review" } }
>;

const AGREE = 0.01;

/** The words of the rules for slips of every factor. */
export const SLIP_MESSAGES = {
  slip: "{field} {from} would agree with the rest of the row as {to}",
  read: "{field} {from} agrees with the rest of the row as {to}, and is read and weighed so",
  open: "{field} {from} is unlike its column, and {to} may be meant: correct the cell; until then it is not used",
} as const;

/** The report of a unit slip by one of `factors`; null where the row has none. */
export function slipReport(facts: BarFacts, factors: readonly SlipFactor[]): SlipReport | null {
  const read = slipOfReading(facts, factors);
  if (read !== null) return read;
  const judged = facts.lengthJudgement;
  if (judged.kind !== "slip" || !factors.includes(judged.factor)) return null;
  const { at, factor, from, to, cut } = judged;
  return {
    messageId: "slip",
    at,
    values: { field: at, from: { mm: from, typed: true }, to: { mm: to }, factor },
    cite: lengthRestsOn(facts, cut),
    ...(agreesWithMass(facts, at) ? {} : { fix: { id: "correct" as const, edits: [{ at, to }] } }),
  };
}

/** Where the mass follows from the length as typed, another length does not make the row agree. */
function agreesWithMass({ massRatio }: BarFacts, at: string): boolean {
  return at === "length" && massRatio !== null && Math.abs(massRatio - 1) <= AGREE;
}

/** The figure as it stands in a column that is not in mm, with the unit that it would have there. */
function asTyped(facts: BarFacts, { field, typed }: CellProblem): string | null {
  const unit = facts.row.table.columns.get(field)?.unit ?? null;
  return unit === null || unit === "mm" ? null : `${typed} (${unit} by its column)`;
}

/** A cell that was read in another unit than its column's, because only so the row fits. */
function slipOfReading(facts: BarFacts, factors: readonly SlipFactor[]): SlipReport | null {
  if (facts.row.problems === null) return null;
  for (const problem of facts.row.problems) {
    const { field, guess, proposal, asks } = problem;
    if (guess !== "unit-of-cell" || typeof proposal !== "number") continue;
    // the row's own dimensions tell more
    if (asks === true && facts.lengthJudgement.kind === "slip") continue;
    const typed = facts.inMillimetres(field, numberTyped(problem, proposal));
    const factor = factors.find((one) => isTimes(proposal, typed, one) || isTimes(typed, proposal, one));
    if (factor === undefined) continue;
    return {
      messageId: asks === true ? "open" : "read",
      at: field,
      values: {
        field,
        from: asTyped(facts, problem) ?? { mm: typed, typed: true },
        to: { mm: proposal },
        factor,
      },
      ...(asks === true && !agreesAs(facts, field, proposal)
        ? {}
        : { fix: { id: "correct" as const, edits: [{ at: field, to: proposal }] } }),
    };
  }
  return null;
}

/** What was typed as a number, whatever its decimal mark: the one of which the proposal is a power of ten. */
function numberTyped({ typed }: CellProblem, proposal: number): number {
  // of a cell that holds more than the length its own part
  const text = String(typed).trim();
  const ways = [
    text,
    text.replace(",", "."),
    text.replace(/\./g, "").replace(",", "."),
    text.replace(/,/g, ""),
  ];
  const isPower = (one: number): boolean => {
    const power = Math.log10(proposal / one);
    return Math.abs(power - Math.round(power)) < 1e-9;
  };
  return ways.map(Number).find((one) => one > 0 && isPower(one)) ?? Number(text);
}

/** The row's mass or total length follows from the other value. */
function agreesAs({ row, bar, count }: BarFacts, at: string, to: number): boolean {
  if (at !== "length" || count === null) return false;
  const ofMass =
    row.mass === null || bar === null ? null : row.mass / ((count * to * bar.massPerMetre) / 1000);
  const ofTotal = row.totalLength == null ? null : row.totalLength / (count * to);
  return [ofMass, ofTotal].some((ratio) => ratio !== null && Math.abs(ratio - 1) <= AGREE);
}

function isTimes(large: number, small: number, factor: number): boolean {
  return small !== 0 && Math.abs(large / small / factor - 1) < 1e-6;
}
