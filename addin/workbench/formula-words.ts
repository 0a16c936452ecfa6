import { tokenize } from "@borgar/fx";

/** Why a formula has no result, where its own text tells: the grid's errors carry no words. Null where it does not. */
export function formulaWords(formula: string, functions: readonly string[]): string | null {
  const tokens = tokenize(formula, { withLocation: false });
  for (const { type, value } of tokens) {
    const name = type === "func" ? /^BAR\..+$/i.exec(value)?.[0].toUpperCase() : undefined;
    if (name !== undefined && functions.length > 0 && !functions.includes(name))
      return unknownName(name, functions);
  }
  if (/\bBAR\./i.test(formula) && hasSemicolon(formula))
    return "arguments are parted by a comma here, not by a semicolon: write BAR.MASS(A1, B1)";
  return null;
}

function unknownName(name: string, all: readonly string[]): string {
  const bare = (full: string): string => full.slice("BAR.".length);
  const near = all.filter((full) => {
    const [one, typed] = [bare(full), bare(name)];
    return one.includes(typed) || typed.includes(one) || shared(one, typed) >= 4;
  });
  const offered = (near.length > 0 ? near : all).join(", ");
  return `there is no function ${name}: ${near.length > 0 ? "near it is" : "there are"} ${offered}`;
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
