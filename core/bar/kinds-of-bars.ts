import type { SizeReading } from "../standards/port";
import { BarKind } from "./bar-kind";

/** Kinds that are kept: bars written as paths may each be of another. */
const MOST_KEPT = 2000;

type ByShape = Map<string | null, BarKind[]>;

/** The kinds of a sheet's bars. */
export class KindsOfBars {
  readonly #kept = new Map<SizeReading | null, ByShape>();
  #count = 0;

  of(
    size: SizeReading | null,
    shape: string | null,
    gradeName: string | null,
    coating: string | null,
  ): BarKind {
    let byShape = this.#kept.get(size);
    const alike = byShape?.get(shape) ?? [];
    for (const kind of alike) if (kind.gradeName === gradeName && kind.coating === coating) return kind;
    const isKept = this.#count < MOST_KEPT;
    const kind = new BarKind(size, shape, gradeName, coating, isKept);
    if (!isKept) return kind;
    this.#count += 1;
    if (byShape === undefined) {
      byShape = new Map();
      this.#kept.set(size, byShape);
    }
    if (alike.length === 0) byShape.set(shape, alike);
    alike.push(kind);
    return kind;
  }
}
