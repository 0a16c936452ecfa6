import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import type { Block, FunctionEnvironment } from "../../core/formulas";
import { type Cell, isCellError } from "../../core/schedule";
import { addressAt } from "../../core/schedule/cell-address";
import { barFunctionName, hasBarFunction, typedFormula } from "../workbook/bar-formula-names";
import { LAST_COLUMN, LAST_ROW, parseRange } from "../workbook/cell-address";
import { constantText } from "../workbook/defined-name";
import type { CellWrite } from "../workbook/sheet-changes";
import type { Workbook } from "../xlsx/read/open-workbook";
import type { SheetReading } from "../xlsx/read/read-sheet";
import { type FormulaCell, staleFormulas } from "../xlsx/structure/stale-formulas";
import { evaluate, type FormulaPlace, isIfError, parseFormula } from "./evaluate-formula";
import { InputRefused } from "./input-refused";

export type PlacedWrite = CellWrite & { readonly row: number; readonly column: number };

interface PlainFormula extends FormulaCell {
  readonly sheet: string;
  readonly text: string;
  /** undefined where it cannot be computed here */
  value: Cell | undefined | "unknown";
}

/** Before the names of newer functions in a file; a spreadsheet program shows none of them. */
const PREFIXES = /^(?:_xlfn\.|_xlws\.)+/i;

/** What came of a workbook's BAR formulas, and of others that they lean on or that lean on them. */
export interface Recalculation {
  readonly writes: ReadonlyMap<string, PlacedWrite[]>;
  /** formulas whose stored results lean on a changed cell and cannot be computed here */
  readonly stale: ReadonlyMap<string, readonly FormulaCell[]>;
  readonly formulas: number;
  /** results of other formulas that were taken as stored, although the file does not vouch for them */
  readonly believed: readonly { readonly sheet: string; readonly cell: string }[];
  /** formulas left as they are, with the reason */
  readonly left: readonly { readonly sheet: string; readonly cell: string; readonly reason: string }[];
}

interface OwnFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly text: string;
  readonly range: { top: number; left: number; bottom: number; right: number };
  result: Block | "running" | null;
  /** it cannot be computed here: its result is what is stored, and is not written */
  isLeft: boolean;
}

/**
 * Evaluates every BAR formula of a workbook over the values that stand in it, and the formulas without
 * functions that stand between them; one that leans on another is evaluated after it. A stored result of
 * another function is taken as it stands where nothing that it leans on was changed.
 */
export function recalculateBook(workbook: Workbook, environment: FunctionEnvironment): Recalculation {
  return new Recalculator(workbook, environment).run();
}

class Recalculator {
  private readonly sheets = new Map<string, SheetReading>();
  private readonly formulas: OwnFormula[] = [];
  /** sheet to "row:column" to the formula whose result stands there */
  private readonly owners = new Map<string, Map<number, OwnFormula>>();
  /** sheet to its last row and column with a value, a formula or a result of one */
  private readonly ends = new Map<string, { bottom: number; right: number }>();
  /** formulas without a function, by sheet and place */
  private readonly plain = new Map<string, Map<number, PlainFormula>>();
  private readonly believed = new Map<string, { sheet: string; cell: string }>();
  private readonly left: { sheet: string; cell: string; reason: string }[] = [];

  constructor(
    private readonly workbook: Workbook,
    private readonly environment: FunctionEnvironment,
  ) {}

  run(): Recalculation {
    for (const { name } of this.workbook.sheets) this.collect(name);
    // what leans on cells that a result only now spills into is computed again
    for (let round = 0; round < MOST_ROUNDS && this.spillOver(); round += 1) this.forget();
    const writes = new Map<string, PlacedWrite[]>();
    for (const formula of this.formulas) {
      const block = this.resultOf(formula);
      if (block === null) continue;
      const list = writes.get(formula.sheet) ?? [];
      writes.set(formula.sheet, list);
      list.push(...this.writesOf(formula, block));
    }
    const stale = this.followChanges(writes);
    const believed = [...this.believed.values()];
    return { writes, stale, formulas: this.formulas.length, believed, left: this.left };
  }

  /** Computes every formula; true where a result stands in cells that no formula was known to fill. */
  private spillOver(): boolean {
    let isMore = false;
    for (const formula of this.formulas) {
      const block = this.resultOf(formula);
      if (block === null || !this.isFree(formula, block)) continue;
      const owners = this.owners.get(formula.sheet)!;
      for (const [r, cells] of block.entries()) {
        for (const c of cells.keys()) {
          const [row, column] = [formula.row + r, formula.column + c];
          if (owners.has(placeKey(row, column))) continue;
          owners.set(placeKey(row, column), formula);
          this.reach(formula.sheet, row, column);
          isMore = true;
        }
      }
    }
    return isMore;
  }

  private forget(): void {
    for (const formula of this.formulas) [formula.result, formula.isLeft] = [null, false];
    for (const plain of this.plain.values()) for (const one of plain.values()) one.value = "unknown";
    this.believed.clear();
    this.left.length = 0;
  }

  private reach(name: string, row: number, column: number): void {
    const end = this.ends.get(name)!;
    end.bottom = Math.max(end.bottom, row);
    end.right = Math.max(end.right, column);
  }

  /** Results that lean on changed cells are computed where they can be; gives those that cannot. */
  private followChanges(writes: Map<string, PlacedWrite[]>): ReadonlyMap<string, readonly FormulaCell[]> {
    for (const [name, formulas] of this.plain) {
      for (const formula of formulas.values()) {
        const value = this.plainValue(formula);
        if (value === undefined || sameCell(value, this.stored(name, formula))) continue;
        const { row, column, text } = formula;
        const list = writes.get(name) ?? [];
        writes.set(name, list);
        list.push({ row, column, value: value ?? 0, formula: text });
      }
    }
    const changed = new Map(
      [...writes].map(([name, list]) => [
        name,
        list.filter((write) => !sameCell(write.value, this.stored(name, write))),
      ]),
    );
    const known = new Set(
      [...writes].flatMap(([name, list]) => list.map(({ row, column }) => `${name} ${row} ${column}`)),
    );
    const stale = new Map<string, readonly FormulaCell[]>();
    for (const [name, cells] of staleFormulas(this.workbook, changed)) {
      const unsure = cells.filter(({ row, column }) => {
        const isComputed = this.plain.get(name)?.get(placeKey(row, column))?.value !== undefined;
        return !isComputed && !known.has(`${name} ${row} ${column}`);
      });
      if (unsure.length > 0) stale.set(name, unsure);
    }
    return stale;
  }

  private stored(name: string, { row, column }: FormulaCell): Cell {
    return this.sheets.get(name)?.valueAt(row, column) ?? null;
  }

  /** The value of a formula without a function; undefined where it cannot be computed here. */
  private plainValue(formula: PlainFormula): Cell | undefined {
    if (formula.value !== "unknown") return formula.value;
    // one that leans on itself
    formula.value = undefined;
    try {
      const tree = parseFormula(`=${formula.text}`);
      if (otherFunction(tree) !== null) return undefined;
      const block = evaluate(tree, this.place(formula.sheet));
      const only = block.length === 1 && block[0]?.length === 1 ? block[0][0] : undefined;
      formula.value = only;
    } catch (error) {
      if (!(error instanceof InputRefused)) throw error;
    }
    return formula.value;
  }

  private collect(name: string): void {
    const sheet = this.workbook.read(name, { formulas: true });
    this.sheets.set(name, sheet);
    const owners = new Map<number, OwnFormula>();
    this.owners.set(name, owners);
    this.ends.set(name, {
      bottom: Math.max(0, sheet.top + sheet.rowCount - 1),
      right: Math.max(0, sheet.left + sheet.columnCount - 1),
    });
    const plain = new Map<number, PlainFormula>();
    this.plain.set(name, plain);
    const groups = new Map<number, string>();
    for (const row of sheet.rowNumbers) {
      for (const { column } of sheet.cellsOfRow(row)) {
        const stored = sheet.formulaAt(row, column);
        if (stored === undefined) continue;
        // its cell counts, whether or not a result is stored in it
        this.reach(name, row, column);
        const address = addressAt(row, column);
        let { text } = stored;
        if (stored.group !== null) {
          if (text !== "") groups.set(stored.group, translateFormulaToR1C1(`=${text}`, address));
          else text = translateFormulaToA1(groups.get(stored.group) ?? "", address).replace(/^=/, "");
        }
        if (!hasBarFunction(text)) {
          if (stored.kind !== "array" && stored.kind !== "dataTable")
            plain.set(placeKey(row, column), { sheet: name, row, column, text, value: "unknown" });
          continue;
        }
        const range = (stored.kind === "array" && stored.range !== null
          ? parseRange(stored.range)
          : null) ?? {
          top: row,
          left: column,
          bottom: row,
          right: column,
        };
        const formula: OwnFormula = {
          sheet: name,
          row,
          column,
          text: typedFormula(text),
          range,
          result: null,
          isLeft: false,
        };
        this.formulas.push(formula);
        for (let r = range.top; r <= range.bottom; r += 1) {
          for (let c = range.left; c <= range.right; c += 1) owners.set(placeKey(r, c), formula);
        }
      }
    }
  }

  /** The block of a formula; null where it cannot be evaluated here. */
  private resultOf(formula: OwnFormula): Block | null {
    if (formula.result === "running") return [[{ error: "#REF!", message: "the formula leans on itself" }]];
    if (formula.isLeft) return null;
    if (formula.result !== null) return formula.result;
    formula.result = "running";
    let block: Block | null = null;
    try {
      const tree = parseFormula(`=${formula.text}`);
      const other = otherFunction(tree);
      if (other !== null)
        throw new InputRefused(
          `it calls ${other.replace(PREFIXES, "")}, which only a spreadsheet program computes`,
        );
      block = evaluate(tree, this.place(formula.sheet));
    } catch (error) {
      if (!(error instanceof InputRefused)) throw error;
      const cell = addressAt(formula.row, formula.column);
      formula.isLeft = true;
      this.left.push({ sheet: formula.sheet, cell, reason: error.message });
    }
    formula.result = block ?? [[this.sheets.get(formula.sheet)!.valueAt(formula.row, formula.column)]];
    return block;
  }

  private place(sheet: string): FormulaPlace {
    return { ...this.environment, cells: (reference) => this.cells(sheet, reference) };
  }

  private cells(from: string, reference: string): Block {
    const split = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(reference);
    const name = split === null ? from : (split[1] ?? split[2] ?? "").replaceAll("''", "'");
    const sheet = this.sheets.get(name);
    if (sheet === undefined)
      throw new InputRefused(`it refers to ${reference}, which is not in this workbook`);
    const range = this.rangeOf(split?.[3] ?? reference, name);
    if (range === null) return this.named(from, reference);
    const rows: Cell[][] = [];
    for (let row = range.top; row <= range.bottom; row += 1) {
      const cells: Cell[] = [];
      for (let column = range.left; column <= range.right; column += 1)
        cells.push(this.value(name, sheet, row, column));
      rows.push(cells);
    }
    return rows;
  }

  /** A range of cells; it ends where the sheet's values, formulas and results do. */
  private rangeOf(text: string, name: string) {
    const plain = text.replaceAll("$", "");
    const columns = /^([A-Za-z]{1,3}):([A-Za-z]{1,3})$/.exec(plain);
    const rows = /^(\d+):(\d+)$/.exec(plain);
    const { bottom, right } = this.ends.get(name)!;
    if (columns !== null) return parseRange(`${columns[1]}1:${columns[2]}${bottom + 1}`);
    if (rows !== null) return parseRange(`A${rows[1]}:${addressAt(Number(rows[2]) - 1, right)}`);
    const range = parseRange(plain);
    if (range === null || range.bottom > LAST_ROW) return range;
    return { ...range, bottom: Math.min(range.bottom, Math.max(bottom, range.top)) };
  }

  private named(from: string, name: string): Block {
    const found = this.workbook.names.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (found === undefined) throw new InputRefused(`it refers to ${name}, which is not read here`);
    const text = constantText(found.refersTo);
    if (text !== null) return [[text]];
    if (found.refersTo.replace(/^=/, "").toLowerCase() === name.toLowerCase())
      throw new InputRefused(`${name} names itself`);
    const tree = parseFormula(`=${found.refersTo.replace(/^=/, "")}`);
    return evaluate(tree, this.place(from));
  }

  private value(name: string, sheet: SheetReading, row: number, column: number): Cell {
    const owner = this.owners.get(name)?.get(placeKey(row, column));
    if (owner === undefined) {
      const plain = this.plain.get(name)?.get(placeKey(row, column));
      const value = plain && this.plainValue(plain);
      if (value === undefined && sheet.isDoubted?.(row - sheet.top, column - sheet.left) === true) {
        const cell = addressAt(row, column);
        this.believed.set(`${name}!${cell}`, { sheet: name, cell });
      }
      return value ?? sheet.valueAt(row, column);
    }
    const block = this.resultOf(owner) ?? (owner.result as Block);
    return block[row - owner.row]?.[column - owner.column] ?? null;
  }

  /** True where a result fits the sheet and no value of another stands in its way. */
  private isFree({ sheet: name, row, column, range }: OwnFormula, block: Block): boolean {
    const sheet = this.sheets.get(name)!;
    const columns = widest(block);
    if (row + block.length - 1 > LAST_ROW || column + columns - 1 > LAST_COLUMN) return false;
    for (let r = row; r < row + block.length; r += 1) {
      for (let c = column; c < column + columns; c += 1) {
        if (!isInside(range, r, c) && sheet.valueAt(r, c) !== null) return false;
      }
    }
    return true;
  }

  private writesOf(formula: OwnFormula, block: Block): PlacedWrite[] {
    const rows = block.length;
    const columns = widest(block);
    const { row, column, range, text } = formula;
    const isOwn = (r: number, c: number): boolean => isInside(range, r, c);
    const writes: PlacedWrite[] = [];
    const isFree = this.isFree(formula, block);
    const first = isFree ? (block[0]?.[0] ?? null) : { error: "#SPILL!" };
    // a blank result shows as 0 in every spreadsheet program
    writes.push({
      row,
      column,
      value: first ?? 0,
      formula: text,
      fills: isFree ? { rows, columns } : { rows: 1, columns: 1 },
    });
    const isIn = (r: number, c: number): boolean => isFree && r < row + rows && c < column + columns;
    for (let r = row; r <= Math.max(range.bottom, isFree ? row + rows - 1 : row); r += 1) {
      for (let c = column; c <= Math.max(range.right, isFree ? column + columns - 1 : column); c += 1) {
        if (r === row && c === column) continue;
        if (isIn(r, c)) writes.push({ row: r, column: c, value: block[r - row]?.[c - column] ?? null });
        else if (isOwn(r, c)) writes.push({ row: r, column: c, value: null });
      }
    }
    return writes;
  }
}

/** spills that lean on spills that lean on spills */
const MOST_ROUNDS = 8;

const widest = (block: Block): number => block.reduce((most, row) => Math.max(most, row.length), 1);

const isInside = ({ top, left, bottom, right }: OwnFormula["range"], row: number, column: number): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

const placeKey = (row: number, column: number): number => row * (LAST_COLUMN + 1) + column;

function sameCell(a: Cell, b: Cell): boolean {
  if (a !== null && b !== null && isCellError(a) && isCellError(b)) return a.error === b.error;
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
  return a === b;
}

/** Name of the first function in a formula that is none of ours; null where all are. */
function otherFunction(tree: unknown): string | null {
  if (Array.isArray(tree))
    return tree.reduce<string | null>((found, one) => found ?? otherFunction(one), null);
  if (typeof tree !== "object" || tree === null) return null;
  const { type, callee } = tree as { type?: string; callee?: { name?: string } };
  const name = callee?.name ?? "";
  if (type === "CallExpression" && barFunctionName(name) === null && !isIfError(name))
    return callee?.name ?? "a function";
  return Object.values(tree).reduce<string | null>((found, one) => found ?? otherFunction(one), null);
}

/** Errors among what was written. */
export function countErrors(writes: ReadonlyMap<string, readonly PlacedWrite[]>): number {
  return [...writes.values()].flat().filter(({ value }) => value !== null && isCellError(value)).length;
}
