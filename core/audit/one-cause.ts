import { columnLetters } from "../schedule/cell-address";
import type { Finding } from "./finding";
import { runsInWords } from "./runs-in-words";

/** Share of a sheet's bars beyond which findings of one rule have one cause. */
const COMMON = 0.3;
/** A few alike are a few. */
const FEWEST = 5;

/** How the places of bars are named: by row numbers, or by letters where they stand in columns. */
interface Named {
  readonly several: string;
  name(row: number): string;
}

const ROWS: Named = { several: "rows", name: String };
const COLUMNS: Named = { several: "columns", name: (row) => columnLetters(row - 1) };

/**
 * Findings of one sheet with one finding in place of many of one cause: of one rule in more than three rows
 * in ten, of notes in five rows, or, of a rule that asks, wherever it asks the same twice. Its rows stand behind
 * it. What is unsafe or unbendable is told row by row unless one answer settles it for all rows; a cell that holds
 * an error always is.
 */
export function withOneCause(
  findings: readonly Finding[],
  bars: number,
  asksOnce: ReadonlySet<string>,
  isTurned = false,
): readonly Finding[] {
  const named: Named = isTurned ? COLUMNS : ROWS;
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (
      finding.row === null ||
      finding.toldEach === true ||
      (isGrave(finding) && !asksOnce.has(finding.code))
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
  for (const alike of asksOfOneCause(groups.values(), bars, asksOnce)) {
    for (const finding of alike.flat()) gone.add(finding);
    made.push(oneForAsks(alike, named));
  }
  for (const group of groups.values()) {
    if (gone.has(group[0] as Finding)) continue;
    const rows = [...new Set(group.map(({ row }) => row as number))].sort((a, b) => a - b);
    const isAsked = asksOnce.has(group[0]?.code ?? "") && rows.length > 1;
    const isFew = rows.length < FEWEST || (group[0]?.severity !== "note" && rows.length <= bars * COMMON);
    if (!isAsked && isFew) continue;
    for (const finding of group) gone.add(finding);
    made.push(oneFor(group, rows, named));
  }
  return made.length === 0 ? findings : [...made, ...findings.filter((finding) => !gone.has(finding))];
}

function isGrave({ severity }: Finding): boolean {
  return severity === "unsafe" || severity === "unbendable";
}

/** What one rule asks of several things, in more than three rows in ten together, has one cause. */
function asksOfOneCause(
  groups: Iterable<readonly Finding[]>,
  bars: number,
  asksOnce: ReadonlySet<string>,
): (readonly Finding[])[][] {
  const byRule = new Map<string, (readonly Finding[])[]>();
  for (const group of groups) {
    const { code, severity, outcome, cell } = group[0] as Finding;
    if (!asksOnce.has(code)) continue;
    const key = JSON.stringify([code, severity, outcome, cell?.replace(/\d+$/, "") ?? null]);
    const alike = byRule.get(key);
    if (alike === undefined) byRule.set(key, [group]);
    else alike.push(group);
  }
  return [...byRule.values()].filter((alike) => {
    const rows = rowsOf(alike.flat()).length;
    return alike.length > 1 && rows >= FEWEST && rows > bars * COMMON;
  });
}

const rowsOf = (group: readonly Finding[]): number[] =>
  [...new Set(group.map(({ row }) => row as number))].sort((a, b) => a - b);

const MOST_ASKS = 6;

/** The first in full, of the others what they are about. */
function oneForAsks(alike: readonly (readonly Finding[])[], named: Named): Finding {
  const [first = [], ...others] = [...alike].sort((one, other) => other.length - one.length);
  const rows = rowsOf(alike.flat());
  const said = others
    .slice(0, MOST_ASKS)
    .map(
      (group) =>
        `${beginningOf(group[0]?.message ?? "")} (${named.several} ${runsInWords(rowsOf(group), named.name)})`,
    );
  const more = others.length > MOST_ASKS ? `; and ${others.length - MOST_ASKS} more` : "";
  const one = oneFor(first, rowsOf(first), named);
  return { ...one, message: `${one.message}; likewise ${said.join("; ")}${more}`, fix: null, rows };
}

const LONGEST_BEGINNING = 80;

function beginningOf(message: string): string {
  const beginning = message.split(/: |; /)[0] ?? "";
  return beginning.length > LONGEST_BEGINNING ? `${beginning.slice(0, LONGEST_BEGINNING)} ...` : beginning;
}

function oneFor(group: readonly Finding[], rows: readonly number[], named: Named): Finding {
  const first = group[0] as Finding;
  const isSame = group.every(({ message }) => message === first.message);
  const told = { ...first, row: null, cell: null, fix: fixOfAll(group), rows };
  if (isSame) {
    const where = `${rows.length} ${named.several}: ${runsInWords(rows, named.name)}`;
    return { ...told, message: `${first.message} (${where})` };
  }
  // other values, and often another direction: each is told, so that none hides behind the first
  const behind = group
    .map(({ row, cell, message }) => ({ row: row as number, cell, message }))
    .sort((one, other) => one.row - other.row);
  const each = behind.slice(0, MOST_TOLD).map(({ cell, message }) => `${cell ?? ""} ${gist(message)}`.trim());
  const more = behind.length > MOST_TOLD ? `; and ${behind.length - MOST_TOLD} more` : "";
  const where = `${rows.length} ${named.several}: ${runsInWords(rows, named.name)}`;
  return { ...told, message: `${first.message}; in ${where}: ${each.join("; ")}${more}`, behind };
}

const MOST_TOLD = 12;

/** What is wrong, without what it is held against and why. */
function gist(message: string): string {
  return beginningOf(message.split(/(?: of)? the | \(/)[0] ?? "");
}

/** A fix for all is offered only where none needs a look. */
function fixOfAll(group: readonly Finding[]): Finding["fix"] {
  const first = group[0]?.fix ?? null;
  if (first === null || group.some(({ fix }) => fix?.safety !== "safe")) return null;
  return { ...first, label: `${first.label}, in all`, edits: group.flatMap(({ fix }) => fix?.edits ?? []) };
}
