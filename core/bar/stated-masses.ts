import type { ScheduleReading } from "../schedule/bar-row";
import { massPerMetreOf, sizeElsewhere } from "../schedule/cells/size-elsewhere";
import type { SizeReading, Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";
import type { AnswersOfBars } from "./answers-of-bars";
import { IDENTITIES } from "./identities.data";

const { sizeRows, fromTable, share } = IDENTITIES.value;

/**
 * kg/m that a line under columns by size states for each diameter: "Mass kg/m 0.56 0.995 1.56". A line is one where most
 * of its figures are near the table's masses; a figure that is not is a slip, and says nothing.
 */
export function statedMasses(
  { bars, length }: AnswersOfBars,
  { totals, summaries = [] }: ScheduleReading,
): ReadonlyMap<number, number> {
  const standard = length === 0 ? undefined : bars[0]?.standard;
  const stated = new Map<number, number>();
  if (standard === undefined) return stated;
  const lines = [
    ...totals.map(({ cells, table }) => ({ cells, sizes: table?.bySize ?? [] })),
    ...summaries.flatMap(({ rows, sizes }) => rows.map(({ cells }) => ({ cells, sizes }))),
  ];
  for (const { cells, sizes } of lines) {
    if (sizes.length < sizeRows) continue;
    const figures = cells.flatMap(({ column, value }) => {
      const named = sizes.find((one) => one.column === column);
      const size = named === undefined ? null : sizeNamed(named.size, standard);
      return size === null || !(value > 0) ? [] : [{ size, value }];
    });
    const near = figures.filter(
      ({ size, value }) => Math.abs(Math.log(value / (massPerMetreOf(size) ?? Number.NaN))) < fromTable,
    );
    if (near.length < sizeRows || near.length < share * figures.length) continue;
    for (const { size, value } of near) if (!stated.has(size.diameter)) stated.set(size.diameter, value);
  }
  return stated;
}

/** A size of the head as the list's own cells are read: by its number where its letters are of another standard. */
function sizeNamed(text: string, standard: Standard): SizeReading | null {
  for (const way of [text, text.replace(/^\D+/, "")]) {
    const own = standard.readSize(way);
    if (!isRefusal(own) && massPerMetreOf(own) !== null) return own;
  }
  return sizeElsewhere(text);
}
