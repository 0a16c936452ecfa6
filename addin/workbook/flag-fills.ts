import { FLAG_COLOURS } from "./flag-colours";
import type { FlagColour } from "./workbook-port";

/** Fill of a flagged row's cells, "#rrggbb", behind black text; the same as in an annotated file. */
export const FLAG_FILLS = Object.fromEntries(
  [...FLAG_COLOURS].map(([severity, rgb]) => [severity, `#${rgb}`]),
) as Readonly<Record<FlagColour, string>>;
