import type { BarFacts } from "../bar/bar-facts";
import { machinesFor } from "../bar/bar-on-machines";
import { courseTrust } from "../shapes/course";
import type { MachineFault } from "../shop/machine-fault";
import type { Outcome } from "./finding";
import type { RuleContext } from "./rule-context";

type FaultOf<Kind extends MachineFault["kind"]> = Extract<MachineFault, { readonly kind: Kind }>;

/**
 * What of one kind stands against a bar on the bender that comes nearest, where no bender of the Shop sheet
 * can make it. `unsure` where another bender is not known well enough, or the fault rests on a guess or on a course in doubt.
 */
export function faultsOfKind<Kind extends MachineFault["kind"]>(
  kind: Kind,
  facts: BarFacts,
  { shop }: RuleContext,
): readonly { readonly fault: FaultOf<Kind>; readonly machine: string; readonly outcome: Outcome }[] {
  const ranking = shop === null ? null : machinesFor(facts, shop);
  if (shop === null || ranking === null || ranking.nearest === null) return [];
  const { nearest, mayBeMade } = ranking;
  const { name } = nearest.machine;
  const { length } = shop.shop.benders;
  // bends of a course in doubt may be others, and the ticket gives none
  const isDoubtful = courseTrust(facts.definition) === "in doubt";
  const machine = length === 1 ? name : `${name}, the nearest of ${length} benders`;
  return nearest.faults
    .filter((fault): fault is FaultOf<Kind> => fault.kind === kind)
    .map((fault) => {
      const isGuess = "sure" in fault && !fault.sure;
      return { fault, machine, outcome: mayBeMade || isGuess || isDoubtful ? "unsure" : "broken" };
    });
}
