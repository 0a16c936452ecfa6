import type { TableReading } from "../bar-row";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";
import { isFilledIn } from "./is-filled-in";
import { type Heading, isHeadingText, readHeading } from "./read-heading";
import { shownText } from "./row-cells";
import type { RowSigns } from "./row-signs";

const MOST_HEADING_CELLS = 4;

/** "Unit ST2 | No. of units: | 4": a member and its number over several cells; null for a row that has something of a bar. */
export function memberHeading(
  table: TableReading,
  signs: RowSigns,
  cells: readonly Cell[],
  filled: readonly number[],
): Heading | null {
  if (filled.length < 2 || filled.length > MOST_HEADING_CELLS) return null;
  const texts = filled.filter((column) => typeof cells[column] === "string");
  const saysMembers = texts.some((column) => recogniseHeader(String(cells[column]))?.kind === "members");
  const hasLength = isFilledIn(table, "length", filled);
  if (!saysMembers && (hasLength || signs.fieldsFilled(cells) > 1)) return null;
  const text = filled.map((column) => shownText(cells[column])).join(" ");
  const member = table.columns.get("member")?.column;
  const members = table.columns.get("members")?.column;
  const count = members === undefined ? null : cells[members];
  if (filled.length === 2 && texts.length === 1 && texts[0] === member && typeof count === "number") {
    return { member: shownText(cells[texts[0] as number]), members: count };
  }
  const heading = readHeading(text);
  if (heading.members === null || heading.member === null) return null;
  return isHeadingText(text, texts[0] === filled[0]) ? heading : null;
}
