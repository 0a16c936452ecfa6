import type Decimal from "decimal.js";
import { DEGREE } from "../geometry/degree";
import { type FormulaTree, parseFormula } from "./formula-tree";
import { EXACT_PI, Exact, linearForm } from "./linear-form";
import type { ShapeValues } from "./shape-values";

/** A printed formula, ready to be evaluated. Angles are in degrees. */
export interface Formula {
  readonly text: string;
  /** dims in brackets */
  readonly bracketed: readonly string[];
  /** places of the symbols it uses, each once */
  readonly places: readonly number[];
  /** the value in floats; NaN where a symbol has no value */
  evaluate(values: ShapeValues): number;
  /** how far `evaluate` can be from the exact value, inputs taken as their shortest decimals */
  errorBound(values: ShapeValues): number;
  /** the value in decimals, of inputs taken as their shortest decimals; no angles */
  exact(values: ShapeValues): Decimal;
}

const EPSILON = Number.EPSILON;
const LARGEST_EXACT = 2 ** 40;
const inHalves = (value: number): boolean => Number.isInteger(2 * value);
const compiled = new Map<string, Formula>();

/**
 * The formula of a text as a standard prints it, such as "A + 0.57B + (C) - 1.6d" or "C pi (A - d)".
 * Compiled once a text. Throws for a text that is no formula.
 */
export function formula(text: string): Formula {
  const known = compiled.get(text);
  if (known !== undefined) return known;
  const { tree, bracketed } = parseFormula(text);
  const made = compileFormula(text, tree, bracketed);
  compiled.set(text, made);
  return made;
}

/** A formula of a tree that was made from others. */
export function compileFormula(text: string, tree: FormulaTree, bracketed: readonly string[]): Formula {
  const exact = (values: ShapeValues) => evaluateExactly(tree, values);
  const form = linearForm(tree);
  if (form === null) {
    return {
      text,
      bracketed,
      exact,
      places: [...new Set(placesOf(tree))],
      evaluate: (values) => evaluateTree(tree, values),
      errorBound: (values) => evaluateWithError(tree, values).error,
    };
  }
  const places = [...form.coefficients.keys()];
  const coefficients = places.map((place) => form.coefficients.get(place)!.toNumber());
  const constant = form.constant.toNumber();
  const count = places.length;
  const isWhole = Number.isInteger(constant) && coefficients.every(inHalves);
  return {
    text,
    bracketed,
    exact,
    places,
    evaluate(values) {
      let total = constant;
      for (let term = 0; term < count; term += 1) total += coefficients[term]! * values[places[term]!]!;
      return total;
    },
    // each term errs by its input, its coefficient and the product, each within EPSILON / 2 of it, and
    // the additions by EPSILON / 2 of the partial sums, which never exceed the sum of magnitudes:
    // (3 + count) EPSILON / 2 in all to first order; twice that covers the higher orders
    // where coefficients are whole halves and inputs whole numbers, every product and partial sum is a
    // whole half far below 2^52, which floats hold exactly: the error is nothing
    errorBound(values) {
      let magnitude = Math.abs(constant);
      let exactSoFar = isWhole;
      for (let term = 0; term < count; term += 1) {
        const value = values[places[term]!]!;
        exactSoFar = exactSoFar && Number.isInteger(value);
        magnitude += Math.abs(coefficients[term]! * value);
      }
      if (exactSoFar && magnitude < LARGEST_EXACT) return 0;
      return (3 + count) * EPSILON * magnitude;
    },
  };
}

function placesOf(tree: FormulaTree): number[] {
  switch (tree.kind) {
    case "number":
    case "pi":
      return [];
    case "symbol":
      return [tree.place];
    case "square":
      return placesOf(tree.of);
    case "call":
      return tree.args.flatMap(placesOf);
    default:
      return [...placesOf(tree.left), ...placesOf(tree.right)];
  }
}

function evaluateTree(tree: FormulaTree, values: ShapeValues): number {
  switch (tree.kind) {
    case "number":
      return tree.value;
    case "pi":
      return Math.PI;
    case "symbol":
      return values[tree.place]!;
    case "add":
      return evaluateTree(tree.left, values) + evaluateTree(tree.right, values);
    case "subtract":
      return evaluateTree(tree.left, values) - evaluateTree(tree.right, values);
    case "multiply":
      return evaluateTree(tree.left, values) * evaluateTree(tree.right, values);
    case "divide":
      return evaluateTree(tree.left, values) / evaluateTree(tree.right, values);
    case "square":
      return evaluateTree(tree.of, values) ** 2;
    case "call": {
      const args = tree.args.map((arg) => evaluateTree(arg, values));
      if (tree.name === "max") return Math.max(...args);
      if (tree.name === "min") return Math.min(...args);
      if (tree.name === "sqrt") return Math.sqrt(args[0]!);
      return Math[tree.name](args[0]! * DEGREE);
    }
  }
}

interface Measured {
  readonly value: number;
  readonly error: number;
}

/** Running error analysis: the bound of each step from the bounds of its parts. */
function evaluateWithError(tree: FormulaTree, values: ShapeValues): Measured {
  switch (tree.kind) {
    case "number":
    case "pi":
    case "symbol": {
      const value = evaluateTree(tree, values);
      return rounded(value, 0);
    }
    case "add":
    case "subtract": {
      const left = evaluateWithError(tree.left, values);
      const right = evaluateWithError(tree.right, values);
      const value = tree.kind === "add" ? left.value + right.value : left.value - right.value;
      return rounded(value, left.error + right.error);
    }
    case "multiply": {
      const left = evaluateWithError(tree.left, values);
      const right = evaluateWithError(tree.right, values);
      return product(left, right);
    }
    case "divide": {
      const left = evaluateWithError(tree.left, values);
      const right = evaluateWithError(tree.right, values);
      const value = left.value / right.value;
      const share = (left.error + Math.abs(value) * right.error) / (Math.abs(right.value) - right.error);
      return rounded(value, share);
    }
    case "square": {
      const of = evaluateWithError(tree.of, values);
      return product(of, of);
    }
    case "call":
      return callWithError(tree.name, tree.args, values);
  }
}

function callWithError(name: string, trees: readonly FormulaTree[], values: ShapeValues): Measured {
  const args = trees.map((arg) => evaluateWithError(arg, values));
  const error = Math.max(...args.map((arg) => arg.error));
  const list = args.map((arg) => arg.value);
  if (name === "max") return { value: Math.max(...list), error };
  if (name === "min") return { value: Math.min(...list), error };
  if (name !== "sqrt") throw new Error(`no error bound is held for ${name}`);
  const value = Math.sqrt(list[0]!);
  return rounded(value, error / value);
}

function product(left: Measured, right: Measured): Measured {
  const error = Math.abs(left.value) * right.error + (Math.abs(right.value) + right.error) * left.error;
  return rounded(left.value * right.value, error);
}

function rounded(value: number, error: number): Measured {
  return { value, error: error + EPSILON * Math.abs(value) };
}

function evaluateExactly(tree: FormulaTree, values: ShapeValues): Decimal {
  switch (tree.kind) {
    case "number":
      return new Exact(tree.text);
    case "pi":
      return EXACT_PI;
    case "symbol":
      return new Exact(values[tree.place]!);
    case "add":
      return evaluateExactly(tree.left, values).plus(evaluateExactly(tree.right, values));
    case "subtract":
      return evaluateExactly(tree.left, values).minus(evaluateExactly(tree.right, values));
    case "multiply":
      return evaluateExactly(tree.left, values).times(evaluateExactly(tree.right, values));
    case "divide":
      return evaluateExactly(tree.left, values).div(evaluateExactly(tree.right, values));
    case "square":
      return evaluateExactly(tree.of, values).pow(2);
    case "call": {
      const args = tree.args.map((arg) => evaluateExactly(arg, values));
      if (tree.name === "max") return Exact.max(...args);
      if (tree.name === "min") return Exact.min(...args);
      if (tree.name === "sqrt") return args[0]!.sqrt();
      throw new Error(`${tree.name} is not evaluated in decimals`);
    }
  }
}
