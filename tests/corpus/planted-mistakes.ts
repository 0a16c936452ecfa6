import { readdirSync, readFileSync } from "node:fs";
import { rowsBehind } from "../../core/audit/finding";
import { runAudit } from "../../core/audit/run-audit";
import type { BarRow, ColumnKind, ScheduleReading } from "../../core/schedule/bar-row";
import { type Cell, sheetFromRows } from "../../core/schedule/sheet";
import { heldStandard } from "../_support/held-standard";

type Rows = readonly (readonly Cell[])[];
interface SoundList {
  readonly standard: string;
  readonly sheets: Readonly<Record<string, Rows>>;
}
/** One mistake: the cell that is wrong and what stands there now; a row doubled stands below its own. */
interface Planted {
  readonly row: number;
  readonly column: number;
  readonly to: Cell | "doubled";
}
/** Where a mistake of a kind can be planted in a list. */
type Places = (reading: ScheduleReading, rows: Rows) => readonly Planted[];

const LISTS = readLists();
const MOST = 10;

/** What was told of ten mistakes of one kind, each alone in another sound list. */
export interface PlantedFigures {
  readonly planted: number;
  /** a finding above a note names the row */
  readonly told: number;
  /** and the very cell */
  readonly atCell: number;
  readonly missed: readonly string[];
}

export function plant(places: Places): PlantedFigures {
  const missed: string[] = [];
  let planted = 0;
  let told = 0;
  let atCell = 0;
  LISTS.forEach((list, index) => {
    if (planted >= MOST) return;
    const [sheet] = Object.keys(list.sheets);
    const rows = list.sheets[sheet ?? ""];
    const reading = audited(list, list.sheets).sheets[0]?.reading;
    if (sheet === undefined || rows === undefined || reading === undefined) return;
    const found = places(reading, rows);
    const one = found[(index * 7) % found.length];
    if (one === undefined) return;
    planted += 1;
    const { findings } = audited(list, { ...list.sheets, [sheet]: changed(rows, one) });
    const before = new Set(
      audited(list, list.sheets).findings.map(({ cell, message }) => `${cell}${message}`),
    );
    const fresh = findings.filter(
      ({ severity, cell, message }) => severity !== "note" && !before.has(`${cell}${message}`),
    );
    const at = one.row + 1;
    const isThere = fresh.some((finding) => {
      const behind = rowsBehind(finding);
      return behind.includes(at) || (one.to === "doubled" && behind.includes(at + 1));
    });
    const cell = `${letterOf(one.column)}${at}`;
    if (isThere) told += 1;
    else missed.push(`${list.name} ${cell} ${String(rows[one.row]?.[one.column])} -> ${String(one.to)}`);
    if (fresh.some((finding) => finding.cell === cell)) atCell += 1;
  });
  return { planted, told, atCell, missed };
}

/** The number with its first two different figures exchanged; null where it has none. */
function exchanged(cell: Cell | undefined): Cell {
  const text = typeof cell === "number" ? String(cell) : null;
  const at = text === null ? -1 : [...text].findIndex((digit, index) => isPair(digit, text[index + 1]));
  if (text === null || at < 0) return null;
  return Number(text.slice(0, at) + text[at + 1] + text[at] + text.slice(at + 2));
}

function isPair(one: string, other: string | undefined): boolean {
  return /[1-9]/.test(one) && /[1-9]/.test(other ?? "") && one !== other;
}

const inColumn =
  (kinds: readonly ColumnKind[], to: (cell: Cell, bar: BarRow) => Cell | undefined): Places =>
  (reading, rows) =>
    reading.bars.flatMap((bar) => {
      const column = kinds
        .map((kind) => bar.table.columns.get(kind)?.column)
        .find((one) => one !== undefined);
      const cell = column === undefined ? null : (rows[bar.row]?.[column] ?? null);
      const now = cell === null || column === undefined ? undefined : to(cell, bar);
      return now === undefined || column === undefined ? [] : [{ row: bar.row, column, to: now }];
    });

const orNothing = (cell: Cell): Cell | undefined => (cell === null ? undefined : cell);

/** The kinds of mistakes that only the numbers of the sheet itself can show. */
export const KINDS: Readonly<Record<string, Places>> = {
  "figures of a length exchanged": inColumn(["length"], (cell) => orNothing(exchanged(cell))),
  "figures of a count exchanged": inColumn(["total"], (cell) => orNothing(exchanged(cell))),
  "a count blank": inColumn(["total", "each"], () => null),
  "a mass of another size": inColumn(["mass"], (cell) =>
    typeof cell === "number" && cell > 1 ? Math.round(cell * 15.625) / 10 : undefined,
  ),
  "mass per metre of another size": inColumn(["unitMass"], (cell) =>
    typeof cell === "number" ? Math.round(cell * 1562.5) / 1000 : undefined,
  ),
  "a row entered twice": (reading) =>
    reading.bars.map(({ row, table }) => ({
      ...{ row, to: "doubled" as const },
      column: table.columns.get("mark")?.column ?? 0,
    })),
  "figures of a sum exchanged": (reading, rows) =>
    reading.totals.flatMap(({ row, cells, kind, table }) =>
      kind === "summary" || table === undefined
        ? []
        : cells.flatMap(({ column }) => {
            const to = exchanged(rows[row]?.[column]);
            return to === null ? [] : [{ row, column, to }];
          }),
    ),
};

function changed(rows: Rows, { row, column, to }: Planted): Rows {
  if (to === "doubled") return [...rows.slice(0, row + 1), [...(rows[row] ?? [])], ...rows.slice(row + 1)];
  return rows.map((cells, at) => {
    if (at !== row) return cells;
    const now = [...cells];
    now[column] = to;
    return now;
  });
}

function audited(list: SoundList, sheets: SoundList["sheets"]) {
  return runAudit({
    sheets: Object.entries(sheets).map(([sheet, rows]) => sheetFromRows(sheet, rows)),
    standard: heldStandard(list.standard),
  });
}

function readLists(): readonly (SoundList & { readonly name: string })[] {
  const folder = new URL("./sound-lists/", import.meta.url);
  return readdirSync(folder)
    .sort()
    .map((file) => ({
      ...(JSON.parse(readFileSync(new URL(file, folder), "utf8")) as SoundList),
      name: file.replace(".json", ""),
    }));
}

function letterOf(column: number): string {
  return String.fromCharCode(65 + column);
}
