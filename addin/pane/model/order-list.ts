import type { BoughtLine } from "../engine/printed-page";
import type { Line } from "./local-table";

const HEADS = ["Size", "Stock length", "Bars", "kg"];

/** What a buyer orders, a line each size and length; kilograms whole, as an order says them. */
export function orderLines(lines: readonly BoughtLine[]): readonly Line[] {
  return [HEADS, ...lines.map(({ size, stock, bars, kilograms }) => [size, stock, bars, kilograms])];
}
