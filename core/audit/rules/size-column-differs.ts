import type { Cell } from "../../schedule/sheet";
import type { SizeReading } from "../../standards/port";
import { offSizes } from "../goes-with-size";
import { defineRule } from "../rule";
import { swappedSize } from "../size-slips";
import { sizeOf } from "../sized-sums";
import { typedText } from "../typed-text";

export default defineRule({
  code: "SIZE106",
  name: "size-column-differs",
  severity: "off-standard",
  asksOnce: true,
  docs: {
    summary: "The length or mass of a row stands under another bar size than the row's own.",
    why: "The columns by size are added up and bought by; in the wrong one the steel is ordered in the wrong size. It takes a list with such columns: no small table can show it.",
    failing: [],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    beside: "{typed} stands beside {size}, as beside {other}; the other rows of {size} have {usual}",
    differs:
      "{typed} stands under {column}, but the bar of this row is {size}: it is added to the wrong size",
  },
  checkSheet(sheet, context, report) {
    for (const { facts, place, typed, usual, other } of offSizes(sheet))
      report({ messageId: "beside", place, values: { typed, size: facts.sizeName, other, usual } });
    if (sheet.reading.tables.every(({ bySize }) => bySize === undefined || bySize.length === 0)) return;
    for (const { row, bar } of sheet.bars) {
      const { bySize } = row.table;
      if (bySize === undefined || bySize.length === 0 || row.size === null) continue;
      // digits exchanged in a size that nobody rolls are told by themselves
      if (bar === null && row.sizeTyped !== null && swappedSize(row.sizeTyped, context.standard) !== null)
        continue;
      const filled = bySize.filter(({ column }) => isAboveZero(sheet.sheet.cell(row.row, column)));
      const [one, another] = filled;
      if (one === undefined || another !== undefined) continue;
      const reading = sizeOf(one.size, context.standard);
      if (reading === null || isSameSize(reading.diameter, one.size, row.size)) continue;
      const typed = typedText(sheet.sheet.cell(row.row, one.column));
      report({
        messageId: "differs",
        place: { row: row.row, column: one.column },
        values: { typed, column: one.size, size: row.size.typed },
      });
    }
  },
});

function isAboveZero(cell: Cell): boolean {
  if (typeof cell === "number") return cell > 0;
  return typeof cell === "string" && Number.parseFloat(cell.replace(",", ".")) > 0;
}

/**
 * One size is 19 mm in one table and 19.1 in another: the number that names it tells. "#6" over bars of 6 mm is no
 * size in eighths of an inch: lists of metric bars write the sign for ribbed steel (common practice).
 */
function isSameSize(diameter: number, column: string, { diameter: own, typed }: SizeReading): boolean {
  if (diameter === own) return true;
  const [one, other] = [column, typed].map((text) => /\d+(?:[.,]\d+)?/.exec(text)?.[0]);
  return one !== undefined && one === other && (column.includes("#") || Math.abs(diameter - own) < SAME_SIZE);
}

/** mm */
const SAME_SIZE = 0.5;
