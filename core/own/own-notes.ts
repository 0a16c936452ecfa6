import { cellAddress } from "../schedule/cell-address";
import type { Sheet } from "../schedule/sheet";
import { readOwn } from "./read-own";

/** What a sheet Standard puts in force and which of its cells it cannot, a sentence each. */
export function ownNotes(sheet: Sheet): string[] {
  const { own, problems } = readOwn(sheet);
  const parts = [
    counted(own.figures.length, "figure looked up", "figures looked up"),
    counted(own.shapes.length, "own shape", "own shapes"),
    counted(own.laps.length, "lap", "laps"),
  ].filter((part) => part !== "");
  const inForce = parts.length === 0 ? "nothing in force" : `in force ${parts.join(", ")}`;
  return [
    `sheet "${sheet.name}": ${inForce}`,
    ...problems.map(
      ({ row, column, reason }) =>
        `${sheet.name}!${cellAddress(sheet, row, column)}: ${reason}; not in force`,
    ),
  ];
}

function counted(count: number, one: string, many: string): string {
  return count === 0 ? "" : `${count} ${count === 1 ? one : many}`;
}
