import { shopTemplate } from "../../../core/shop";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";

/** An empty Shop sheet in the units of a standard. */
export function shopContent(id: string): SheetContent {
  const standard = resolveStandard(id);
  const rows = shopTemplate(isRefusal(standard) ? "mm" : standard.unit).map(({ kind, cells }) =>
    cells.map((cell): SheetCell => {
      const value = typeof cell === "string" || typeof cell === "number" ? cell : null;
      return { value, bold: kind !== "blank" };
    }),
  );
  return { rows, widths: [22, 16, 16, 16, 22, 16, 24, 12, 12] };
}
