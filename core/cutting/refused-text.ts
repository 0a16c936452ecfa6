import { shortened } from "../schedule/cells/longest-text";
import { counted } from "../units/counted";
import type { LengthUnit } from "../units/length-unit";
import { defineRefusal, type Refusal, refusalText } from "../units/refusal";
import type { RefusedRow } from "./cut-row";

const twoReasons = defineRefusal("cut-two-reasons", "value", "{first}; also {second}");

/** Both reasons why bars are in no plan: who follows the remedy of the first alone meets the other. */
export function bothReasons(first: Refusal, second: Refusal, unit: LengthUnit): Refusal {
  return twoReasons({ first: refusalText(first, unit), second: refusalText(second, unit) });
}

/**
 * One line that names bars in no plan: size, mark, count and cell, then the reason with its remedy.
 *
 * @example "H16, mark 11, 2 bars, Slab!G12: a piece of 13000 mm is longer than ..."
 */
export function refusedText(row: RefusedRow, unit: LengthUnit = "mm"): string {
  const { size, grade, mark, sheet, cell, count } = row;
  const steel = [size === "" ? "size not said" : shortened(size), grade]
    .filter((part) => part !== null)
    .join(" ");
  const named = [
    steel,
    mark === null ? null : `mark ${shortened(mark)}`,
    count === null || !(count > 0) ? null : counted(count, "bar"),
    cell === null ? null : sheet === null ? cell : `${sheet}!${cell}`,
  ];
  return `${named.filter((part) => part !== null).join(", ")}: ${refusalText(row.reason, unit)}`;
}
