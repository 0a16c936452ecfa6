import type { BarToBend } from "./bar-to-bend";
import { isHindrance, type NotSearched, stageOf } from "./machine-fault";
import { type FirstLook, lookAtMachine, type MachineVerdict, verdictOf } from "./try-machine";
import type { Workshop } from "./workshop";

/** What the benders of a workshop make of one bar. */
export interface MachineRanking {
  readonly bar: BarToBend;
  /** the best first; where one is known to make the bar, only those that were looked at before it was found */
  readonly verdicts: readonly MachineVerdict[];
  /** the bender that is known to make it; null where none is */
  readonly made: MachineVerdict | null;
  /** what findings speak of: the bender that comes nearest with something against it; null where none has */
  readonly nearest: MachineVerdict | null;
  /** a bender other than the nearest makes the bar, or is not known well enough to say that it cannot */
  readonly mayBeMade: boolean;
  /** why no order was searched, whatever the bender */
  readonly notSearched: NotSearched | null;
}

/**
 * One verdict a bender, the best first: those known to make the bar, with the former that is wanted before
 * a larger one; then those with nothing against them of which something is not known; then those with a
 * fault that is a guess; then those that cannot, the one that comes nearest before the others; last those
 * whose tooling is not written down. Alike, the one whose trials bear more of the angles stands before, then
 * the order of the Shop sheet.
 */
export function rankMachines(workshop: Workshop, bar: BarToBend): MachineRanking {
  const notSearched = workshop.reasonNotToSearch(bar);
  const looks = workshop.shop.benders.map((machine) =>
    lookAtMachine(
      bar,
      machine,
      (formers) => workshop.bentTo(bar, machine, formers),
      notSearched === "rolled" ? null : notSearched,
    ),
  );
  if (notSearched === "rolled") return withoutVerdict(bar, looks);
  looks.sort((a, b) => a.faults.length - b.faults.length || a.bentTo.guessed - b.bentTo.guessed);
  const verdicts: MachineVerdict[] = [];
  for (const look of looks) {
    const verdict = verdictOf(bar, look);
    verdicts.push(verdict);
    if (verdict.can === "known" && verdict.faults.length === 0) break;
  }
  verdicts.sort(
    (a, b) => standing(a) - standing(b) || stageOf(b.faults) - stageOf(a.faults) || guesses(a) - guesses(b),
  );
  return { bar, notSearched, verdicts, ...pick(verdicts) };
}

const guesses = ({ bentTo }: MachineVerdict): number => bentTo.guessed;

function pick(verdicts: readonly MachineVerdict[]): Pick<MachineRanking, "made" | "nearest" | "mayBeMade"> {
  const [best] = verdicts;
  const made = best?.can === "known" ? best : null;
  const failed = verdicts.filter(({ faults }) => faults.length > 0);
  failed.sort((a, b) => stageOf(b.faults) - stageOf(a.faults));
  const nearest = made !== null ? (made.faults.length > 0 ? made : null) : (failed[0] ?? null);
  const mayBeMade = verdicts.some((one) => one !== nearest && one.can !== "cannot");
  return { made, nearest, mayBeMade };
}

/** A rolled curve is not bent about a former, so no bender is judged by it. */
function withoutVerdict(bar: BarToBend, looks: readonly FirstLook[]): MachineRanking {
  const verdicts = looks.map(
    ({ isSearchable: _, ...look }): MachineVerdict => ({
      ...look,
      can: "possible",
      faults: [],
      unknown: [{ kind: "not searched", why: "rolled" }],
    }),
  );
  return { bar, notSearched: "rolled", verdicts, made: null, nearest: null, mayBeMade: true };
}

function standing({ can, faults, unknown }: MachineVerdict): number {
  if (can === "known") return faults.length === 0 ? 0 : 1;
  if (can === "cannot") return 4;
  if (unknown.some(({ kind }) => kind === "tooling")) return 5;
  return faults.some(isHindrance) ? 3 : 2;
}
