const MOST_RUNS = 12;

/**
 * Rows in growing order by their runs, the first dozen of them.
 *
 * @example runsInWords([2, 3, 4, 11]) // 2-4, 11
 */
export function runsInWords(rows: readonly number[], name: (row: number) => string = String): string {
  const runs: [number, number][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  }
  const said = runs
    .slice(0, MOST_RUNS)
    .map(([from, to]) => (from === to ? name(from) : `${name(from)}-${name(to)}`));
  return said.join(", ") + (runs.length > MOST_RUNS ? " ..." : "");
}
