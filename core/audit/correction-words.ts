import { columnWords } from "../schedule/columns/column-words";
import type { ColumnCorrection } from "../schedule/read-options";
import type { AuditSettings } from "./audit-settings";

/** What the workbook keeps of its user's corrections of a sheet's reading, in words; null where it keeps none. */
export function correctionWords({ readings }: AuditSettings, sheet: string): string | null {
  const reading = readings.find((each) => each.sheet === sheet);
  const { columns = [], confirmed = [], grade } = reading ?? {};
  const said = [
    ...columns.map(columnCorrected),
    ...(grade === undefined ? [] : [`bars that name no grade taken as ${grade}`]),
    ...(confirmed.length === 0
      ? []
      : [`${confirmed.length} ${confirmed.length === 1 ? "guess" : "guesses"} confirmed`]),
  ];
  return said.length === 0 ? null : `sheet "${sheet}" is read as corrected by hand: ${said.join("; ")}`;
}

const UNIT_WORDS: Readonly<Record<string, string>> = { in: "inches", ft: "feet" };

function columnCorrected({ column, kind, unit }: ColumnCorrection): string {
  if (kind === "ignored") return `column "${column}" left out`;
  const as = kind === undefined ? "" : ` as ${columnWords(kind)}`;
  return `column "${column}" taken${as}${unit === undefined ? "" : ` in ${UNIT_WORDS[unit] ?? unit}`}`;
}
