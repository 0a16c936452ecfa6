import type { HeatBars } from "../../core/cutting";

/** "heat K1 (12), then K2 (3)": bars of each heat in the order in which they are taken. */
export function heatWords(heats: readonly HeatBars[]): string {
  const parts = heats.map(({ heat, bars }) => `${heat ?? "not written down"} (${bars})`);
  return `${heats.length === 1 ? "heat" : "heats"} ${parts.join(", then ")}`;
}
