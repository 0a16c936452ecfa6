import { toMillimetres } from "../../units/convert-length";
import type { Cited } from "../citation";
import type { DetailingFigures, DetailingRule } from "../port";
import { SAME_DIAMETER } from "./remembered.data";
import { rowCitation } from "./row-citation";
import type { StandardTables } from "./standard-tables";

/** The first line of a detailing rule that speaks of this diameter (mm), its lengths in mm; null where none does. */
export function findDetailing(
  { detailing, unit }: StandardTables,
  rule: DetailingRule,
  diameter: number,
): Cited<DetailingFigures> | null {
  for (const { cite, rows } of detailing) {
    const row = rows.find(
      (one) => one.rule === rule && (one.upTo === undefined || diameter <= one.upTo + SAME_DIAMETER),
    );
    if (row === undefined) continue;
    const { perDiameter, perLink, atLeast, atMost, run } = row;
    const value = {
      ...(perDiameter === undefined ? {} : { perDiameter }),
      ...(perLink === undefined ? {} : { perLink }),
      ...(run === undefined ? {} : { run }),
      ...(atLeast === undefined ? {} : { atLeast: toMillimetres(atLeast, unit) }),
      ...(atMost === undefined ? {} : { atMost: toMillimetres(atMost, unit) }),
    };
    return { value, cite: rowCitation(cite, row) };
  }
  return null;
}
