import type { FunctionEnvironment } from "../../../core/formulas/worksheet-function";
import { hasShopName } from "../../../core/shop/has-shop-name";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { WorkbookPort } from "../../workbook/workbook-port";

/** What the functions ask of the workbook's Shop sheet, read by its standard: benders and rates; nothing where it has no such sheet. */
export async function shopOfWorkbook(
  workbook: WorkbookPort,
): Promise<Pick<FunctionEnvironment, "machines" | "rates">> {
  const shop = (await workbook.sheets()).find(({ name }) => hasShopName(name));
  if (shop === undefined) return {};
  const standard = resolveStandard(await workbook.setting(SETTING_NAMES.standard));
  if (isRefusal(standard)) return {};
  const { machinesOfBook, ratesOfBook } = await import("../../../core/shop");
  const sheets = [await workbook.read(shop.name)];
  const machines = machinesOfBook(sheets, standard);
  const rates = ratesOfBook(sheets, standard);
  return { ...(machines && { machines }), ...(rates && { rates }) };
}
