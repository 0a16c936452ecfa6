import type { FunctionEnvironment } from "../../core/formulas";
import { isShopSheet, machinesOfBook } from "../../core/shop";
import { resolveStandard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";
import type { Workbook } from "./open-workbook";

/** What the BAR functions of a workbook may ask of it, under the standard in force: its Shop sheet's benders. */
export function functionEnvironment(workbook: Workbook, defaultStandard: string): FunctionEnvironment {
  const standard = resolveStandard(defaultStandard);
  if (isRefusal(standard)) return { defaultStandard };
  const shops = workbook.sheets.filter(({ name }) => isShopSheet(name));
  const machines = machinesOfBook(
    shops.map(({ name }) => workbook.read(name)),
    standard,
  );
  return { defaultStandard, ...(machines === undefined ? {} : { machines }) };
}
