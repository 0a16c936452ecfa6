import type { Cell } from "../schedule/sheet";
import type { LengthUnit } from "../units/length-unit";
import {
  SHOP_COLUMNS,
  SHOP_LIMITS,
  SHOP_LIMITS_TITLE,
  SHOP_SECTIONS,
  SHOP_TRIAL_COLUMNS,
  SHOP_TRIALS_TITLE,
} from "./shop-words.data";

/** A row of a new Shop sheet and what it is, so that a surface can make titles and heads look so. */
export interface TemplateRow {
  readonly kind: "title" | "head" | "blank";
  readonly cells: readonly Cell[];
}

/**
 * The rows of an empty Shop sheet: titles, heads, and room to write; nothing is filled in for the yard.
 * Heads name the units of a yard that works in mm, or in inches and pounds.
 */
export function shopTemplate(unit: LengthUnit = "mm"): TemplateRow[] {
  const rows = templateRows();
  return unit === "mm" ? rows : rows.map(({ kind, cells }) => ({ kind, cells: cells.map(inInches) }));
}

function inInches(cell: Cell): Cell {
  if (typeof cell !== "string") return cell;
  return cell
    .replace(/ mm$/, " in")
    .replace(/ kg$/, " lb")
    .replace(/^(temperature) c$/, "$1 f")
    .replace(/ mpa$/, "");
}

function templateRows(): TemplateRow[] {
  const rows: TemplateRow[] = [];
  const blank = (count: number): void => {
    for (let i = 0; i < count; i += 1) rows.push({ kind: "blank", cells: [] });
  };
  for (const section of SHOP_SECTIONS) {
    rows.push({ kind: "title", cells: [section.title] });
    rows.push({ kind: "head", cells: section.columns.map((column) => SHOP_COLUMNS[column][0]) });
    blank(section.blankRows);
  }
  rows.push({ kind: "title", cells: [SHOP_LIMITS_TITLE] });
  rows.push({ kind: "head", cells: [SHOP_COLUMNS.limit[0], SHOP_COLUMNS.value[0]] });
  for (const words of Object.values(SHOP_LIMITS)) rows.push({ kind: "blank", cells: [words[0]] });
  blank(1);
  rows.push({ kind: "title", cells: [SHOP_TRIALS_TITLE] });
  rows.push({ kind: "head", cells: SHOP_TRIAL_COLUMNS });
  return rows;
}
