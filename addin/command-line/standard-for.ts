import { resolveStandard, type Standard } from "../../core/standards";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";

/** The standard in force: the option, else the workbook's own, else the default. */
export function standardFor(option: string | null, ofWorkbook: string | null): Standard {
  const standard = resolveStandard(option ?? ofWorkbook ?? "");
  if (!isRefusal(standard)) return standard;
  const whose = option === null && ofWorkbook !== null ? "the workbook's name Barwright.Standard: " : "";
  throw new InputRefused(whose + refusalText(standard));
}
