import { type AstExpression, parse, type Token, tokenize } from "@borgar/fx/xlsx";
import { type Block, type FunctionEnvironment, WORKSHEET_FUNCTIONS } from "../../core/formulas";
import { type Cell, isCellError } from "../../core/schedule";
import { barFunctionName } from "../workbook/bar-formula-names";
import { InputRefused } from "./input-refused";

/** What a formula may ask of the place it stands in. */
export interface FormulaPlace extends FunctionEnvironment {
  /** cells of a reference; null where there is no workbook to look in */
  readonly cells: ((reference: string) => Block) | null;
}

/** A formula as a tree; throws `InputRefused` where it cannot be parsed. */
export function parseFormula(formula: string): AstExpression {
  const tokens = withoutHoles(tokenize(formula.trim(), { withLocation: false }));
  try {
    const tree = parse(tokens);
    if (!hasRaggedArray(tree)) return tree;
  } catch {
    // said below
  }
  throw new InputRefused(`cannot be parsed as a formula: ${shortened(formula)}`);
}

/**
 * The block that a formula gives: functions of namespace BAR, arithmetic, comparison and joining of
 * texts. Anything else is an error cell that says so.
 */
export function evaluate(tree: AstExpression, place: FormulaPlace): Block {
  switch (tree.type) {
    case "Literal":
      return [[tree.value ?? null]];
    case "ErrorLiteral":
      return [[{ error: tree.value }]];
    case "ArrayExpression":
      return tree.elements.map((row) => row.map((element) => evaluate(element, place)[0]?.[0] ?? null));
    case "UnaryExpression":
      return unary(tree.operator, evaluate(tree.arguments[0]!, place));
    case "BinaryExpression":
      return binary(tree.operator, evaluate(tree.arguments[0]!, place), evaluate(tree.arguments[1]!, place));
    case "ReferenceIdentifier":
      if (place.cells !== null) return place.cells(tree.value);
      return nameError(`${tree.value} is a reference: there is no workbook here to look in`);
    case "CallExpression":
      return call(tree, place);
    default:
      return nameError("this kind of formula is not computed here");
  }
}

function call(tree: AstExpression & { type: "CallExpression" }, place: FormulaPlace): Block {
  const written = tree.callee.type === "Identifier" ? tree.callee.name : "";
  if (isIfError(written)) return ifError(tree, place);
  const name = barFunctionName(written);
  const definition = name === null ? undefined : WORKSHEET_FUNCTIONS.get(name);
  if (definition === undefined) {
    return nameError(
      `there is no function ${written}: BAR has ${[...WORKSHEET_FUNCTIONS.keys()].join(", ")}`,
    );
  }
  const missing = definition.args.find(
    (argument, index) => !argument.optional && tree.arguments.length <= index,
  );
  if (missing !== undefined) {
    return [
      [{ error: "#VALUE!", message: `BAR.${definition.name} needs ${missing.name}: ${missing.description}` }],
    ];
  }
  const blocks = tree.arguments.map((argument) => (argument == null ? undefined : evaluate(argument, place)));
  return definition.call(blocks, place);
}

/** True for the one function of every spreadsheet program that is computed here: our Totals sheet calls it. */
export function isIfError(name: string): boolean {
  return name.toUpperCase() === "IFERROR";
}

/** IFERROR: cells that are errors give way to the second argument. */
function ifError(tree: AstExpression & { type: "CallExpression" }, place: FormulaPlace): Block {
  const [value, otherwise] = tree.arguments.map((one) => (one == null ? [[null]] : evaluate(one, place)));
  if (value === undefined || otherwise === undefined)
    return [[{ error: "#VALUE!", message: "IFERROR needs a value and what stands for an error" }]];
  const at = (row: number, column: number): Cell =>
    otherwise[otherwise.length === 1 ? 0 : row]?.[otherwise[0]?.length === 1 ? 0 : column] ?? null;
  return value.map((cells, row) =>
    cells.map((cell, column) => (cell !== null && isCellError(cell) ? at(row, column) : cell)),
  );
}

function nameError(message: string): Block {
  return [[{ error: "#NAME?", message }]];
}

function unary(operator: string, block: Block): Block {
  return block.map((row) =>
    row.map((cell) => {
      if (cell !== null && isCellError(cell)) return cell;
      if (operator === "+") return cell;
      const number = numberOf(cell);
      if (typeof number !== "number") return number;
      return operator === "-" ? -number : operator === "%" ? number / 100 : valueError(operator);
    }),
  );
}

/** Element by element; a single row or column is repeated along the other block. */
function binary(operator: string, left: Block, right: Block): Block {
  const rows = Math.max(left.length, right.length);
  const columns = Math.max(left[0]?.length ?? 0, right[0]?.length ?? 0);
  const at = (block: Block, row: number, column: number): Cell =>
    block[block.length === 1 ? 0 : row]?.[block[0]?.length === 1 ? 0 : column] ?? null;
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) =>
      combine(operator, at(left, row, column), at(right, row, column)),
    ),
  );
}

const COMPARISONS: ReadonlyMap<string, (order: number) => boolean> = new Map([
  ["=", (order) => order === 0],
  ["<>", (order) => order !== 0],
  ["<", (order) => order < 0],
  [">", (order) => order > 0],
  ["<=", (order) => order <= 0],
  [">=", (order) => order >= 0],
]);

const ARITHMETIC: ReadonlyMap<string, (a: number, b: number) => number> = new Map([
  ["+", (a, b) => a + b],
  ["-", (a, b) => a - b],
  ["*", (a, b) => a * b],
  ["/", (a, b) => a / b],
  ["^", (a, b) => a ** b],
]);

function combine(operator: string, left: Cell, right: Cell): Cell {
  if (left !== null && isCellError(left)) return left;
  if (right !== null && isCellError(right)) return right;
  if (operator === "&") return textOf(left) + textOf(right);
  const comparison = COMPARISONS.get(operator);
  if (comparison !== undefined) return comparison(order(left, right));
  const a = numberOf(left);
  const b = numberOf(right);
  if (typeof a !== "number") return a;
  if (typeof b !== "number") return b;
  if (operator === "/" && b === 0) return { error: "#DIV/0!" };
  const result = ARITHMETIC.get(operator)?.(a, b);
  if (result === undefined) return valueError(operator);
  return Number.isFinite(result) ? result : { error: "#NUM!", message: `${a} ${operator} ${b} is no number` };
}

function order(left: Cell, right: Cell): number {
  if (typeof left === "number" && typeof right === "number") return left - right;
  return textOf(left).toLowerCase().localeCompare(textOf(right).toLowerCase(), "en");
}

function numberOf(cell: Cell): number | Cell {
  if (cell === null) return 0;
  if (typeof cell === "boolean") return cell ? 1 : 0;
  if (typeof cell !== "string") return cell;
  const number = Number(cell);
  return cell.trim() === "" || Number.isNaN(number)
    ? { error: "#VALUE!", message: `"${cell}" is no number: arithmetic needs one` }
    : number;
}

function textOf(cell: Cell): string {
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return cell === null || isCellError(cell) ? "" : String(cell);
}

function valueError(operator: string): Cell {
  return { error: "#VALUE!", message: `the operator ${operator} is not computed here` };
}

/** Blanks between the commas of an array become empty texts, which functions take for blanks. */
function withoutHoles(tokens: readonly Token[]): Token[] {
  const whole: Token[] = [];
  let depth = 0;
  let afterGap = false;
  for (const token of tokens) {
    if (token.type === "whitespace" && depth > 0) continue;
    if (token.value === "}" && token.type === "operator") depth -= 1;
    const closes = token.type === "operator" && /^[,;}]$/.test(token.value);
    if (afterGap && closes) whole.push({ type: "string", value: '""' });
    if (token.value === "{" && token.type === "operator") depth += 1;
    whole.push(token);
    afterGap = depth > 0 && token.type === "operator" && /^[,;{]$/.test(token.value);
  }
  return whole;
}

function hasRaggedArray(tree: AstExpression): boolean {
  let ragged = false;
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) for (const one of node) visit(one);
    else if (typeof node === "object" && node !== null) {
      const { type, elements } = node as { type?: string; elements?: unknown[][] };
      if (
        type === "ArrayExpression" &&
        elements?.some((row) => row.length !== elements[0]?.length) === true
      ) {
        ragged = true;
      }
      for (const value of Object.values(node)) visit(value);
    }
  };
  visit(tree);
  return ragged;
}

function shortened(formula: string): string {
  return formula.length <= 80 ? formula : `${formula.slice(0, 77)}...`;
}
