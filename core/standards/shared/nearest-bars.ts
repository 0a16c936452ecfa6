import type { Bar } from "../port";

/** The bar nearest in diameter to `diameter` mm: "16"; two where it lies midway: "12 or 16". */
export function nearestBars(bars: readonly Bar[], diameter: number): string {
  const distance = (bar: Bar) => Math.abs(bar.diameter - diameter);
  const least = Math.min(...bars.map(distance));
  const nearest = bars.filter((bar) => distance(bar) === least);
  return nearest.length === 0 ? "none" : nearest.map((bar) => bar.size).join(" or ");
}
