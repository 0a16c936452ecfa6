import type { LengthUnit } from "../../core/standards";
import { setLength } from "./set-length";

/** A length on a cut list: millimetres with a tenth where there is one, without their unit; else feet and sixteenths. */
export function cutLengthWords(length: number, unit: LengthUnit): string {
  return unit === "mm" ? String(Math.round(length * 10) / 10) : setLength(length, unit);
}
