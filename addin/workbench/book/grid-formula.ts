import { stringifyTokens, tokenize } from "@borgar/fx";
import { typedFormula } from "../../workbook/bar-formula-names";

const NEWER = /^(_xlfn\.|_xlws\.)+/i;

/**
 * A formula as a user types it, of a formula as a file stores it: `BAR.MASS` of `_xldudf_BAR_MASS`, and
 * functions newer than the file format without their prefix. Text in quotes is left alone.
 */
export function gridFormula(stored: string): string {
  const formula = typedFormula(stored);
  if (!/_xl(fn|ws)\./i.test(formula)) return formula;
  const tokens = tokenize(formula, { withLocation: false });
  return stringifyTokens(
    tokens.map((token) =>
      token.type === "func" ? { ...token, value: token.value.replace(NEWER, "") } : token,
    ),
  );
}
