import type { LengthUnit } from "../../core/units/length-unit";
import { setLength } from "./set-length";

/** Said beside a former that is smaller than the standard allows for the bar. */
export function tooTightWords(least: number, unit: LengthUnit): string {
  return `below ${setLength(least, unit)}, the least of the standard: do not bend, ask the designer`;
}
