import type { Finding } from "./finding";

/** Share of a sheet's bars beyond which findings of one rule have one cause. */
const COMMON = 0.3;
/** A few alike are a few. */
const FEWEST = 5;

/**
 * Findings of one sheet with one finding in place of many of one cause: of one rule in more than three rows
 * in ten, or, of a rule that asks, wherever it asks the same twice. Its rows stand behind it. What is unsafe or
 * unbendable, and a cell that holds an error, is told row by row.
 */
export function withOneCause(
  findings: readonly Finding[],
  bars: number,
  asksOnce: ReadonlySet<string>,
): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (
      finding.row === null ||
      finding.toldEach === true ||
      finding.severity === "unsafe" ||
      finding.severity === "unbendable"
    )
      continue;
    const { code, severity, outcome, message } = finding;
    const kind = asksOnce.has(code) ? message : "";
    const key = `${code} ${severity} ${outcome} ${kind}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  const gone = new Set<Finding>();
  const made: Finding[] = [];
  for (const group of groups.values()) {
    const rows = [...new Set(group.map(({ row }) => row as number))].sort((a, b) => a - b);
    const isAsked = asksOnce.has(group[0]?.code ?? "") && rows.length > 1;
    if (!isAsked && (rows.length < FEWEST || rows.length <= bars * COMMON)) continue;
    for (const finding of group) gone.add(finding);
    made.push(oneFor(group, rows));
  }
  return made.length === 0 ? findings : [...made, ...findings.filter((finding) => !gone.has(finding))];
}

function oneFor(group: readonly Finding[], rows: readonly number[]): Finding {
  const first = group[0] as Finding;
  const isSame = group.every(({ message }) => message === first.message);
  const alike = isSame
    ? ` (${rows.length} rows: ${rowsInWords(rows)})`
    : `, and alike in ${rows.length - 1} more rows (${rowsInWords(rows.filter((row) => row !== first.row))})`;
  return { ...first, row: null, cell: null, message: first.message + alike, fix: fixOfAll(group), rows };
}

/** A fix for all is offered only where none needs a look. */
function fixOfAll(group: readonly Finding[]): Finding["fix"] {
  const first = group[0]?.fix ?? null;
  if (first === null || group.some(({ fix }) => fix?.safety !== "safe")) return null;
  return { ...first, label: `${first.label}, in all`, edits: group.flatMap(({ fix }) => fix?.edits ?? []) };
}

const MOST_RUNS = 12;

/** "2-8, 11" */
function rowsInWords(rows: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  }
  const said = runs.slice(0, MOST_RUNS).map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`));
  return said.join(", ") + (runs.length > MOST_RUNS ? " ..." : "");
}
