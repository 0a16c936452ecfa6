import type { Standard } from "../../standards/port";
import type { ColumnKind } from "../bar-row";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import { sizeCellReader } from "../cells/read-size-cell";
import { massPerMetreOf } from "../cells/size-elsewhere";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

const MM_PER_METRE = 1000;

/** What so many bars of a row weigh by its size and length, kg; 0 where either is not read. */
export function kgByRow(
  { columns }: HeaderBlock,
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
  standard: Standard,
): (cells: readonly Cell[], count: number) => number {
  const at = (kind: ColumnKind): number => columns.find((one) => one.kind === kind)?.column ?? -1;
  const [size, length] = [at("size"), at("length")];
  const factor = lengths.get("length")?.factor ?? 1;
  const read = sizeCellReader(standard, false);
  return (cells, count) => {
    const cell = cells[size];
    const long = numberIn(cells[length], comma);
    if ((typeof cell !== "string" && typeof cell !== "number") || long === null) return 0;
    return count * ((long * factor) / MM_PER_METRE) * (massPerMetreOf(read(cell, "").size) ?? 0);
  };
}
