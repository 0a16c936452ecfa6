import { BY_SIZE } from "./evidence.data";
import { groupedBySize, type ValueColumn } from "./value-column";

/**
 * Neighbouring columns of which nearly every row fills exactly one, each group as one column. Which size
 * belongs to which column needs no header: the rows tell.
 */
export function bySizeGroups(columns: readonly ValueColumn[], rows: readonly number[]): ValueColumn[] {
  const groups: ValueColumn[] = [];
  let run: ValueColumn[] = [];
  for (const column of [...columns, null]) {
    if (column?.isNumber && column.filledShare < BY_SIZE.value.mostFilled) {
      run.push(column);
      continue;
    }
    const part = longestGroup(run, rows);
    if (part !== null) groups.push(groupedBySize(part));
    run = [];
  }
  return groups;
}

/** The longest stretch from the left whose columns are filled one a row. */
function longestGroup(run: readonly ValueColumn[], rows: readonly number[]): readonly ValueColumn[] | null {
  for (let from = 0; from < run.length; from += 1) {
    for (let to = run.length; to - from >= BY_SIZE.value.leastColumns; to -= 1) {
      const part = run.slice(from, to);
      if (isGroup(part, rows)) return part;
    }
  }
  return null;
}

function isGroup(part: readonly ValueColumn[], rows: readonly number[]): boolean {
  const { one, many, leastColumns } = BY_SIZE.value;
  if (part.filter(({ sorted }) => sorted.length > 0).length < leastColumns) return false;
  let single = 0;
  let several = 0;
  for (const row of rows) {
    let filled = 0;
    for (const { values } of part) if ((values[row] as number) > 0) filled += 1;
    if (filled === 1) single += 1;
    else if (filled > 1) several += 1;
  }
  return single >= rows.length * one && several <= single * many;
}
