import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import type { ColumnKind } from "../bar-row";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

const WITHIN = 0.02;
const LEAST_VOTES = 2;
const OF_VOTES = 0.8;

/**
 * True where a number of members that stands in the first row of a member alone counts for the rows below it: the
 * amounts of those rows, lengths by size, total lengths or masses, are so many times those of one member. Rows below a
 * single member say nothing.
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
  const factor = (lengths.get("length")?.factor ?? 1) / 1000;
  if (members < 0 || each < 0 || length < 0 || at("total") >= 0) return false;
  const sumFactor = (lengths.get("totalLength")?.factor ?? 1000) / 1000;
  let carried = 1;
  let votes = 0;
  let yes = 0;
  for (const cells of rows) {
    const number = (column: number): number => numberIn(cells[column], comma) ?? 0;
    const own = number(members);
    if (own > 0) carried = own;
    const one = number(each) * number(length) * factor;
    if (own > 0 || carried < 2 || !(one > 0)) continue;
    const perMetre = massPerMetre(cells[at("size")], standard);
    const sized = block.bySize.map(({ column }) => number(column)).find((amount) => amount > 0) ?? 0;
    const ratios = [
      sized / one,
      sized / (one * perMetre),
      (number(at("totalLength")) * sumFactor) / one,
      number(at("mass")) / (one * perMetre),
    ];
    const isNear = (times: number): boolean => ratios.some((ratio) => Math.abs(ratio / times - 1) < WITHIN);
    if (isNear(carried)) yes += 1;
    if (isNear(carried) || isNear(1)) votes += 1;
  }
  return votes >= LEAST_VOTES && yes >= votes * OF_VOTES;
}

function massPerMetre(size: Cell | undefined, standard: Standard): number {
  const reading = typeof size === "string" || typeof size === "number" ? standard.readSize(size) : null;
  if (reading === null || isRefusal(reading) || reading.bar === null) return Number.NaN;
  return reading.bar.massPerMetre;
}
