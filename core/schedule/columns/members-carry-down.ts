import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import type { ColumnKind } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { type LengthColumn, readLengthText } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import { massPerMetreOf, sizeElsewhere } from "../cells/size-elsewhere";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

const WITHIN = 0.02;
const LEAST_VOTES = 2;
const LEAST_TOTALS = 3;
const OF_VOTES = 0.8;
const FOOT = MM_PER_UNIT.ft / MM_PER_UNIT.m;
/** members with their number, in a table whose other rows have neither */
const LEAST_NAMED = 2;

/**
 * True where a number of members that stands in the first row of a member alone counts for the rows below it: the
 * amounts of those rows, lengths by size, total lengths or masses, are so many times those of one member, or, where no
 * amounts stand, a name before the number stands in the same rows and in no other. Where totals are typed they say it.
 * Rows below a single member say nothing.
 */
export function membersCarryDown(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
  standard: Standard,
): boolean {
  const at = (kind: ColumnKind): number => block.columns.find((one) => one.kind === kind)?.column ?? -1;
  const [members, each, length] = [at("members"), at("each"), at("length")];
  if (members < 0 || each < 0 || length < 0) return false;
  if (at("total") >= 0) return totalsSayIt(rows, { members, each, total: at("total") }, comma);
  const metres = (cells: readonly Cell[], kind: ColumnKind): number =>
    metresIn(cells[at(kind)], lengths.get(kind), comma);
  let carried = 1;
  let votes = 0;
  let yes = 0;
  const bars: (readonly Cell[])[] = [];
  for (const cells of rows) {
    const number = (column: number): number => numberIn(cells[column], comma) ?? 0;
    const own = number(members);
    if (own > 0) carried = own;
    if (number(each) > 0) bars.push(cells);
    const one = number(each) * metres(cells, "length");
    if (own > 0 || carried < 2 || !(one > 0)) continue;
    const perMetre = massPerMetre(cells[at("size")], standard);
    const sized = block.bySize.map(({ column }) => number(column)).find((amount) => amount > 0) ?? 0;
    const mass = number(at("mass")) / (one * perMetre);
    const ratios = [
      sized / one,
      (sized * FOOT) / one,
      sized / (one * perMetre),
      metres(cells, "totalLength") / one,
      mass,
      mass * KG_PER_UNIT.lb,
    ];
    const isNear = (times: number): boolean => ratios.some((ratio) => Math.abs(ratio / times - 1) < WITHIN);
    if (isNear(carried)) yes += 1;
    if (isNear(carried) || isNear(1)) votes += 1;
  }
  if (votes >= LEAST_VOTES) return yes >= votes * OF_VOTES;
  return votes === yes && standBesideNames(bars, members);
}

/** The totals typed in rows without a number of members are so many times each as the last number above says. */
function totalsSayIt(
  rows: readonly (readonly Cell[])[],
  at: { readonly members: number; readonly each: number; readonly total: number },
  comma: CommaUse,
): boolean {
  let carried = 1;
  let votes = 0;
  let yes = 0;
  for (const cells of rows) {
    const number = (column: number): number => numberIn(cells[column], comma) ?? 0;
    const own = number(at.members);
    if (own > 0) carried = own;
    const [each, total] = [number(at.each), number(at.total)];
    if (own > 0 || carried < 2 || !(each > 0) || !(total > 0)) continue;
    votes += 1;
    if (total === each * carried) yes += 1;
  }
  return votes >= LEAST_TOTALS && yes >= votes * OF_VOTES;
}

function metresIn(cell: Cell | undefined, column: LengthColumn | undefined, comma: CommaUse): number {
  if (column === undefined || typeof cell !== "string")
    return ((numberIn(cell, comma) ?? 0) * (column?.factor ?? 1)) / MM_PER_UNIT.m;
  const reading = readLengthText(cleanText(cell), column);
  return reading.is === "value" ? reading.value / MM_PER_UNIT.m : 0;
}

/** A column of names before the number of members is filled in the same rows. */
function standBesideNames(bars: readonly (readonly Cell[])[], members: number): boolean {
  const counted = bars.filter((cells) => isFilled(cells[members])).length;
  if (counted < LEAST_NAMED || counted === bars.length) return false;
  for (let column = 0; column < members; column += 1) {
    const isName = bars.every(
      (cells) =>
        isFilled(cells[column]) === isFilled(cells[members]) &&
        (!isFilled(cells[column]) || typeof cells[column] === "string"),
    );
    if (isName) return true;
  }
  return false;
}

const isFilled = (cell: Cell | undefined): boolean =>
  cell !== null && cell !== undefined && String(cell).trim() !== "";

function massPerMetre(size: Cell | undefined, standard: Standard): number {
  if (typeof size !== "string" && typeof size !== "number") return Number.NaN;
  const own = standard.readSize(size);
  return massPerMetreOf(isRefusal(own) ? sizeElsewhere(String(size)) : own) ?? Number.NaN;
}
