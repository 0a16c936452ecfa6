import { toMillimetres } from "../../units/convert-length";
import type { PrintedTable } from "../citation";
import type { Bar } from "../port";
import { rowCitation } from "./row-citation";
import type { PrintedBar } from "./standard-tables";

/** The bars of printed tables, in order, diameters in mm, each with its own trust. */
export function barsOf(tables: readonly PrintedTable<PrintedBar>[]): readonly Bar[] {
  return tables.flatMap(({ cite, rows }) =>
    rows.map((row) => ({
      size: row.size,
      diameter: row.diameter ?? toMillimetres(row.diameterInches ?? 0, "in"),
      area: row.area,
      massPerMetre: row.massPerMetre,
      ...(row.poundsPerFoot === undefined ? {} : { poundsPerFoot: row.poundsPerFoot }),
      cite: rowCitation(cite, row),
    })),
  );
}
