import type { BarFacts } from "../bar/bar-facts";
import { type CompensatedAngle, compensatedAngle } from "../bending/compensated-angle";
import { elasticCoreShare } from "../bending/elastic-core";
import { emptyLog, type FittedLog, fitTrialLog, leversOf } from "../bending/fit-trial-log";
import type { Machine } from "../bending/machine";
import { springback } from "../bending/springback";
import { LARGEST_CORE_OF_A_BEND } from "../bending/springback.data";
import { steelNamed } from "../bending/steel-named";
import type { BarRow } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { PlanarPath } from "../shapes/path";
import { readShop } from "../shop/read-shop";
import type { Shop } from "../shop/shop";
import type { Standard } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";
import { type BarForMachines, type BentTo, lookAtMachine, orderFault, SAME_FORMER } from "./judge-on-machine";
import { linkSides } from "./link-sides";
import { type MachineFault, stageOf } from "./machine-fault";

/** The steel of a bar as trials and plates name it. */
export interface Steel {
  /** as typed in its own column */
  readonly grade: string | null;
  /** "H" of "H16" */
  readonly letter: string | null;
  /** MPa */
  readonly yield: number;
  readonly isYieldSure: boolean;
}

/** Bends in several planes, too many of them, several formers, a rolled curve, too many different shapes. */
export type NotSearched = "planes" | "bends" | "formers" | "rolled" | "shapes";

/** What the yard's benders make of one bent bar. */
export interface BarJudgement {
  readonly bar: BarForMachines;
  readonly steel: Steel;
  /** the bender that can make it; null where none can, or where that is not known */
  readonly madeOn: Machine | null;
  /** what stands against it on the bender that comes nearest; none where one can make it */
  readonly faults: readonly MachineFault[];
  /** that bender as messages name it */
  readonly nearest: string;
  /** another bender is not known well enough to say that none can */
  readonly mayBeMade: boolean;
  /** mm, the former of that bender's rack; null where it has none, or no bender was looked at */
  readonly former: number | null;
  /** why no order was searched, whatever the bender */
  readonly notSearched: NotSearched | null;
}

const MOST_JUDGEMENTS = 200_000;
const MOST_BENDS = 12;
/** Orders searched for one workbook; beyond them the audit would be waited for. */
const MOST_SEARCHES = 20_000;

/** The Shop sheet of the workbook, and what its machines make of a bar; each geometry is judged once. */
export class ShopFacts {
  readonly shop: Shop;
  readonly #judgements = new Map<string, BarJudgement | null>();
  readonly #compensations = new Map<string, CompensatedAngle | Refusal>();
  #log: FittedLog | Refusal | null | undefined;
  #searches = 0;
  #last: { readonly row: BarRow; readonly judgement: BarJudgement | null } | undefined;

  constructor(
    readonly sheet: Sheet,
    readonly standard: Standard,
  ) {
    this.shop = readShop(sheet, standard);
  }

  /** The trial log, fitted; null where the sheet has none, a refusal where it has no header. */
  get log(): FittedLog | Refusal | null {
    if (this.#log === undefined) {
      const { trials, benders } = this.shop;
      this.#log = trials === null ? null : fitTrialLog(trials.block, this.standard, benders);
    }
    return this.#log;
  }

  /** True where the log holds a trial that counts. */
  get hasTrials(): boolean {
    const { log } = this;
    return log !== null && !isRefusal(log) && log.calibration.groups.length > 0;
  }

  /** Null for what no bender bends, and where the sheet names no bender. */
  judge(facts: BarFacts): BarJudgement | null {
    if (this.shop.benders.length === 0) return null;
    const { row } = facts;
    if (this.#last?.row === row) return this.#last.judgement;
    const judgement = this.#judged(facts);
    this.#last = { row, judgement };
    return judgement;
  }

  /** The steel that a row names, read as the trial log's is. */
  steelOf(facts: BarFacts): Steel {
    const { grade, size } = facts.row;
    const prefix = size?.prefix ?? "";
    const steel = steelNamed(grade, prefix, this.standard);
    return { grade, letter: prefix === "" ? null : prefix, yield: steel.yield, isYieldSure: steel.sure };
  }

  /** The compensated angle for whole degrees on a bender, whatever it turns at most. */
  compensation(
    bar: { readonly diameter: number; readonly former: number },
    steel: Steel,
    machine: Machine,
    degrees: number,
  ): CompensatedAngle | Refusal {
    const { diameter, former } = bar;
    const key = `${machine.name}|${diameter}|${former}|${steel.grade}|${steel.letter}|${steel.yield}|${degrees}`;
    let found = this.#compensations.get(key);
    if (found === undefined) {
      const { log } = this;
      const { calibration } = log === null || isRefusal(log) ? emptyLog(this.standard) : log;
      found = compensatedAngle(calibration, {
        angle: degrees,
        diameter,
        former,
        grade: steel.grade,
        letter: steel.letter,
        yield: steel.yield,
        yieldSure: steel.isYieldSure,
        machine: machine.name,
        largestAngle: null,
        levers: leversOf(this.shop.benders, { machine: machine.name, diameter, former }),
      });
      this.#compensations.set(key, found);
    }
    return found;
  }

  #judged(facts: BarFacts): BarJudgement | null {
    const { row, diameter, former } = facts;
    if (diameter === null || former === null || row.shape === null || facts.isStraight) return null;
    const { grade, size, shape, dims, radius } = row;
    const key = `${size?.prefix}|${diameter}|${grade}|${former}|${row.former}|${shape}|${dims.join()}|${radius}`;
    let judgement = this.#judgements.get(key);
    if (judgement === undefined) {
      if (this.#judgements.size >= MOST_JUDGEMENTS) this.#judgements.clear();
      judgement = this.#judgeGeometry(facts, former);
      this.#judgements.set(key, judgement);
    }
    return judgement;
  }

  #judgeGeometry(facts: BarFacts, former: number): BarJudgement | null {
    const { planarPath: path, diameter } = facts;
    if (path === null || path.turns.length === 0 || diameter === null) return null;
    if (isRefusal(facts.developed)) return null;
    const steel = this.steelOf(facts);
    const sides = linkSides(facts);
    const formers = formersOf(path, former);
    const isOwnRadius = formers[0] !== former;
    const bar: BarForMachines = {
      diameter,
      formers,
      isFormerAsked: facts.row.former !== null || isOwnRadius,
      formerSlack: isOwnRadius ? widthTolerance(this.standard, formers[0] ?? 0) : SAME_FORMER,
      leastFormer: facts.leastFormer?.value ?? 0,
      unit: this.standard.unit,
      yield: steel.yield,
      isYieldSure: steel.isYieldSure,
      path,
      linkInside: sides === null ? null : sides.short - 2 * diameter,
    };
    const notSearched = this.#reasonNotToSearch(bar);
    if (notSearched === "rolled") {
      return {
        bar,
        steel,
        notSearched,
        madeOn: null,
        faults: [],
        nearest: "",
        mayBeMade: true,
        former: null,
      };
    }
    return { bar, steel, notSearched, ...this.#nearestOf(bar, steel, notSearched === null) };
  }

  #reasonNotToSearch(bar: BarForMachines): NotSearched | null {
    const { path, formers } = bar;
    const isRolled = (former: number): boolean =>
      elasticCoreShare({ ...bar, former }) > LARGEST_CORE_OF_A_BEND.value;
    if (formers.some(isRolled)) return "rolled";
    if (!path.inOnePlane) return "planes";
    if (path.turns.length > MOST_BENDS) return "bends";
    if (formers.length > 1) return "formers";
    this.#searches += 1;
    return this.#searches > MOST_SEARCHES ? "shapes" : null;
  }

  /** The first bender that can make the bar, else the one that comes nearest and what stands against it. */
  #nearestOf(
    bar: BarForMachines,
    steel: Steel,
    isSearched: boolean,
  ): Pick<BarJudgement, "madeOn" | "faults" | "nearest" | "mayBeMade" | "former"> {
    const looks = this.shop.benders.map((machine) => {
      const bentToOn = (former: number) => this.#bentTo(bar, steel, machine, former);
      return { machine, look: lookAtMachine(bar, machine, bentToOn) };
    });
    // a bender whose angles trials bear comes first among those that can
    looks.sort(
      (a, b) => Number(b.look.ready?.bentTo.sure ?? false) - Number(a.look.ready?.bentTo.sure ?? false),
    );
    let mayBeMade = false;
    let likely: number | null = null;
    const failed: { machine: Machine; faults: readonly MachineFault[]; former: number | null }[] = [];
    for (const { machine, look } of looks) {
      const searched = isSearched && look.ready !== null ? orderFault(bar, look.ready) : null;
      const faults = searched === null ? look.faults : [...look.faults, searched];
      const { former } = look;
      if (faults.length > 0) failed.push({ machine, faults, former });
      else if (!look.isUnknown) {
        return { madeOn: machine, faults: [], nearest: machine.name, mayBeMade: true, former };
      } else {
        mayBeMade = true;
        likely ??= former;
      }
    }
    const [nearest] = failed.sort((a, b) => stageOf(b.faults) - stageOf(a.faults));
    return {
      madeOn: null,
      faults: nearest?.faults ?? [],
      nearest: nearest === undefined ? "" : this.#named(nearest.machine),
      mayBeMade,
      former: likely ?? nearest?.former ?? null,
    };
  }

  #named(machine: Machine): string {
    const { length } = this.shop.benders;
    return length === 1 ? machine.name : `${machine.name}, the nearest of ${length} benders`;
  }

  #bentTo(bar: BarForMachines, steel: Steel, machine: Machine, former: number): BentTo {
    let sure = true;
    const angles = bar.path.turns.map((turn) => {
      const wanted = Math.abs(turn.angle);
      const degrees = Math.max(1, Math.round(wanted));
      const found = this.compensation({ diameter: bar.diameter, former }, steel, machine, degrees);
      if (!isRefusal(found)) {
        if (found.refusal !== null) sure = false;
        return found.angle - degrees + wanted;
      }
      sure = false;
      return (
        wanted + springback({ angle: wanted, diameter: bar.diameter, former, yield: bar.yield }).springback
      );
    });
    return { angles, sure };
  }
}

/** mm: the formers of a path's turns, each once; those of its own radii are what was asked for. */
function formersOf(path: PlanarPath, former: number): readonly number[] {
  return [...new Set(path.turns.map(({ radius }) => (radius === null ? former : 2 * radius)))];
}

/** mm: what a bent dimension may be out by in the standard, the smaller way. */
function widthTolerance(standard: Standard, width: number): number {
  const row = standard.tolerances?.value.find(
    ({ applies, upTo }) => applies === "bent dimension" && width <= upTo,
  );
  return row === undefined ? SAME_FORMER : Math.max(SAME_FORMER, Math.min(row.plus, row.minus));
}
