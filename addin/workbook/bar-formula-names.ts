import { stringifyTokens, type Token, tokenize } from "@borgar/fx/xlsx";
import { NEWER_FUNCTIONS, NEWER_WORKSHEET_FUNCTIONS } from "./newer-functions.data";

/**
 * How files spell our functions: `_xldudf_BAR_MASS` as Excel stores it, `_xll.BAR.MASS` of a native
 * add-in, plain `BAR.MASS` where it was typed without the add-in; any case, since LibreOffice lowers it.
 */
const SPELLING = /^(?:_xldudf_|_xll\.)?BAR[._](\w+)$/i;

/** "MASS" of any spelling of `BAR.MASS`; null for another function's name. */
export function barFunctionName(name: string): string | null {
  const match = SPELLING.exec(name);
  return match === null ? null : match[1]!.toUpperCase();
}

/** True where a formula calls one of our functions, however it is spelt. */
export function hasBarFunction(formula: string): boolean {
  return /bar[._]/i.test(formula) && tokens(formula).some((token) => isOurs(token));
}

/** The formula as a user types it: `BAR.MASS(C3)`. Text in quotes is left alone. */
export function typedFormula(formula: string): string {
  return renamed(formula, (name) => `BAR.${name}`);
}

/**
 * The formula as Excel stores it: add-in functions as `_xldudf_BAR_MASS(C3)`, and functions newer than the file
 * format with their prefix.
 */
export function storedFormula(formula: string): string {
  const stored = renamed(formula, (name) => `_xldudf_BAR_${name}`);
  if (!MAY_BE_NEWER.test(stored)) return stored;
  return stringifyTokens(
    tokens(stored).map((token) =>
      token.type === "func" ? { ...token, value: (prefixOf(token.value) ?? "") + token.value } : token,
    ),
  );
}

const prefixes = new Map([
  ...NEWER_FUNCTIONS.split(" ").map((name) => [name, "_xlfn."] as const),
  ...NEWER_WORKSHEET_FUNCTIONS.split(" ").map((name) => [name, "_xlfn._xlws."] as const),
]);
const prefixOf = (name: string): string | undefined => prefixes.get(name.toUpperCase());
const MAY_BE_NEWER = new RegExp(
  `(?<![\\w.])(?:${[...prefixes.keys()].join("|").replaceAll(".", "\\.")})\\s*\\(`,
  "i",
);

function renamed(formula: string, spell: (name: string) => string): string {
  if (!/bar[._]/i.test(formula)) return formula;
  const kept: Token[] = [];
  for (const token of tokens(formula)) {
    const name = token.type === "func" ? barFunctionName(token.value) : null;
    if (name === null) {
      kept.push(token);
      continue;
    }
    // `[2]!_xldudf_BAR_MASS`: a link to nowhere that some versions wrote
    if (kept.at(-1)?.value === "!" && kept.at(-2)?.type === "context") kept.splice(-2);
    kept.push({ ...token, value: spell(name) });
  }
  return stringifyTokens(kept);
}

function isOurs(token: Token): boolean {
  return token.type === "func" && barFunctionName(token.value) !== null;
}

function tokens(formula: string): Token[] {
  return tokenize(formula, { withLocation: false });
}
