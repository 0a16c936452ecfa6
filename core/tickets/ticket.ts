import type { Severity } from "../audit/finding";
import type { Deviation } from "../bar/tolerance-of";
import type { BarEnd, StopDistance } from "../bending/bend-marks";
import type { SweepNote } from "../bending/bend-sweep";
import type { ScheduleHead } from "../schedule/schedule-head";
import type { BarPath } from "../shapes/path";
import type { Citation } from "../standards/citation";
import type { LengthUnit } from "../standards/port";
import type { Caution } from "./cautions";

/** Everything the person at shear and bender needs for one bar mark. Lengths mm, masses kg, angles degrees. */
export interface Ticket {
  readonly sheet: string;
  /** the sheet's own row number, from 1 */
  readonly row: number;
  readonly mark: string | null;
  readonly member: string | null;
  readonly pour: string | null;
  /** 0 where the schedule says that none is to be made; null where it is not known */
  readonly count: number | null;
  readonly size: string;
  readonly diameter: number | null;
  readonly grade: TicketGrade;
  /** a code of the standard, or a path as typed; null where none is read */
  readonly shape: string | null;
  readonly shapeWords: string | null;
  readonly standard: string;
  readonly unit: LengthUnit;
  readonly head: ScheduleHead;
  /** what the row says beside its figures, as typed */
  readonly remark: string | null;
  /** of the row, else of the schedule */
  readonly revision: string | null;
  readonly cut: TicketCut | null;
  /** null where the shape is not held or not read */
  readonly drawing: TicketDrawing | null;
  /** letter or number of the leg that takes up tolerance; null where there is none */
  readonly freeLeg: string | null;
  /** mm by which that leg comes out longer than written (below 0: shorter), for the typed length is not the legs'; else 0 */
  readonly freeLegOver: number;
  readonly dimensions: readonly TicketDimension[];
  /** where the tolerances come from; null where the standard holds none */
  readonly toleranceCite: Citation | null;
  /** one a diameter, in the order of the bends; empty for a bar that is not bent */
  readonly formers: readonly TicketFormer[];
  readonly machine: TicketMachine;
  /** in working order; empty for a bar that is not bent, or whose bends cannot be marked */
  readonly bends: readonly TicketBend[];
  readonly order: TicketOrder;
  /** bars bent and cut at once, or why they are not known */
  readonly bendsAtOnce: TicketAtOnce | null;
  readonly cutsAtOnce: TicketAtOnce | null;
  /** radius about the former to keep clear; null where no order was found */
  readonly swingRadius: number | null;
  /** its row is hidden on the sheet */
  readonly isHidden?: boolean;
  /** mm of room that the made bar takes on a lorry; null where it is not known */
  readonly reach?: number | null;
  readonly massEach: number | null;
  readonly massTotal: number | null;
  /** mill certificates of the stock that its pieces are cut from; empty where none is written down */
  readonly heats: readonly TicketHeat[];
  /** the worst first */
  readonly warnings: readonly TicketWarning[];
  /** what somebody said is not to be told of this bar, with reason, name and date */
  readonly waived: readonly TicketWaived[];
  readonly cautions: readonly Caution[];
}

export interface TicketGrade {
  /** null where the schedule names none */
  readonly name: string | null;
  /** MPa, nominal */
  readonly yield: number;
  /** false where it is only the standard's usual one */
  readonly sure: boolean;
}

export interface TicketCut {
  readonly length: number;
  readonly from: "schedule" | "computed";
  /** by the standard's formula and rounding; null where it cannot be had */
  readonly computed: number | null;
  readonly tolerance: Deviation | null;
}

export interface TicketDrawing {
  readonly path: BarPath;
  readonly diameter: number;
  /** inside, of every turn without its own */
  readonly radius: number;
  /** that nobody saw the course of this code in print; null where it is sure */
  readonly note: string | null;
}

export interface TicketDimension {
  /** "A", or "leg 1" of a path */
  readonly name: string;
  readonly length: number;
  readonly free: boolean;
  /** null where the standard holds none for it */
  readonly tolerance: Deviation | null;
}

export interface TicketFormer {
  /** the one to bend about: the next larger of the rack where the wanted least is not there */
  readonly diameter: number;
  readonly wanted: number;
  /** `shape`: the bend has a radius of its own */
  readonly from: "schedule" | "standard's least" | "shape";
  /** mm: the least of the standard, where the bend asks for a smaller one; else null */
  readonly below: number | null;
  /** in the rack of the machine chosen; null where that is not known */
  readonly inRack: boolean | null;
}

export interface TicketMachine {
  /** null where no bender of the Shop sheet is known to make the bar */
  readonly name: string | null;
  /** why not, one a bender; empty where one was chosen or none is needed */
  readonly reasons: readonly string[];
}

export interface TicketBend {
  /** from 1, along the path from its first end */
  readonly bend: number;
  /** signed as in the path; its size is the wanted angle of the released bar */
  readonly turn: number;
  readonly former: number;
  /** on the straight bar from the path's first end */
  readonly start: number;
  readonly middle: number;
  readonly end: number;
  readonly held: BarEnd;
  readonly swinging: BarEnd;
  readonly fromHeld: StopDistance;
  readonly fromSwinging: StopDistance;
  readonly compensated: TicketAngle;
  readonly turnedOver: boolean;
  readonly endForEnd: boolean;
  /** null where no order was found */
  readonly swingRadius: number | null;
  readonly notes: readonly SweepNote[];
}

/** What to bend to, or why the trials do not say: then the wanted angle is all that stands here. */
export interface TicketAngle {
  /** null where a trial bend must come first */
  readonly angle: number | null;
  /** 90 % interval of the released angle; null with `angle` */
  readonly low: number | null;
  readonly high: number | null;
  /** by the plain rule: the median springback of the same group; null without its trials, or with `angle` */
  readonly plain: number | null;
  /** why there is no angle; null where there is one */
  readonly refusal: string | null;
  /** trials of the same group, by date */
  readonly trials: readonly TicketTrial[];
  /** trials of other groups that it rests on as well */
  readonly otherTrials: number;
  /** trials of the same group that do not fit the others or contradict one another */
  readonly doubtedTrials: number;
}

export interface TicketTrial {
  readonly date: string | null;
  readonly machine: string | null;
  readonly heat: string | null;
}

export type TicketOrder =
  | { readonly kind: "no bends" }
  /** `confirmed` is false where the machine itself is not known to take the bar, or no trial bears the angles */
  | {
      readonly kind: "found";
      readonly machine: string;
      readonly confirmed: boolean;
      readonly turnedOver: number;
      readonly endForEnd: number;
    }
  /** `sure` is false where another bender is not known well enough to say that none can make it */
  | {
      readonly kind: "blocked";
      readonly machine: string;
      readonly reasons: readonly string[];
      readonly sure: boolean;
    }
  | { readonly kind: "unsure"; readonly reason: string };

export interface TicketHeat {
  /** null for stock whose certificate is not written down */
  readonly heat: string | null;
  readonly pieces: number;
}

export interface TicketAtOnce {
  readonly machine: string;
  /** 0 is beyond the machine; null where its plate does not say */
  readonly bars: number | null;
  readonly basis: "plate" | "estimate" | null;
  /** why it is not known; null where it is */
  readonly reason: string | null;
}

export interface TicketWaived {
  readonly severity: Severity;
  /** of the rule */
  readonly name: string;
  readonly text: string;
}

export interface TicketWarning {
  readonly severity: Severity;
  readonly unsure: boolean;
  readonly text: string;
  /** the bar is not to be made until somebody clears it */
  readonly hold: boolean;
}

/** True of what keeps the bar from being made until somebody clears it. */
export function isHold({ hold }: Pick<TicketWarning, "hold">): boolean {
  return hold;
}

/** True of what is perhaps unsafe or unbendable: it holds nothing, and is to be asked about before the bar is made. */
export function isAsked({ hold, unsure, severity }: TicketWarning): boolean {
  return !hold && unsure && (severity === "unsafe" || severity === "unbendable");
}
