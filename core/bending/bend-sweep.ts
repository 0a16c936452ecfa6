import { pointToSegmentSquared, segmentDistanceSquared } from "../geometry/segment-distance";
import type { ChainBlock, Circle, HeldChain, SideChain } from "./side-chain";
import { pinMargin, type Tooling } from "./tooling";

/** One bend about to be made, in the frame of the machine: former at the origin, the bend counter-clockwise. */
export interface SweepInput {
  /** the side that swings, from the bend's far tangent point along +x */
  readonly swinging: SideChain;
  readonly held: HeldChain;
  /** radians wanted on the released bar, and radians bent to */
  readonly angle: number;
  readonly bentTo: number;
  /** mm, centre line round the former */
  readonly radius: number;
  readonly tooling: Tooling;
  /** mm that parts must stay clear of each other */
  readonly clearance: number;
  /** the finished bar lies over itself here, so the legs pass one bar diameter out of plane anyway */
  readonly passesItself: boolean;
  /** room for as many numbers as the swinging side has, used again from sweep to sweep */
  readonly scratch: Float64Array;
}

export type SweepObstacle =
  | "swinging leg shorter than the pin's reach"
  | "held leg shorter than the back-rest's distance"
  | "bending beyond the machine's largest angle"
  | "held part against the former"
  | "held part against the back-rest"
  | "held part against the pin"
  | "swinging part against the former"
  | "swinging part against the back-rest"
  | "swinging part against the pin"
  | "swinging part against the held part";

export type SweepNote = "back-rest on a bend" | "swing beyond the guard" | "legs pass out of plane";

export type SweepResult =
  | {
      readonly clear: true;
      readonly notes: readonly SweepNote[];
      /** mm, farthest that any point of the swinging part comes from the former's centre */
      readonly reach: number;
      /** mm, how far the bar stands off its axis: the room that turning it over takes */
      readonly height: number;
    }
  | {
      readonly clear: false;
      readonly obstacle: SweepObstacle;
      /** degrees turned when it happens; null before the machine turns */
      readonly at: number | null;
    };

/** mm by which a part may lie into a tool: chords cut corners, and bars touch their tools */
const TOUCH = 0.5;
/** mm that the fastest point moves at least between two looks */
const LEAST_MOVE = 1;

/**
 * Whether one bend can be made: legs long enough for pin and back-rest, and nothing touches anything from
 * the first degree to the last, springback included. Between two looks no point moves further than the
 * clear distance found, so nothing can be jumped over.
 */
export function bendSweep(input: SweepInput): SweepResult {
  const { tooling, swinging, held, bentTo } = input;
  const blocked = (obstacle: SweepObstacle, at: number | null = null): SweepResult => ({
    clear: false,
    obstacle,
    at,
  });
  if (tooling.largestAngle !== null && (bentTo * 180) / Math.PI > tooling.largestAngle + 1e-9) {
    return blocked("bending beyond the machine's largest angle");
  }
  const overbent = Math.max(0, bentTo - input.angle) * input.radius;
  if (swinging.run - overbent < tooling.pinLever + pinMargin(tooling.diameter)) {
    return blocked("swinging leg shorter than the pin's reach");
  }
  const notes: SweepNote[] = [];
  if (held.run < tooling.backRestDistance) {
    if (!held.hasBend) return blocked("held leg shorter than the back-rest's distance");
    notes.push("back-rest on a bend");
  }
  const scene = sceneOf(input);
  const still = heldAgainstTools(scene);
  if (still !== null) return blocked(still);
  const met = turnThrough(scene);
  if (met !== null) return blocked(met.obstacle, met.at);
  const reach = reachOf(scene);
  if (tooling.guardRadius !== null && reach > tooling.guardRadius) notes.push("swing beyond the guard");
  if (input.passesItself) notes.push("legs pass out of plane");
  return { clear: true, notes, reach, height: Math.max(heightOf(swinging), heightOf(held)) };
}

interface Scene extends SweepInput {
  /** mm, half the bar */
  readonly half: number;
  readonly formerRadius: number;
  readonly pinRadius: number;
  readonly backRest: { readonly x: number; readonly y: number };
  /** mm, first straight of the swinging part measured from the near tangent point before bending */
  readonly firstLeg: number;
}

function sceneOf(input: SweepInput): Scene {
  const { tooling } = input;
  const formerRadius = tooling.former / 2;
  const pinRadius = tooling.pin / 2;
  return {
    ...input,
    half: tooling.diameter / 2,
    formerRadius,
    pinRadius,
    backRest: { x: -tooling.backRestDistance, y: -(formerRadius + tooling.diameter + pinRadius) },
    firstLeg: input.swinging.run + input.angle * input.radius,
  };
}

/** Parts of the held side beyond its first straight, against what stands still. */
function heldAgainstTools(scene: Scene): SweepObstacle | null {
  const { held, half, backRest } = scene;
  if (held.blocks.length === 0) return null;
  const gapTo = (x: number, y: number, radius: number) =>
    pointToChords(held.laid, 0, held.laid.length / 2 - 1, x, y) - radius - half;
  if (gapTo(0, 0, scene.formerRadius) < -TOUCH) return "held part against the former";
  if (gapTo(backRest.x, backRest.y, scene.pinRadius) < -TOUCH) return "held part against the back-rest";
  return null;
}

function turnThrough(scene: Scene): { obstacle: SweepObstacle; at: number } | null {
  let turned = 0;
  for (;;) {
    const found = lookAt(scene, turned);
    if (found.obstacle !== null) return { obstacle: found.obstacle, at: (turned * 180) / Math.PI };
    if (turned >= scene.bentTo) return null;
    turned = Math.min(scene.bentTo, turned + found.step);
  }
}

/** What one look finds: the first thing touched, else how far the machine may turn unseen. */
class Look {
  obstacle: SweepObstacle | null = null;
  /** radians */
  step = Math.PI / 8;

  /** `speed`: mm a radian at which this clear distance can shrink */
  see(clear: number, speed: number, what: SweepObstacle): void {
    if (clear < 0) this.obstacle ??= what;
    this.step = Math.min(this.step, Math.max(LEAST_MOVE, clear) / speed);
  }
}

/** The machine stopped after turning by `turned` radians. */
function lookAt(scene: Scene, turned: number): Look {
  const { radius, swinging, tooling, half, pinRadius, scratch: moved } = scene;
  const pose = poseOf(scene, turned);
  const px = pose.tx + tooling.pinLever * pose.cos + (half + pinRadius) * pose.sin;
  const py = pose.ty + tooling.pinLever * pose.sin - (half + pinRadius) * pose.cos;
  const look = new Look();
  const toPin = heldToPoint(scene, px, py) - pinRadius - half + TOUCH;
  look.see(toPin, tooling.orbitRadius, "held part against the pin");
  if (swinging.blocks.length > 0) {
    moveSwinging(swinging.points, pose, moved);
    const { circle } = swinging;
    const last = swinging.points.length / 2 - 1;
    const shift = circle.x + pose.offset - pose.wrapped;
    const cx = pose.tx + shift * pose.cos - circle.y * pose.sin;
    const cy = pose.ty + shift * pose.sin + circle.y * pose.cos;
    const seeTool = (x: number, y: number, size: number, speed: number, what: SweepObstacle) => {
      const bound = Math.hypot(x - cx, y - cy) - circle.radius - size - half;
      if (bound > look.step * speed) return;
      look.see(pointToChords(moved, 0, last, x, y) - size - half + TOUCH, speed, what);
    };
    // seen from the turning former and pin the part only slides along
    seeTool(0, 0, scene.formerRadius, radius, "swinging part against the former");
    seeTool(px, py, pinRadius, radius, "swinging part against the pin");
    const { x, y } = scene.backRest;
    const speed = speedOf(circle, pose) + radius;
    seeTool(x, y, pinRadius, speed, "swinging part against the back-rest");
  }
  if (!scene.passesItself) swingingAgainstHeld(scene, turned, moved, pose, look);
  return look;
}

/** mm a radian: the part turns about the point where it leaves the former. */
function speedOf(circle: Circle, pose: Pose): number {
  return Math.hypot(circle.x + pose.offset - pose.wrapped, circle.y) + circle.radius;
}

/** Where the swinging part stands. */
interface Pose {
  readonly tx: number;
  readonly ty: number;
  readonly cos: number;
  readonly sin: number;
  /** mm of x between the part's own frame and the near tangent point before bending */
  readonly offset: number;
  /** mm wrapped round the former so far */
  readonly wrapped: number;
}

function poseOf(scene: Scene, turned: number): Pose {
  const cos = Math.cos(turned);
  const sin = Math.sin(turned);
  return {
    tx: scene.radius * sin,
    ty: -scene.radius * cos,
    cos,
    sin,
    offset: scene.firstLeg - scene.swinging.run,
    wrapped: turned * scene.radius,
  };
}

function moveSwinging(points: Float64Array, pose: Pose, moved: Float64Array): void {
  for (let index = 0; index < points.length; index += 2) {
    const x = (points[index] as number) + pose.offset - pose.wrapped;
    const y = points[index + 1] as number;
    moved[index] = pose.tx + x * pose.cos - y * pose.sin;
    moved[index + 1] = pose.ty + x * pose.sin + y * pose.cos;
  }
}

/** Every straight and bend that swings against every one that is held, but for both straights at the bend itself. */
function swingingAgainstHeld(
  scene: Scene,
  turned: number,
  moved: Float64Array,
  pose: Pose,
  look: Look,
): void {
  const { swinging, held, radius } = scene;
  const { tx, ty } = pose;
  const limit = 2 * scene.half + scene.clearance;
  const leg = scene.firstLeg - pose.wrapped;
  const sx = tx + leg * pose.cos;
  const sy = ty + leg * pose.sin;
  const hx = -held.run;
  const what = "swinging part against the held part";
  const see = (square: number, speed: number) => look.see(Math.sqrt(square) - limit, speed, what);
  if (turned > Math.PI / 2)
    see(segmentDistanceSquared(tx, ty, sx, sy, 0, -radius, hx, -radius), leg + radius);
  for (let place = 0; place < held.blocks.length; place += 1) {
    const block = held.blocks[place] as ChainBlock;
    const circle = held.laidCircles[place] as Circle;
    const worth = limit + look.step * (leg + radius) + circle.radius;
    if (pointToSegmentSquared(circle.x, circle.y, tx, ty, sx - tx, sy - ty) > worth * worth) continue;
    see(segmentToChords(tx, ty, sx, sy, held.laid, block), leg + radius);
  }
  for (const block of swinging.blocks) {
    const speed = speedOf(block.circle, pose) + radius;
    const size = block.circle.radius;
    const x = block.circle.x + pose.offset - pose.wrapped;
    const cx = tx + x * pose.cos - block.circle.y * pose.sin;
    const cy = ty + x * pose.sin + block.circle.y * pose.cos;
    const worth = limit + look.step * speed + size;
    if (pointToSegmentSquared(cx, cy, 0, -radius, hx, 0) <= worth * worth) {
      see(segmentToChords(0, -radius, hx, -radius, moved, block), speed);
    }
    for (let place = 0; place < held.blocks.length; place += 1) {
      const circle = held.laidCircles[place] as Circle;
      const near = limit + look.step * speed + size + circle.radius;
      if ((circle.x - cx) ** 2 + (circle.y - cy) ** 2 > near * near) continue;
      see(chordsToChords(moved, block, held.laid, held.blocks[place] as ChainBlock), speed);
    }
  }
}

/* Squares of least distances; the loops run over chords, whose points exist by construction. */

function segmentToChords(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  points: Float64Array,
  block: ChainBlock,
): number {
  let least = Infinity;
  for (let i = block.from; i < block.to; i += 1) {
    const square = segmentDistanceSquared(
      ax,
      ay,
      bx,
      by,
      points[2 * i]!,
      points[2 * i + 1]!,
      points[2 * i + 2]!,
      points[2 * i + 3]!,
    );
    if (square < least) least = square;
  }
  return least;
}

function chordsToChords(
  one: Float64Array,
  block: ChainBlock,
  points: Float64Array,
  other: ChainBlock,
): number {
  let least = Infinity;
  for (let i = block.from; i < block.to; i += 1) {
    const square = segmentToChords(
      one[2 * i]!,
      one[2 * i + 1]!,
      one[2 * i + 2]!,
      one[2 * i + 3]!,
      points,
      other,
    );
    if (square < least) least = square;
  }
  return least;
}

function heldToPoint(scene: Scene, x: number, y: number): number {
  const straight = Math.sqrt(pointToSegmentSquared(x, y, 0, -scene.radius, -scene.held.run, 0));
  if (scene.held.blocks.length === 0) return straight;
  const bound =
    Math.hypot(x - scene.held.laidCircle.x, y - scene.held.laidCircle.y) - scene.held.laidCircle.radius;
  if (bound > straight) return straight;
  return Math.min(straight, pointToChords(scene.held.laid, 0, scene.held.laid.length / 2 - 1, x, y));
}

function pointToChords(points: Float64Array, from: number, to: number, x: number, y: number): number {
  let least = Infinity;
  for (let i = from; i < to; i += 1) {
    const ax = points[2 * i]!;
    const ay = points[2 * i + 1]!;
    const d = pointToSegmentSquared(x, y, ax, ay, points[2 * i + 2]! - ax, points[2 * i + 3]! - ay);
    if (d < least) least = d;
  }
  return Math.sqrt(least);
}

/** In the turning frame a point lies at (x - wrapped, y - radius) from the former: farthest at one of both ends. */
function reachOf(scene: Scene): number {
  const { swinging, radius } = scene;
  const offset = scene.firstLeg - swinging.run;
  let reach = 0;
  for (const wrapped of [0, scene.bentTo * radius]) {
    for (let index = 0; index < swinging.points.length; index += 2) {
      const x = (swinging.points[index] as number) + offset - wrapped;
      reach = Math.max(reach, Math.hypot(x, (swinging.points[index + 1] as number) - radius));
    }
  }
  return reach + scene.half;
}

function heightOf(chain: SideChain): number {
  let height = 0;
  for (let index = 1; index < chain.points.length; index += 2)
    height = Math.max(height, Math.abs(chain.points[index] as number));
  return height;
}
