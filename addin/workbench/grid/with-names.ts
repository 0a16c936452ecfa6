import { stringifyTokens, type Token, tokenize } from "@borgar/fx";

/** A name of a workbook: as it is written there, and what it stands for. */
export interface NameMeant {
  readonly name: string;
  readonly refersTo: string;
}

/** A formula without its names, and the names that it leaned on, those behind other names included. */
export interface NamesTaken {
  readonly formula: string;
  readonly names: readonly string[];
}

/**
 * A formula with each name replaced by what it stands for, in brackets where it is more than one value or
 * range. A name that nobody knows, and one that names itself, stay as they are.
 *
 * @param meant what a name stands for, of the sheet that is written before it; null where it is none
 */
export function withNames(
  formula: string,
  meant: (name: string, sheet: string | null) => NameMeant | null,
): NamesTaken {
  const names = new Set<string>();
  const taken = replaced(formula, meant, names, new Set());
  return { formula: taken, names: [...names] };
}

function replaced(
  formula: string,
  meant: (name: string, sheet: string | null) => NameMeant | null,
  names: Set<string>,
  within: ReadonlySet<string>,
): string {
  const tokens = tokenize(formula, { withLocation: false });
  if (!tokens.some(({ type }) => type === "range_named")) return formula;
  return stringifyTokens(
    tokens.map((token) => {
      if (token.type !== "range_named") return token;
      const at = token.value.lastIndexOf("!");
      const known = meant(token.value.slice(at + 1), at < 0 ? null : unquoted(token.value.slice(0, at)));
      // one that is not known yet may be tomorrow
      names.add(known?.name ?? token.value);
      if (known === null || within.has(known.name)) return token;
      const inner = replaced(
        known.refersTo.trim().replace(/^=/, ""),
        meant,
        names,
        new Set([...within, known.name]),
      );
      return { ...token, value: isOne(inner) ? inner : `(${inner})` };
    }),
  );
}

const unquoted = (sheet: string): string => sheet.replace(/^'(.*)'$/, "$1").replaceAll("''", "'");

/** One value or range binds by itself; a list of ranges is as many arguments. */
function isOne(formula: string): boolean {
  const tokens = tokenize(formula, { withLocation: false }).filter(({ type }) => type !== "whitespace");
  return tokens.length === 1 || holdsList(tokens);
}

function holdsList(tokens: readonly Token[]): boolean {
  let depth = 0;
  for (const { type, value } of tokens) {
    if (type !== "operator") continue;
    if (value === "(" || value === "{") depth += 1;
    else if (value === ")" || value === "}") depth -= 1;
    else if (value === "," && depth === 0) return true;
  }
  return false;
}
