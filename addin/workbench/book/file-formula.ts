import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { addressAt } from "../../../core/schedule/cell-address";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { gridFormula } from "./grid-formula";

/**
 * What the file itself says in a cell whose formula names a table, which the grid is given as cells: so it is
 * written back where nobody edited it. Null for every other cell.
 */
export function fileFormulas(reading: SheetReading): (row: number, column: number) => string | null {
  let groups: Map<number, string> | null = null;
  return (row, column) => {
    const formula = reading.formulaAt(row, column);
    if (formula === undefined) return null;
    let { text } = formula;
    if (text === "" && formula.group !== null) {
      groups ??= groupTexts(reading);
      const relative = groups.get(formula.group);
      if (relative === undefined) return null;
      text = translateFormulaToA1(relative, addressAt(row, column)).replace(/^=/, "");
    }
    return text.includes("[") ? gridFormula(text) : null;
  };
}

/** Formulas shared by several cells that name a table, as they are written without an address. */
function groupTexts(reading: SheetReading): Map<number, string> {
  const texts = new Map<number, string>();
  for (const row of reading.rowNumbers) {
    for (const { column } of reading.cellsOfRow(row)) {
      const formula = reading.formulaAt(row, column);
      if (formula?.group == null || !formula.text.includes("[")) continue;
      texts.set(formula.group, translateFormulaToR1C1(`=${formula.text}`, addressAt(row, column)));
    }
  }
  return texts;
}
