import { hasOwnName } from "../../../core/own/own-sheet";
import { hasShopName } from "../../../core/shop/has-shop-name";
import type { OwnStandard } from "../../../core/standards";
import type { WorkbookPort } from "../../workbook/workbook-port";

/** What the workbook's sheet Standard says, and the laps of its Shop sheet; undefined where it has neither sheet. */
export async function ownOfWorkbook(workbook: WorkbookPort): Promise<OwnStandard | undefined> {
  const named = (await workbook.sheets()).filter(({ name }) => hasOwnName(name) || hasShopName(name));
  if (named.length === 0) return undefined;
  const { ownOfSheets } = await import("../../../core/own");
  return ownOfSheets(await Promise.all(named.map(({ name }) => workbook.read(name)))) ?? undefined;
}
