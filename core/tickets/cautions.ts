import type { Citation } from "../standards/citation";
import type { LengthUnit } from "../standards/port";
import { printLength } from "../units/print-length";
import { fillTemplate } from "../units/refusal";
import { MM_PER_UNIT } from "../units/unit-table";
import { CAUTION_LIMITS, CAUTIONS, type CautionCase } from "./cautions.data";

export interface Caution {
  readonly text: string;
  readonly cite: Citation;
}

/** What decides which cautions a bar needs. Lengths mm, masses kg, null is not known. */
export interface CautionedBar {
  readonly unit: LengthUnit;
  readonly isBent: boolean;
  readonly hasHook: boolean;
  readonly diameter: number | null;
  readonly yield: number;
  readonly cutLength: number | null;
  readonly massEach: number | null;
  /** kg above which lifting is planned */
  readonly handLift: number;
  readonly swingRadius: number | null;
  /** mm of free height that turning over takes; null where the bar is not turned over */
  readonly turnHeight: number | null;
  readonly bendsAtOnce: number | null;
  readonly needsTrial: boolean;
  /** degrees Celsius in the shop, and the standard's limit of cold bending */
  readonly temperature: number | null;
  readonly coldBending: number | null;
  /** member and remark in lower case */
  readonly words: string;
}

/** The usual cautions that fit this bar, in the order of the work. */
export function cautionsFor(bar: CautionedBar): Caution[] {
  const limits = CAUTION_LIMITS.value;
  const { cutLength, massEach, diameter } = bar;
  const isCold =
    bar.temperature !== null && bar.coldBending !== null && bar.temperature < bar.coldBending && bar.isBent;
  const cases: Readonly<Record<CautionCase, boolean>> = {
    always: true,
    bent: bar.isBent,
    cut: true,
    swing: bar.swingRadius !== null,
    "several at once": bar.isBent && (bar.bendsAtOnce ?? 0) > 1,
    "no trial": bar.needsTrial,
    "short piece": cutLength !== null && cutLength < limits.shortPiece,
    "long bar": cutLength !== null && cutLength > limits.longBar,
    "heavy bar": massEach !== null && massEach > bar.handLift,
    "turned over": bar.turnHeight !== null,
    starter: /\bstarters?\b|\bdowels?\b/.test(bar.words),
    "thick or strong":
      bar.isBent && ((diameter !== null && diameter >= limits.thick) || bar.yield >= limits.strong),
    cold: isCold,
    hook: bar.hasHook,
  };
  const step = bar.unit === "in" ? MM_PER_UNIT.in / SIXTEENTHS : 1;
  const length = (mm: number | null): string =>
    mm === null ? "" : printLength(Math.ceil(mm / step) * step, bar.unit);
  const values = {
    swing: length(bar.swingRadius),
    height: length(bar.turnHeight),
    short: length(limits.shortPiece),
    long: length(limits.longBar),
    mass: massEach === null ? "" : `${massEach.toFixed(1)} kg`,
    lift: `${bar.handLift} kg`,
    temperature: `${bar.temperature} °C`,
    leave: `${bar.coldBending} °C`,
  };
  return CAUTIONS.filter(({ value }) => cases[value.when]).map(({ value, cite }) => ({
    text: fillTemplate(value.text, values),
    cite,
  }));
}

/** what a rule in inches is parted into */
const SIXTEENTHS = 16;
