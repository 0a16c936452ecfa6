import { tokenize } from "@borgar/fx";
import { WORKSHEET_FUNCTIONS } from "../../core/formulas";

/** Why a formula has no result, where its own text tells: the grid's errors carry no words. Null where it does not. */
export function formulaWords(formula: string): string | null {
  const tokens = tokenize(formula, { withLocation: false });
  for (const { type, value } of tokens) {
    const name = type === "func" ? /^BAR\.(.+)$/i.exec(value)?.[1]?.toUpperCase() : undefined;
    if (name !== undefined && !WORKSHEET_FUNCTIONS.has(name)) return unknownName(name);
  }
  if (/\bBAR\./i.test(formula) && hasSemicolon(formula))
    return "arguments are parted by a comma here, not by a semicolon: write BAR.MASS(A1, B1)";
  return null;
}

function unknownName(name: string): string {
  const all = [...WORKSHEET_FUNCTIONS.keys()];
  const near = all.filter((one) => one.includes(name) || name.includes(one) || shared(one, name) >= 4);
  const offered = (near.length > 0 ? near : all).map((one) => `BAR.${one}`).join(", ");
  return `there is no function BAR.${name}: ${near.length > 0 ? "near it is" : "there are"} ${offered}`;
}

/** How many letters two names begin with alike. */
function shared(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at += 1;
  return at;
}

/** A semicolon outside texts and constants in braces, where it parts rows. */
function hasSemicolon(formula: string): boolean {
  return formula
    .replace(/"(?:[^"]|"")*"/g, "")
    .replace(/\{[^}]*\}/g, "")
    .includes(";");
}
