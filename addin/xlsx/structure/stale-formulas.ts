import { parseA1Ref, tokenize, translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { addressAt } from "../../../core/schedule/cell-address";
import { LAST_COLUMN, LAST_ROW } from "../../workbook/cell-address";
import type { Workbook } from "../read/open-workbook";

export interface FormulaCell {
  readonly row: number;
  readonly column: number;
}

/** One formula of a workbook and what its result stands on. */
interface Node {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly bottom: number;
  readonly right: number;
}

interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly nodes: Node[];
}

/** Beyond this many comparisons every formula counts as stale. */
const MOST_COMPARISONS = 100_000_000;
/** Functions whose result stands on cells that the formula does not name. */
const ANYWHERE = /\b(INDIRECT|OFFSET|CELL|GETPIVOTDATA)\s*\(/i;

/**
 * Formulas whose results lean on cells that were changed, directly or by way of others, by sheet. A formula
 * that names a table, another file or cells by their text leans on anything.
 */
export function staleFormulas(
  workbook: Workbook,
  changed: ReadonlyMap<string, readonly FormulaCell[]>,
): ReadonlyMap<string, readonly FormulaCell[]> {
  const web = new Web(workbook);
  const stale = new Set<Node>();
  const waiting: { sheet: string; row: number; column: number; bottom: number; right: number }[] = [];
  for (const [sheet, cells] of changed) {
    for (const cell of cells) waiting.push({ sheet, ...cell, bottom: cell.row, right: cell.column });
  }
  if (waiting.length === 0) return new Map();
  const take = (node: Node): void => {
    if (stale.has(node)) return;
    stale.add(node);
    waiting.push(node);
  };
  for (const node of web.anywhere) take(node);
  let comparisons = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    comparisons += web.blocksOf(next.sheet).length;
    if (comparisons > MOST_COMPARISONS) return bySheet(web.nodes);
    for (const node of web.leaningOn(next)) take(node);
  }
  return bySheet(stale);
}

function bySheet(nodes: Iterable<Node>): Map<string, FormulaCell[]> {
  const list = new Map<string, FormulaCell[]>();
  for (const { sheet, row, column } of nodes) {
    const held = list.get(sheet) ?? [];
    held.push({ row, column });
    list.set(sheet, held);
  }
  return list;
}

class Web {
  readonly nodes: Node[] = [];
  readonly anywhere: Node[] = [];
  /** single cells by sheet and place */
  private readonly cells = new Map<string, Node[]>();
  private readonly blocks = new Map<string, Map<string, Block>>();
  private readonly lists = new Map<string, readonly Block[]>();

  constructor(private readonly workbook: Workbook) {
    for (const { name } of workbook.sheets) this.readFormulas(name);
    for (const [sheet, blocks] of this.blocks) this.lists.set(sheet, [...blocks.values()]);
  }

  blocksOf(sheet: string): readonly Block[] {
    return this.lists.get(sheet.toLowerCase()) ?? [];
  }

  *leaningOn(area: { sheet: string; row: number; column: number; bottom: number; right: number }) {
    const sheet = area.sheet.toLowerCase();
    for (let row = area.row; row <= area.bottom; row += 1) {
      for (let column = area.column; column <= area.right; column += 1)
        yield* this.cells.get(`${sheet} ${row} ${column}`) ?? [];
    }
    for (const { top, left, bottom, right, nodes } of this.blocksOf(sheet)) {
      const isOver = area.row <= bottom && area.bottom >= top && area.column <= right && area.right >= left;
      if (isOver) yield* nodes;
    }
  }

  private readFormulas(sheet: string): void {
    const reading = this.workbook.read(sheet, { formulas: true });
    const groups = new Map<number, string>();
    for (const row of reading.rowNumbers) {
      for (const { column } of reading.cellsOfRow(row)) {
        const formula = reading.formulaAt(row, column);
        if (formula === undefined) continue;
        let { text } = formula;
        if (formula.group !== null) {
          const address = addressAt(row, column);
          if (text !== "") groups.set(formula.group, translateFormulaToR1C1(`=${text}`, address));
          else text = translateFormulaToA1(groups.get(formula.group) ?? "", address).replace(/^=/, "");
        }
        const range = formula.kind === "shared" || formula.range === null ? null : parseA1Ref(formula.range);
        const fills = range && "range" in range ? range.range : null;
        const node = {
          sheet,
          row,
          column,
          bottom: fills?.bottom ?? row,
          right: fills?.right ?? column,
        };
        this.nodes.push(node);
        this.link(node, text, sheet, new Set());
      }
    }
  }

  private link(node: Node, formula: string, sheet: string, names: Set<string>): void {
    if (ANYWHERE.test(formula)) this.anywhere.push(node);
    for (const { type, value } of tokenize(formula, { withLocation: false })) {
      if (type === "structured" || type === "range_ternary") this.anywhere.push(node);
      if (type !== "range" && type !== "range_beam" && type !== "range_named") continue;
      const reference = parseA1Ref(value);
      if (reference === undefined || (reference.workbookName ?? "") !== "") {
        this.anywhere.push(node);
        continue;
      }
      const named = reference.sheetName || sheet;
      if ("name" in reference) this.linkName(node, reference.name, named, names);
      else if (named.includes(":")) this.anywhere.push(node);
      else this.put(node, named.toLowerCase(), reference.range);
    }
  }

  private linkName(node: Node, name: string, sheet: string, names: Set<string>): void {
    const key = name.toLowerCase();
    if (names.has(key)) return;
    names.add(key);
    const held = this.workbook.names.filter((one) => one.name.toLowerCase() === key);
    if (held.length === 0) this.anywhere.push(node);
    for (const { refersTo } of held) this.link(node, refersTo, sheet, names);
  }

  private put(
    node: Node,
    sheet: string,
    range: {
      readonly top?: number | null;
      readonly left?: number | null;
      readonly bottom?: number | null;
      readonly right?: number | null;
    },
  ): void {
    const top = range.top ?? 0;
    const left = range.left ?? 0;
    const bottom = range.bottom ?? LAST_ROW;
    const right = range.right ?? LAST_COLUMN;
    if (top === bottom && left === right) {
      const key = `${sheet} ${top} ${left}`;
      const held = this.cells.get(key);
      if (held === undefined) this.cells.set(key, [node]);
      else held.push(node);
      return;
    }
    const blocks = this.blocks.get(sheet) ?? new Map<string, Block>();
    this.blocks.set(sheet, blocks);
    const key = `${top} ${left} ${bottom} ${right}`;
    const held = blocks.get(key);
    if (held === undefined) blocks.set(key, { top, left, bottom, right, nodes: [node] });
    else held.nodes.push(node);
  }
}
