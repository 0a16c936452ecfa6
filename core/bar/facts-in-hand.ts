import type { CutLength } from "../shapes/cut-length";
import type { DevelopedLength } from "../shapes/developed-length";
import type { ResolvedShape } from "../shapes/resolve-shape";
import type { LimitJudgement } from "../shapes/shape-limits";
import type { Refusal } from "../units/refusal";
import type { BarKind } from "./bar-kind";
import type { LengthJudgement } from "./length-judgement";
import type { SaidWords } from "./said-words";

/** What is worked out of the row that is judged now; another row takes its place. */
export class FactsInHand {
  /** the row; null before the first */
  owner: object | null = null;
  resolved: ResolvedShape | Refusal | null | undefined;
  developed: DevelopedLength | Refusal | null | undefined;
  cut: CutLength | Refusal | null | undefined;
  exact: number | undefined;
  broken: readonly LimitJudgement[] | undefined;
  judgement: LengthJudgement | undefined;
  kind: BarKind | undefined;
  said: SaidWords | undefined;
  coating: string | null | undefined;

  take(owner: object): void {
    this.owner = owner;
    this.resolved = undefined;
    this.developed = undefined;
    this.cut = undefined;
    this.exact = undefined;
    this.broken = undefined;
    this.judgement = undefined;
    this.kind = undefined;
    this.said = undefined;
    this.coating = undefined;
  }
}
