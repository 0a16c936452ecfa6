import type { NamedShape } from "../shapes/shape-named";
import type { Cited } from "../standards/citation";
import type { Bar, Grade, ShapeDefinition, SizeReading, Standard, Use } from "../standards/port";

/** What of a bar follows from its size, grade, shape and coating alone, and from its sheet. */
export interface OfKind {
  readonly standard: Standard;
  readonly kind: BarKind;
  readonly diameter: number | null;
  readonly bar: Bar | null;
  readonly gradeName: string | null;
  readonly grade: Grade | null;
  readonly coating: string | null;
  readonly definition: ShapeDefinition | null;
  readonly isPath: boolean;
  readonly isStraight: boolean;
  readonly use: Use;
  readonly leastFormer: Cited<number> | null;
}

/** Bars of one size, grade, shape and coating: what follows from these alone is answered once for all of them. */
export class BarKind {
  named: NamedShape | null | undefined;
  grade: Grade | null | undefined;
  leastFormer: Cited<number> | null | undefined;
  /** its code is from another standard's list */
  isOfAnother = false;
  #answers: Map<(bar: OfKind) => unknown, unknown> | undefined;

  constructor(
    readonly size: SizeReading | null,
    readonly shape: string | null,
    readonly gradeName: string | null,
    readonly coating: string | null,
    /** later bars of the kind are given this same object */
    readonly isKept: boolean,
  ) {}

  /** The answer of `read`, one function that is made once; `bar` is any bar of the kind. */
  ask<Answer>(read: (bar: OfKind) => Answer, bar: OfKind): Answer {
    this.#answers ??= new Map();
    let answer = this.#answers.get(read) as Answer | undefined;
    if (answer === undefined) {
      answer = read(bar);
      this.#answers.set(read, answer);
    }
    return answer;
  }
}
