import { type BarOnFormer, curvatureKept, elasticCoreShare } from "./elastic-core";

export interface HookGap {
  /** mm between both legs of a 180 hook after release */
  readonly gap: number;
  /** mm over all after release */
  readonly width: number;
  /** mm by which the tail leans towards the held leg while it is bent beyond 180 */
  readonly lean: number;
  /** the tail meets the held leg before it is bent far enough */
  readonly closes: boolean;
  /** degrees by which the hook stays open where the machine turns no further */
  readonly open: number;
}

/**
 * Whether a 180 hook can be bent so far that it comes back to 180: during the bend beyond 180 the tail leans
 * over the held leg (derived). `springback` in degrees, `tail` mm of straight after the bend.
 *
 * @example
 * hookGap({ diameter: 10, former: 40, yield: 500, tail: 260, springback: 10, largestAngle: 190 }).closes; // true
 */
export function hookGap(
  hook: BarOnFormer & {
    readonly tail: number;
    readonly springback: number;
    readonly largestAngle: number | null;
  },
): HookGap {
  const radius = (hook.former + hook.diameter) / 2;
  const released = radius / curvatureKept(elasticCoreShare(hook));
  const lean = hook.tail * Math.sin((hook.springback * Math.PI) / 180);
  return {
    gap: 2 * released - hook.diameter,
    width: 2 * released + hook.diameter,
    lean,
    // while loaded the legs stand a former apart
    closes: lean >= hook.former,
    open: hook.largestAngle === null ? 0 : Math.max(0, 180 + hook.springback - hook.largestAngle),
  };
}
