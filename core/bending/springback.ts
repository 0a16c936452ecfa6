import { type BarOnFormer, curvatureKept, elasticCoreShare } from "./elastic-core";
import { legFlexure } from "./leg-flexure";
import { SPRINGBACK_LIMITS } from "./springback.data";

export interface SpringbackQuestion extends BarOnFormer {
  /** degrees the bar is bent to, over 0 */
  readonly angle: number;
  /** tangent modulus over elastic modulus; 0 unless given */
  readonly hardening?: number;
  /** mm, former to pin plus former to back-rest; the legs' flexure is left out unless given */
  readonly levers?: number;
}

/** What mechanics alone says; never a recommendation. */
export interface SpringbackEstimate {
  /** degrees by which the bar comes back */
  readonly springback: number;
  /** degrees of bend that remain */
  readonly released: number;
  /** mm, centre line round the former */
  readonly loadedRadius: number;
  /** mm, centre line after release; infinite for a bar that stayed elastic */
  readonly releasedRadius: number;
  readonly core: number;
  readonly trust: readonly string[];
}

/**
 * Springback of a round bar by mechanics: the part from the bend itself grows with the angle, the part
 * from the legs is the same at every angle. A lower bound, with its limits stated in `trust` (derived).
 *
 * @example
 * springback({ angle: 90, diameter: 16, former: 64, yield: 500 }).springback; // 1.9
 */
export function springback(question: SpringbackQuestion): SpringbackEstimate {
  const core = elasticCoreShare(question);
  const kept = curvatureKept(core, question.hardening ?? 0);
  const loadedRadius = (question.former + question.diameter) / 2;
  const legs = question.levers === undefined ? 0 : legFlexure({ ...question, levers: question.levers });
  const released = Math.max(0, kept * question.angle - legs);
  return {
    springback: question.angle - released,
    released,
    loadedRadius,
    releasedRadius: kept === 0 ? Infinity : loadedRadius / kept,
    core,
    trust: SPRINGBACK_LIMITS.value,
  };
}
