import { INSPECTION_SHEET } from "./inspection-sheet.data";

/** Whether a sheet of this name holds what was measured. */
export function isInspectionSheet(name: string): boolean {
  return name.trim().toLowerCase() === INSPECTION_SHEET.toLowerCase();
}
