import type { BarRow } from "../schedule/bar-row";

/** A bar's size as it is named in messages and totals. */
export function sizeName({ size, sizeTyped }: Pick<BarRow, "size" | "sizeTyped">): string {
  return size?.typed.trim() ?? sizeTyped?.trim() ?? "";
}
