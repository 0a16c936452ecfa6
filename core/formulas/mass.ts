import { poundsPerFoot } from "../units/mass-unit";
import { defineRefusal, isRefusal } from "../units/refusal";
import { SIZE_ARGUMENT, STANDARD_ARGUMENT } from "./bar-arguments";
import { rowFunction } from "./lift";
import { barOfRow } from "./size-of-table";

const unitUnknown = defineRefusal(
  "mass-per-length-unit-unknown",
  "value",
  `unit "{typed}" is none of a mass per length here: write kg/m or lb/ft`,
);

/** BAR.MASS: mass per metre as the standard's table prints it, kg/m; lb/ft where asked. */
export const MASS = rowFunction({
  name: "MASS",
  description: "Mass per metre as the standard's table prints it, kg/m, or lb/ft where asked",
  args: [
    SIZE_ARGUMENT,
    STANDARD_ARGUMENT,
    {
      name: "unit",
      description: "kg/m or lb/ft; kg/m where it is left out",
      optional: true,
      lifts: "column",
    },
  ],
  row(row) {
    const bar = barOfRow(row);
    if (isRefusal(bar)) return bar;
    const unit = row.cell(2);
    const asked = String(unit ?? "kg/m")
      .trim()
      .toLowerCase();
    if (asked === "kg/m") return bar.massPerMetre;
    if (asked === "lb/ft") return bar.poundsPerFoot ?? poundsPerFoot(bar.massPerMetre);
    return unitUnknown({ typed: String(unit) });
  },
});
