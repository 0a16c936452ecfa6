import { placeOf } from "./shape-values";

export type FormulaTree =
  | { readonly kind: "number"; readonly text: string; readonly value: number }
  | { readonly kind: "symbol"; readonly name: string; readonly place: number }
  | { readonly kind: "pi" }
  | {
      readonly kind: "add" | "subtract" | "multiply" | "divide";
      readonly left: FormulaTree;
      readonly right: FormulaTree;
    }
  | { readonly kind: "square"; readonly of: FormulaTree }
  | { readonly kind: "call"; readonly name: FormulaCall; readonly args: readonly FormulaTree[] };

type FormulaCall = "sqrt" | "max" | "min" | "sin" | "cos" | "tan";

export interface ParsedFormula {
  readonly tree: FormulaTree;
  /** dims that stand alone in brackets: they take up tolerance */
  readonly bracketed: readonly string[];
}

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|(P\(links\)|pi|sqrt|max|min|sin|cos|tan|[A-HJKRPrdtuhn])|([-+*/^(),]))/y;
const CALLS = new Set(["sqrt", "max", "min", "sin", "cos", "tan"]);

/**
 * A formula as a standard prints it, taken apart: "2(A + B + (C)) - 2.5r - 5d". Factors side by side
 * are multiplied; a function takes what stands right after it. Throws for a text that is no formula:
 * formulas are data of ours, never input.
 */
export function parseFormula(text: string): ParsedFormula {
  const tokens = formulaTokens(text);
  const bracketed: string[] = [];
  let at = 0;

  const tree = sum();
  if (at < tokens.length) throw new Error(`"${tokens[at]}" is left over in the formula "${text}"`);
  return { tree, bracketed };

  function sum(): FormulaTree {
    let left = tokens[at] === "-" || tokens[at] === "+" ? ZERO : product();
    while (tokens[at] === "+" || tokens[at] === "-") {
      const kind = tokens[at++] === "+" ? "add" : "subtract";
      left = { kind, left, right: product() };
    }
    return left;
  }

  function product(): FormulaTree {
    let left = power();
    for (;;) {
      const next = tokens[at];
      if (next === "*" || next === "/") {
        at += 1;
        left = { kind: next === "*" ? "multiply" : "divide", left, right: power() };
      } else if (next !== undefined && !"+-^),".includes(next)) {
        left = { kind: "multiply", left, right: power() };
      } else return left;
    }
  }

  function power(): FormulaTree {
    const base = factor();
    if (tokens[at] !== "^") return base;
    at += 1;
    const exponent = tokens[at++];
    if (exponent !== "2") throw new Error(`only squares are read in the formula "${text}"`);
    return { kind: "square", of: base };
  }

  function factor(): FormulaTree {
    const token = tokens[at++];
    if (token === undefined) throw new Error(`the formula "${text}" ends too early`);
    if (/^\d/.test(token)) return { kind: "number", text: token, value: Number(token) };
    if (token === "pi") return { kind: "pi" };
    if (CALLS.has(token)) return { kind: "call", name: token as FormulaCall, args: argumentsOf() };
    if (token === "(") return group();
    const place = placeOf(token);
    if (place === undefined) throw new Error(`"${token}" is not understood in the formula "${text}"`);
    return { kind: "symbol", name: token, place };
  }

  function group(): FormulaTree {
    const inside = sum();
    expect(")");
    if (inside.kind === "symbol") bracketed.push(inside.name);
    return inside;
  }

  function argumentsOf(): FormulaTree[] {
    if (tokens[at] !== "(") return [factor()];
    at += 1;
    const args = [sum()];
    while (tokens[at] === ",") {
      at += 1;
      args.push(sum());
    }
    expect(")");
    return args;
  }

  function expect(token: string): void {
    if (tokens[at++] !== token) throw new Error(`"${token}" is missing in the formula "${text}"`);
  }
}

const ZERO: FormulaTree = { kind: "number", text: "0", value: 0 };

/** The words of a formula, in order. */
export function formulaTokens(text: string): string[] {
  const tokens: string[] = [];
  const trimmed = text.trimEnd();
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < trimmed.length) {
    const from = TOKEN.lastIndex;
    const match = TOKEN.exec(trimmed);
    if (match === null)
      throw new Error(`"${trimmed.slice(from)}" is not understood in the formula "${text}"`);
    tokens.push((match[1] ?? match[2] ?? match[3])!);
  }
  return tokens;
}
