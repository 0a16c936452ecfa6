import { formulaTokens } from "./formula-tree";
import { placeOf, type ShapeValues } from "./shape-values";

/** A printed formula with its symbols replaced by numbers: "1000 + 400 + (500) - 32 - 2 x 16". */
export function substitutedFormula(
  formula: string,
  values: ShapeValues,
  write: (mm: number, symbol: string) => string,
): string {
  let text = "";
  let before = "";
  for (const token of formulaTokens(formula)) {
    const place = placeOf(token);
    const shown = place === undefined ? token : write(values[place] ?? NaN, token);
    if (isOperand(token) && (endsOperand(before) || before === ")")) text += " x ";
    else if (token === "(" && endsOperand(before)) text += " x ";
    if (token === ",") text += ", ";
    else text += "+-".includes(token) && before !== "" && before !== "(" ? ` ${token} ` : shown;
    before = token;
  }
  return text;
}

/** Functions begin an operand but do not end one. */
function isOperand(token: string): boolean {
  return /^[\dA-Za-z]/.test(token);
}

function endsOperand(token: string): boolean {
  return /^\d/.test(token) || token === "pi" || placeOf(token) !== undefined;
}
