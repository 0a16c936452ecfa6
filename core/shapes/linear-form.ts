import Decimal from "decimal.js";
import type { FormulaTree } from "./formula-tree";

/** Digits kept by exact evaluation: far beyond any rounding step of a length. */
export const Exact = Decimal.clone({ precision: 60 });

export const EXACT_PI = Exact.acos(-1);

export interface LinearForm {
  readonly constant: Decimal;
  /** coefficient by the symbol's place */
  readonly coefficients: ReadonlyMap<number, Decimal>;
}

/** The formula as constant + sum of coefficient x symbol, in decimals; null where it is not of that form. */
export function linearForm(tree: FormulaTree): LinearForm | null {
  switch (tree.kind) {
    case "number":
      return { constant: new Exact(tree.text), coefficients: new Map() };
    case "pi":
      return { constant: EXACT_PI, coefficients: new Map() };
    case "symbol":
      return { constant: new Exact(0), coefficients: new Map([[tree.place, new Exact(1)]]) };
    case "add":
    case "subtract":
      return combined(linearForm(tree.left), linearForm(tree.right), tree.kind === "add" ? 1 : -1);
    case "multiply":
      return multiplied(linearForm(tree.left), linearForm(tree.right));
    case "divide": {
      const left = linearForm(tree.left);
      const right = linearForm(tree.right);
      if (left === null || right === null || right.coefficients.size > 0) return null;
      return scaled(left, new Exact(1).div(right.constant));
    }
    default:
      return null;
  }
}

function combined(left: LinearForm | null, right: LinearForm | null, sign: 1 | -1): LinearForm | null {
  if (left === null || right === null) return null;
  const coefficients = new Map(left.coefficients);
  for (const [place, value] of right.coefficients) {
    coefficients.set(place, (coefficients.get(place) ?? new Exact(0)).plus(value.times(sign)));
  }
  return { constant: left.constant.plus(right.constant.times(sign)), coefficients };
}

function multiplied(left: LinearForm | null, right: LinearForm | null): LinearForm | null {
  if (left === null || right === null) return null;
  if (left.coefficients.size === 0) return scaled(right, left.constant);
  if (right.coefficients.size === 0) return scaled(left, right.constant);
  return null;
}

function scaled(form: LinearForm, factor: Decimal): LinearForm {
  const coefficients = new Map([...form.coefficients].map(([place, value]) => [place, value.times(factor)]));
  return { constant: form.constant.times(factor), coefficients };
}
