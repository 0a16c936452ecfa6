import type { ColumnKind } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_SHAPE } from "../cells/longest-text";
import { type PathUnit, unitOfPaths } from "../cells/path-in-unit";
import type { LengthColumn } from "../cells/read-length-text";
import { turnsApart } from "../cells/turns-apart";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

/** The unit of the paths in a table's shape column, by the lengths beside them. */
export function pathUnitOf(
  { columns }: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
): PathUnit | null {
  const at = (kind: ColumnKind): number => columns.find((column) => column.kind === kind)?.column ?? -1;
  const [shape, length, how] = [at("shape"), at("length"), lengths.get("length")];
  if (shape < 0 || length < 0 || how === undefined) return null;
  return unitOfPaths(pathsIn());

  function* pathsIn(): Generator<readonly [string, number]> {
    for (const cells of rows) {
      const path = cells[shape];
      if (typeof path !== "string" || path.length > LONGEST_SHAPE) continue;
      const typed = numberIn(cells[length], (how as LengthColumn).comma);
      if (typed !== null) yield [turnsApart(cleanText(path)), typed * (how as LengthColumn).factor];
    }
  }
}
