import type { BarPath, PlanarPath } from "../shapes/path";

const DEGREE = Math.PI / 180;

/**
 * mm: the shorter side of the narrowest rectangle round the bent bar, where it is over `limit`; null
 * where the bar fits. Corners are taken as sharp, which is right to the outside of each bend up to 90
 * degrees (derived).
 */
export function widthIfOver(path: BarPath, diameter: number, limit: number): number | null {
  const width = path.kind === "planar" ? planarWidth(path, diameter, limit) : curvedWidth(path, diameter);
  return width !== null && width > limit + 1e-6 ? width : null;
}

function curvedWidth(path: Exclude<BarPath, PlanarPath>, diameter: number): number {
  if (path.kind !== "arc") return path.outsideDiameter;
  const radius = path.radius + diameter / 2;
  const half = path.length / radius / 2;
  if (half >= Math.PI) return 2 * (radius + diameter / 2);
  const rise = radius * (1 - Math.cos(half)) + diameter;
  const chord = half > Math.PI / 2 ? 2 * radius + diameter : 2 * radius * Math.sin(half) + diameter;
  return Math.min(rise, chord);
}

function planarWidth(path: PlanarPath, diameter: number, limit: number): number | null {
  let sum = 0;
  let longest = 0;
  for (const { length } of path.legs) {
    sum += length;
    if (length > longest) longest = length;
  }
  // laid along its longest leg a bar is never wider than its other legs together
  if (sum - longest + diameter <= limit) return null;
  const corners = layCorners(path);
  let narrowest = Infinity;
  // a side runs along a line through two corners; the narrowest is most often along a leg, so legs come first
  for (let apart = 1; apart < corners; apart += 1) {
    for (let from = 0; from + apart < corners; from += 1) {
      const width = widthAcross(corners, from, from + apart);
      if (width <= limit) return null;
      if (width < narrowest) narrowest = width;
    }
  }
  return Number.isFinite(narrowest) ? narrowest : null;
}

/** Where the corners of the bar in hand lie: one place for all bars, since an audit lays each of them. */
const across: number[] = [];
const up: number[] = [];

/** Lays the corners out and says how many there are. */
function layCorners({ legs, turns }: PlanarPath): number {
  let heading = 0;
  let x = 0;
  let y = 0;
  across[0] = 0;
  up[0] = 0;
  for (let at = 0; at < legs.length; at += 1) {
    const length = legs[at]?.length ?? 0;
    x += length * Math.cos(heading);
    y += length * Math.sin(heading);
    across[at + 1] = x;
    up[at + 1] = y;
    heading += (turns[at]?.angle ?? 0) * DEGREE;
  }
  return legs.length + 1;
}

/** The shorter side of the rectangle that has a side along the line through two corners. */
function widthAcross(corners: number, from: number, to: number): number {
  const runX = (across[to] as number) - (across[from] as number);
  const runY = (up[to] as number) - (up[from] as number);
  const length = Math.sqrt(runX * runX + runY * runY);
  if (length < 1e-9) return Infinity;
  const alongX = runX / length;
  const alongY = runY / length;
  return Math.min(extent(corners, alongX, alongY), extent(corners, -alongY, alongX));
}

function extent(corners: number, axisX: number, axisY: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let at = 0; at < corners; at += 1) {
    const place = (across[at] as number) * axisX + (up[at] as number) * axisY;
    if (place < low) low = place;
    if (place > high) high = place;
  }
  return high - low;
}
