import type { IRange } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
} from "@univerjs/preset-sheets-core";
import { LineMap, type LineRun } from "../../xlsx/structure/line-map";

interface LineParams {
  readonly subUnitId: string;
  readonly range?: IRange;
  readonly sourceRange?: IRange;
  readonly targetRange?: IRange;
}

interface SheetLines {
  rows: LineMap;
  columns: LineMap;
}

interface TakenOut {
  readonly sheet: string;
  readonly lines: "rows" | "columns";
  readonly at: number;
  readonly count: number;
  readonly runs: readonly LineRun[];
}

/** What became of each sheet's rows and columns since the file was opened, told by the grid's own changes. */
export class LineMoves {
  readonly #sheets = new Map<string, SheetLines>();
  /** lines that were taken out, the last one last: undoing puts the same ones back */
  readonly #takenOut: TakenOut[] = [];

  rows(sheetId: string): LineMap {
    return this.#sheets.get(sheetId)?.rows ?? LineMap.unchanged;
  }

  columns(sheetId: string): LineMap {
    return this.#sheets.get(sheetId)?.columns ?? LineMap.unchanged;
  }

  clear(): void {
    this.#sheets.clear();
    this.#takenOut.length = 0;
  }

  /** `isUndo`: the change takes an earlier one back, or makes it again. */
  note(id: string, params: unknown, isUndo: boolean): void {
    const { subUnitId: sheet, range, sourceRange, targetRange } = (params ?? {}) as LineParams;
    const kind = KINDS.get(id);
    if (kind === undefined) return;
    const { lines, act } = kind;
    const held = this.#sheets.get(sheet) ?? { rows: LineMap.unchanged, columns: LineMap.unchanged };
    this.#sheets.set(sheet, held);
    if (act === "move" && sourceRange && targetRange) {
      const from = span(sourceRange, lines);
      const to = span(targetRange, lines).at;
      const { map, removed } = held[lines].remove(from.at, from.count);
      held[lines] = map.insert(to > from.at ? to - from.count : to, removed);
    } else if (range) {
      const { at, count } = span(range, lines);
      if (act === "remove") {
        const { map, removed } = held[lines].remove(at, count);
        this.#takenOut.push({ sheet, lines, at, count, runs: removed });
        held[lines] = map;
      } else held[lines] = held[lines].insert(at, this.#linesFor({ sheet, lines, at, count }, isUndo));
    }
  }

  #linesFor({ sheet, lines, at, count }: Omit<TakenOut, "runs">, isUndo: boolean): readonly LineRun[] {
    const found = isUndo
      ? this.#takenOut
          .filter((one) => one.sheet === sheet && one.lines === lines && one.at === at && one.count === count)
          .at(-1)
      : undefined;
    if (found === undefined) return [{ from: null, count }];
    this.#takenOut.splice(this.#takenOut.indexOf(found), 1);
    return found.runs;
  }
}

const KINDS: ReadonlyMap<string, { lines: "rows" | "columns"; act: "insert" | "remove" | "move" }> = new Map([
  [InsertRowMutation.id, { lines: "rows", act: "insert" }],
  [RemoveRowMutation.id, { lines: "rows", act: "remove" }],
  [MoveRowsMutation.id, { lines: "rows", act: "move" }],
  [InsertColMutation.id, { lines: "columns", act: "insert" }],
  [RemoveColMutation.id, { lines: "columns", act: "remove" }],
  [MoveColsMutation.id, { lines: "columns", act: "move" }],
]);

/** True for a change of the grid's by which rows or columns come, go or stand elsewhere. */
export const movesLines = (id: string): boolean => KINDS.has(id);

function span(range: IRange, lines: "rows" | "columns"): { at: number; count: number } {
  const [first, last] =
    lines === "rows" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { at: first, count: last - first + 1 };
}
