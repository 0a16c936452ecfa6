import { checkBooks } from "../../core/jobs";
import type { Sheet } from "../../core/schedule";
import { isRefusal } from "../../core/units/refusal";

/** The check of a workbook of these sheets, whose standard nobody chose. */
export function checkSheets(sheets: readonly Sheet[]) {
  const [checked] = checkBooks(
    [
      {
        name: "job",
        sheets: sheets.map(({ name }) => ({ name, visibility: "visible" })),
        read: (name) => sheets.find((one) => one.name === name) as Sheet,
        setting: () => null,
      },
    ],
    { sheet: null, standard: null },
  );
  if (checked === undefined || isRefusal(checked)) throw new Error("the book was not read");
  return checked;
}
