import { hookGap } from "../bending/hook-gap";
import { leastLegs, type Tooling } from "../bending/tooling";
import { centreLine, setBack } from "../shapes/centre-line";
import type { PlanarPath } from "../shapes/path";
import type { BarToBend, BentTo } from "./bar-to-bend";
import type { MachineFault } from "./machine-fault";

/** A bar on a dressed bender. */
export interface DressedBar {
  readonly bar: BarToBend;
  /** about the formers of the rack */
  readonly path: PlanarPath;
  /** one a turn */
  readonly tooling: readonly Tooling[];
  readonly bentTo: BentTo;
  /** the machine turns far enough for every bend */
  readonly canTurn: boolean;
}

/** Links too narrow for the tooling, hooks that close too early, and end legs that pin or back-rest miss. */
export function faultsOfLegs(dressed: DressedBar): MachineFault[] {
  const { bar, path, tooling, bentTo, canTurn } = dressed;
  const { diameter, linkInside } = bar;
  const inside = Math.max(...tooling.map((one) => leastLegs(one).insideOfLink));
  if (linkInside !== null && linkInside < inside)
    return [{ kind: "link", inside: linkInside, least: inside }];
  const faults: MachineFault[] = [];
  const line = centreLine(path, { diameter, radius: (tooling[0]?.former ?? 0) / 2 });
  path.turns.forEach((turn, index) => {
    if (Math.abs(turn.angle) !== 180 || !canTurn) return;
    const tail = Math.min(line.straights[index] as number, line.straights[index + 1] as number);
    const springback = (bentTo.angles[index] as number) - 180;
    const { former, largestAngle } = tooling[index] as Tooling;
    const hook = hookGap({ diameter, former, yield: bar.steel.yield, tail, springback, largestAngle });
    const sure = bentTo.guessed === 0;
    if (hook.closes) faults.push({ kind: "hook", bend: index + 1, tail, lean: hook.lean, former, sure });
  });
  const legs = endLegs(dressed, line).filter((leg) => leg.length < leg.least - 1e-6);
  // of a bar with one bend both ends answer for the same bend: the shorter one is at fault
  const [shortest] = [...legs].sort((a, b) => a.length - b.length);
  if (shortest === undefined) return faults;
  for (const leg of path.turns.length === 1 ? [shortest] : legs) faults.push({ kind: "leg", ...leg });
  return faults;
}

/** Both end legs with the least that their bend needs, whichever side swings and whatever is bent before. */
function endLegs(
  { bar: { diameter }, path: { legs, turns }, tooling, bentTo }: DressedBar,
  line: ReturnType<typeof centreLine>,
): { leg: string; length: number; least: number }[] {
  return [0, turns.length - 1].map((bend, end) => {
    const { former } = tooling[bend] as Tooling;
    const need = leastLegs(tooling[bend] as Tooling);
    const leg = end === 0 ? 0 : legs.length - 1;
    const straight = line.straights[leg] as number;
    const angle = Math.abs(turns[bend]?.angle ?? 0);
    const overbent =
      (Math.max(0, (bentTo.angles[bend] as number) - angle) * Math.PI * (former + diameter)) / 360;
    const others = line.developed - straight - (line.arcs[bend] as number);
    const swings = need.straight + overbent;
    // a back-rest may bear on a bend that is made already, where there is one
    const canSwing = others >= need.held || turns.length > 1;
    const canBeHeld = others >= swings;
    const enough = Math.min(canSwing ? swings : Infinity, canBeHeld ? need.held : Infinity);
    const outside = setBack(angle, former / 2, diameter);
    return {
      leg: legs[leg]?.letter ?? String(leg + 1),
      length: straight + outside,
      least: (Number.isFinite(enough) ? enough : swings) + outside,
    };
  });
}
