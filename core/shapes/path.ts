import type { Hook } from "../standards/port";

/** One leg between bends, or an end leg. */
export interface Leg {
  /** mm, outside dimension: to the outside tangents' meeting for a turn up to 90, else to the bend's extreme */
  readonly length: number;
  /** takes up tolerance */
  readonly free: boolean;
  /** the dimension it was scheduled as; null in a typed path */
  readonly letter: string | null;
  /** the standard end hook whose end this leg is */
  readonly hook?: Hook;
}

export interface Turn {
  /** degrees of bend, over 0 and at most 180; the sign is the sense */
  readonly angle: number;
  /** mm, inside; null takes half the former in force */
  readonly radius: number | null;
}

/** Legs and turns alternating: one more leg than turns. Hooks are already legs and turns here. */
export interface PlanarPath {
  readonly kind: "planar";
  readonly legs: readonly Leg[];
  readonly turns: readonly Turn[];
  /** false for shapes whose bends lie in more than one plane */
  readonly inOnePlane: boolean;
}

export interface ArcPath {
  readonly kind: "arc";
  /** mm along the centre line */
  readonly length: number;
  /** mm, inside */
  readonly radius: number;
}

export interface CirclePath {
  readonly kind: "circle";
  /** mm, outside */
  readonly outsideDiameter: number;
  readonly lap: number;
}

export interface HelixPath {
  readonly kind: "helix";
  readonly outsideDiameter: number;
  readonly pitch: number;
  readonly turns: number;
}

/** What a bar looks like, whether it was written as a code with dims or as a path. */
export type BarPath = PlanarPath | ArcPath | CirclePath | HelixPath;
