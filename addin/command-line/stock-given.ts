import type { Stock } from "../../core/cutting";
import type { Standard } from "../../core/standards";
import { parseLength } from "../../core/units/parse-length";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";

/** Stock lengths given with --stock, as many bars of each as are needed; null where none is given. */
export function stockGiven(option: string | null, standard: Standard): Stock[] | null {
  if (option === null) return null;
  return option.split(",").map((text) => {
    const length = parseLength(text.trim(), standard.unit);
    if (isRefusal(length)) throw new InputRefused(`--stock: ${refusalText(length)}`);
    return { length, count: null, remnant: false };
  });
}
