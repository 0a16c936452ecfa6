import { type CompensatedAngle, compensatedAngle } from "../bending/compensated-angle";
import { elasticCoreShare } from "../bending/elastic-core";
import { emptyLog, type FittedLog, fitTrialLog, leversOf } from "../bending/fit-trial-log";
import type { Machine } from "../bending/machine";
import { springback } from "../bending/springback";
import { LARGEST_CORE_OF_A_BEND } from "../bending/springback.data";
import { steelNamed } from "../bending/steel-named";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { Memo } from "../units/memo";
import { isRefusal, type Refusal } from "../units/refusal";
import type { BarToBend, BentTo, Steel } from "./bar-to-bend";
import type { NotSearched } from "./machine-fault";
import { readShop } from "./read-shop";
import type { Shop } from "./shop";

const MOST_BENDS = 12;
/** Orders searched for one workbook; beyond them a check would be waited for. */
const MOST_SEARCHES = 20_000;
const MOST_REMEMBERED = 200_000;

/** A yard that has written nothing down. */
const NO_SHOP: Shop = {
  benders: [],
  cutters: [],
  stock: [],
  limits: {
    hoist: null,
    handLift: null,
    transportWidth: null,
    lorryLoad: null,
    lorryLength: null,
    leastRemnant: null,
    temperature: null,
  },
  pours: [],
  rates: null,
  trials: null,
  problems: [],
};

/** What a workbook says of its yard, with its trial log fitted once, and what is remembered of its benders. */
export class Workshop {
  readonly shop: Shop;
  readonly #compensations = new Memo<string, CompensatedAngle | Refusal>(MOST_REMEMBERED);
  #fitted: FittedLog | Refusal | undefined;
  #searches = 0;

  constructor(
    /** the Shop sheet; null where the workbook has none */
    readonly sheet: Sheet | null,
    readonly standard: Standard,
  ) {
    this.shop = sheet === null ? NO_SHOP : readShop(sheet, standard);
  }

  /** The trial log, fitted; an empty one where the sheet has none, or none that can be read. */
  get log(): FittedLog {
    const fitted = this.#fittedLog;
    return isRefusal(fitted) ? emptyLog(this.standard) : fitted;
  }

  /** Why the trial log could not be read; null where it could, or where there is none. */
  get logRefusal(): Refusal | null {
    const fitted = this.#fittedLog;
    return isRefusal(fitted) ? fitted : null;
  }

  get #fittedLog(): FittedLog | Refusal {
    const { trials, benders } = this.shop;
    this.#fitted ??= fitTrialLog(trials?.block ?? null, this.standard, benders);
    return this.#fitted;
  }

  /** The sheet's own number of the trial log's header row, from 1. */
  get logRow(): number {
    return (this.sheet?.top ?? 0) + (this.shop.trials?.top ?? 0) + 1;
  }

  /** True where the log holds a trial that counts. */
  get hasTrials(): boolean {
    return this.log.calibration.groups.length > 0;
  }

  /** The steel of a grade's name and a size's letter, read as the trial log's is. */
  steel(grade: string | null, prefix: string): Steel {
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
    return this.#compensations.of(key, () =>
      compensatedAngle(this.log.calibration, {
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
      }),
    );
  }

  /** What every turn is bent to about the formers given, one a turn: by the trials, else by an estimate. */
  bentTo(bar: BarToBend, machine: Machine, formers: readonly number[]): BentTo {
    let guessed = 0;
    const { diameter, steel } = bar;
    const angles = bar.path.turns.map((turn, index) => {
      const former = formers[index] as number;
      const wanted = Math.abs(turn.angle);
      const degrees = Math.max(1, Math.round(wanted));
      const found = this.compensation({ diameter, former }, steel, machine, degrees);
      if (isRefusal(found) || found.refusal !== null) guessed += 1;
      if (!isRefusal(found)) return found.angle - degrees + wanted;
      return wanted + springback({ angle: wanted, diameter, former, yield: steel.yield }).springback;
    });
    return { angles, guessed };
  }

  /** Why no order of bends is searched for the bar, whatever the bender; null where one is. */
  reasonNotToSearch({ path, formers, diameter, steel }: BarToBend): NotSearched | null {
    const isRolled = (former: number): boolean =>
      elasticCoreShare({ diameter, former, yield: steel.yield }) > LARGEST_CORE_OF_A_BEND.value;
    if (formers.some((wanted) => isRolled(wanted.diameter))) return "rolled";
    if (!path.inOnePlane) return "planes";
    if (path.turns.length > MOST_BENDS) return "bends";
    this.#searches += 1;
    return this.#searches > MOST_SEARCHES ? "shapes" : null;
  }
}
