import type { FunctionEnvironment } from "../../core/formulas";
import type { Sheet } from "../../core/schedule/sheet";
import { isShopSheet, machinesOfBook, ratesOfBook } from "../../core/shop";
import { resolveStandard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";

/** What the BAR functions of a workbook may ask of it, under the standard in force: its Shop sheet's benders and rates. */
export function functionEnvironment(
  workbook: { readonly sheets: readonly { readonly name: string }[]; read(name: string): Sheet },
  defaultStandard: string,
): FunctionEnvironment {
  const standard = resolveStandard(defaultStandard);
  if (isRefusal(standard)) return { defaultStandard };
  const shops = workbook.sheets.filter(({ name }) => isShopSheet(name));
  const sheets = shops.map(({ name }) => workbook.read(name));
  const machines = machinesOfBook(sheets, standard);
  const rates = ratesOfBook(sheets, standard);
  return {
    defaultStandard,
    ...(machines === undefined ? {} : { machines }),
    ...(rates === undefined ? {} : { rates }),
  };
}
