import type { Bar } from "../port";

/** The bar nearest in diameter, or the two it lies between: "16", "12 or 16". */
export function nearestBars(bars: readonly Bar[], diameter: number): string {
  const below = bars.filter((bar) => bar.diameter <= diameter).reduce(thicker, undefined);
  const above = bars.filter((bar) => bar.diameter >= diameter).reduce(thinner, undefined);
  const names = [...new Set([below, above].flatMap((bar) => (bar === undefined ? [] : [bar.size])))];
  return names.length === 0 ? "none" : names.join(" or ");
}

function thicker(best: Bar | undefined, bar: Bar): Bar {
  return best === undefined || bar.diameter > best.diameter ? bar : best;
}

function thinner(best: Bar | undefined, bar: Bar): Bar {
  return best === undefined || bar.diameter < best.diameter ? bar : best;
}
