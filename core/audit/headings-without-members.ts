import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { Place } from "./wrong-sum";

/** headings that say their members before one without them has forgotten it */
const FEWEST = 3;
/** share of the headings that may lack them before they are not meant to */
const RARE = 0.34;

/** The blank cells of headings under the number of members, where those of most others hold it; and how many do. */
export function headingsWithoutMembers(sheet: SheetFacts): {
  readonly blanks: readonly Place[];
  readonly others: number;
} {
  const none = { blanks: [], others: 0 };
  if (!sheet.has("members")) return none;
  const open = sheet.answers.those(lacksMembers);
  if (open.length === 0 || open.length * 2 > sheet.answers.length) return none;
  const blanks = new Map<number, Place>();
  for (const { facts } of open) {
    const place = headingOf(sheet, facts);
    const isBlank = place !== null && !isNumber(sheet, place) && isText(sheet, place.row);
    if (isBlank) blanks.set(place.row, place);
  }
  if (blanks.size === 0) return none;
  const said = new Set<number>();
  for (const facts of sheet.bars) {
    const place = facts.row.members === null ? null : headingOf(sheet, facts);
    if (place !== null && isNumber(sheet, place)) said.add(place.row);
  }
  const isRare = said.size >= FEWEST && blanks.size <= RARE * said.size;
  return isRare ? { blanks: [...blanks.values()], others: said.size } : none;
}

function lacksMembers({ row }: BarFacts): true | null {
  return row.members === null && row.table.columns.has("members") && !row.struckThrough ? true : null;
}

/** bars of one heading */
const MOST_BELOW = 100;

/** Where the heading above a bar has its number of members: the first row above it that is no bar. */
function headingOf(sheet: SheetFacts, { row }: BarFacts): Place | null {
  const column = row.table.columns.get("members")?.column;
  if (column === undefined) return null;
  for (let above = row.row - 1; above > row.table.headerBottom && above > row.row - MOST_BELOW; above -= 1)
    if (sheet.barAt(above) === undefined) return { row: above, column };
  return null;
}

function isNumber({ sheet }: SheetFacts, { row, column }: Place): boolean {
  return typeof sheet.cell(row, column) === "number";
}

/** Words stand in the row, and no number. */
function isText({ sheet }: SheetFacts, row: number): boolean {
  const cells = Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column));
  return (
    cells.some((cell) => typeof cell === "string" && cell.trim() !== "") &&
    !cells.some((cell) => typeof cell === "number")
  );
}
