import type { Machine } from "../../../core/bending/machine";
import { isShopSheet } from "../../../core/shop/is-shop-sheet";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { WorkbookPort } from "../../workbook/workbook-port";

/** The benders of the workbook's Shop sheet, read by its standard; undefined where it has no such sheet. */
export async function machinesOfWorkbook(workbook: WorkbookPort): Promise<readonly Machine[] | undefined> {
  const shop = (await workbook.sheets()).find(({ name }) => isShopSheet(name));
  if (shop === undefined) return undefined;
  const standard = resolveStandard(await workbook.setting(SETTING_NAMES.standard));
  if (isRefusal(standard)) return undefined;
  const { machinesOfBook } = await import("../../../core/shop");
  return machinesOfBook([await workbook.read(shop.name)], standard);
}
