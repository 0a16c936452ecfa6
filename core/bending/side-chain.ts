/** One side of a bend as it lies on the machine, from the bend outwards along +x; plain numbers for speed. */
export interface SideChain {
  /** mm of straight from the bend to the first bend made on this side, or to the bar's end */
  readonly run: number;
  readonly hasBend: boolean;
  /** points after the first straight: x, y, x, y, ...; the first pair is the end of that straight */
  readonly points: Float64Array;
  /** runs of chords that are tested together: from, to (points), and a circle round them */
  readonly blocks: readonly ChainBlock[];
  /** a circle round all points after the first straight; radius 0 without any */
  readonly circle: Circle;
}

export interface ChainBlock {
  readonly from: number;
  readonly to: number;
  readonly circle: Circle;
  /** piece of the path: 2 x leg, or 2 x bend + 1 */
  readonly piece: number;
}

export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** The held side as it lies on the machine, along -x from the near tangent point (0, -radius). */
export interface HeldChain extends SideChain {
  readonly laid: Float64Array;
  readonly laidCircles: readonly Circle[];
  readonly laidCircle: Circle;
}

/** One leg or bend outwards along a side. */
export interface ChainStep {
  readonly piece: number;
  /** mm along the centre line */
  readonly length: number;
  /** radians, 0 for a straight or a bend that is not made yet; positive is counter-clockwise */
  readonly angle: number;
}

/** An arc's chords turn by no more than this; what they cut off is below 1 % of the radius. */
const CHORD = (16 * Math.PI) / 180;

/** Lays a side out. `steps` begin with the leg next to the bend. */
export function sideChain(steps: readonly ChainStep[]): SideChain {
  const firstMade = steps.findIndex((step) => step.angle !== 0);
  const straightSteps = firstMade < 0 ? steps : steps.slice(0, firstMade);
  const run = straightSteps.reduce((sum, step) => sum + step.length, 0);
  const points: number[] = [run, 0];
  const blocks: ChainBlock[] = [];
  let heading = 0;
  for (const step of steps.slice(straightSteps.length)) {
    const from = points.length / 2 - 1;
    heading = layStep(points, step, heading);
    const to = points.length / 2 - 1;
    blocks.push({ from, to, piece: step.piece, circle: circleRound(points, from, to) });
  }
  const circle =
    blocks.length === 0 ? { x: run, y: 0, radius: 0 } : circleRound(points, 0, points.length / 2 - 1);
  return { run, hasBend: firstMade >= 0, points: Float64Array.from(points), blocks, circle };
}

/** Turns a side by half a turn, so that it lies where the machine holds it. `radius`: mm, centre line. */
export function heldChain(chain: SideChain, radius: number): HeldChain {
  const laid = chain.points.map((value, index) => (index % 2 === 0 ? -value : -radius - value));
  const lay = (circle: Circle): Circle => ({ x: -circle.x, y: -radius - circle.y, radius: circle.radius });
  return {
    ...chain,
    laid,
    laidCircles: chain.blocks.map((block) => lay(block.circle)),
    laidCircle: lay(chain.circle),
  };
}

function layStep(points: number[], step: ChainStep, heading: number): number {
  let x = points[points.length - 2] as number;
  let y = points[points.length - 1] as number;
  const chords = step.angle === 0 ? 1 : Math.ceil(Math.abs(step.angle) / CHORD);
  const turn = step.angle / chords;
  const radius = step.angle === 0 ? 0 : step.length / Math.abs(step.angle);
  const chord = step.angle === 0 ? step.length : 2 * radius * Math.sin(Math.abs(turn) / 2);
  let direction = heading;
  for (let part = 0; part < chords; part += 1) {
    x += chord * Math.cos(direction + turn / 2);
    y += chord * Math.sin(direction + turn / 2);
    direction += turn;
    points.push(x, y);
  }
  return direction;
}

function circleRound(points: readonly number[], from: number, to: number): Circle {
  let left = Infinity;
  let right = -Infinity;
  let low = Infinity;
  let high = -Infinity;
  for (let index = from; index <= to; index += 1) {
    const x = points[2 * index] as number;
    const y = points[2 * index + 1] as number;
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { x: (left + right) / 2, y: (low + high) / 2, radius: Math.hypot(right - left, high - low) / 2 };
}
