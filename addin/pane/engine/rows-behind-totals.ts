import type { BarRow, ColumnKind, ScheduleReading, Sheet } from "../../../core/schedule";
import type { Standard } from "../../../core/standards";
import { groupName, type ReckonedTonnage, type TonnageGroup } from "../../../core/totals";
import type { SheetCell } from "../../workbook/workbook-port";
import { liveMass } from "./live-mass";
import { addressOf, saidIn } from "./row-cells";

/** A bar row as the Totals sheet adds it up: formulas over the schedule, or figures where none says the same. */
export interface RowBehind {
  readonly group: SheetCell;
  readonly size: SheetCell;
  readonly mass: SheetCell;
}

/** The rows that are added up, and those that no mass is known of; none that is struck through or superseded. */
export function rowsBehindTotals(
  sheet: Sheet,
  { bars }: ScheduleReading,
  { groupedBy, masses: [masses] }: ReckonedTonnage,
  standard: Standard,
): RowBehind[] {
  return bars.flatMap((bar, index) => {
    if (bar.struckThrough || bar.superseded === true) return [];
    const known = masses?.at(index) ?? null;
    // letters that stand below one another are no row of dimensions
    const formula = sheet.isTurned === true ? null : liveMass({ sheet, bar, known, standard });
    return [
      {
        group: groupCell(sheet, bar, groupedBy),
        size: labelled(sheet, bar, "size", known?.size ?? bar.sizeTyped?.trim() ?? ""),
        mass: formula === null ? { value: known?.mass ?? null } : { value: null, formula },
      },
    ];
  });
}

function groupCell(sheet: Sheet, bar: BarRow, groupedBy: TonnageGroup): SheetCell {
  const said = { pour: bar.pour, member: bar.member, sheet: sheet.name }[groupedBy]?.trim() ?? "";
  const name = groupName(said, groupedBy);
  return groupedBy === "sheet" ? { value: name } : labelled(sheet, bar, groupedBy, name);
}

/** The row's own cell where it says the label word by word, else the label. */
function labelled(sheet: Sheet, bar: BarRow, kind: ColumnKind, label: string): SheetCell {
  const column = bar.table.columns.get(kind)?.column;
  const isSaid = column !== undefined && label !== "" && saidIn(sheet, bar.row, column) === label;
  return isSaid
    ? { value: null, formula: addressOf(sheet, bar.row, column) }
    : { value: label === "" ? null : label };
}
