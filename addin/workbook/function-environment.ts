import type { FunctionEnvironment } from "../../core/formulas";
import { hasOwnName, joinOwn, ownOfSheets } from "../../core/own";
import type { Sheet } from "../../core/schedule/sheet";
import { hasShopName, machinesOfBook, ratesOfBook } from "../../core/shop";
import { NOTHING_OWN, type OwnStandard, resolveStandard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";

/**
 * What the BAR functions of a workbook may ask of it, under the standard in force: its Shop sheet's benders and
 * rates, and what its sheet Standard says before what `ofFile` brings.
 */
export function functionEnvironment(
  workbook: { readonly sheets: readonly { readonly name: string }[]; read(name: string): Sheet },
  defaultStandard: string,
  ofFile: OwnStandard = NOTHING_OWN,
): FunctionEnvironment {
  const read = (wanted: (name: string) => boolean): Sheet[] =>
    workbook.sheets.filter(({ name }) => wanted(name)).map(({ name }) => workbook.read(name));
  const own = joinOwn(
    ownOfSheets(read((name) => hasOwnName(name) || hasShopName(name))) ?? NOTHING_OWN,
    ofFile,
  );
  const standard = resolveStandard(defaultStandard, own);
  if (isRefusal(standard)) return { defaultStandard, own };
  const sheets = read(hasShopName);
  const machines = machinesOfBook(sheets, standard);
  const rates = ratesOfBook(sheets, standard);
  return {
    defaultStandard,
    own,
    ...(machines === undefined ? {} : { machines }),
    ...(rates === undefined ? {} : { rates }),
  };
}
