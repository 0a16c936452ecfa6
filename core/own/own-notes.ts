import { cellAddress } from "../schedule/cell-address";
import type { Sheet } from "../schedule/sheet";
import { counted } from "../units/counted";
import { readOwn } from "./read-own";

/** What a sheet Standard puts in force and which of its cells it cannot, a sentence each. */
export function ownNotes(sheet: Sheet): string[] {
  const { own, problems } = readOwn(sheet);
  const { figures, shapes, laps } = own;
  const parts = [
    counted(figures.length, "figure looked up", "figures looked up"),
    counted(shapes.length, "own shape"),
    counted(laps.length, "lap"),
  ].filter((_, at) => [figures, shapes, laps][at]?.length !== 0);
  const inForce = parts.length === 0 ? "nothing in force" : `in force ${parts.join(", ")}`;
  return [
    `sheet "${sheet.name}": ${inForce}`,
    ...problems.map(
      ({ row, column, reason }) =>
        `${sheet.name}!${cellAddress(sheet, row, column)}: ${reason}; not in force`,
    ),
  ];
}
