import { findLap } from "../own/find-lap";
import { resolveStandard } from "../standards";
import { fromMillimetres } from "../units/convert-length";
import { isRefusal } from "../units/refusal";
import { readSize, SIZE_ARGUMENT } from "./bar-arguments";
import { rowFunction } from "./lift";

const textOf = (cell: unknown): string | undefined =>
  cell === null || typeof cell === "object" ? undefined : String(cell);

/** BAR.LAP: the lap of the project's own table, in the standard's unit; refused without a table. */
export const LAP = rowFunction({
  name: "LAP",
  description:
    "Lap of the project's own table on the sheet Standard or Shop: design lengths are the designer's",
  args: [
    SIZE_ARGUMENT,
    {
      name: "grade",
      description: "Grade, where the table tells grades apart",
      optional: true,
      lifts: "column",
    },
    {
      name: "lapCase",
      description: "Case of the table, such as its concrete or bond",
      optional: true,
      lifts: "column",
    },
  ],
  row(row) {
    const { defaultStandard, own } = row.environment;
    const standard = resolveStandard(defaultStandard, own);
    if (isRefusal(standard)) return standard;
    const size = readSize(row.cell(0), standard);
    if (isRefusal(size)) return size;
    const lap = findLap(
      { size: size.typed, grade: textOf(row.cell(1)), case: textOf(row.cell(2)) },
      standard,
    );
    return isRefusal(lap) ? lap : fromMillimetres(lap.value, standard.unit);
  },
});
