import type { Cell } from "../schedule/sheet";
import type { Bar, Standard } from "../standards/port";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { readSize, readStandard } from "./bar-arguments";
import type { RowReader } from "./lift";

const noBarOfTable = defineRefusal(
  "no-bar-of-table",
  "not-held",
  `size "{typed}" is no bar of {standard}, whose table holds {held}: give one of these`,
);

/** The bar of a size's cell, which must stand in the standard's table. */
export function barOfTable(size: Cell, standard: Standard): Bar | Refusal {
  const reading = readSize(size, standard);
  if (isRefusal(reading)) return reading;
  if (reading.bar !== null) return reading.bar;
  const held = standard.bars.map((bar) => bar.size).join(", ");
  return noBarOfTable({ typed: reading.typed, standard: standard.id, held });
}

/** The bar of a function whose arguments begin with size and standard. */
export function barOfRow(row: RowReader): Bar | Refusal {
  const standard = readStandard(row.cell(1), row);
  return isRefusal(standard) ? standard : barOfTable(row.cell(0), standard);
}
