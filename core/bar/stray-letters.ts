import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { BarFacts } from "./bar-facts";
import type { OfKind } from "./bar-kind";

/** bars of a code that leave a letter blank which another of them gives */
const FEWEST_WITHOUT = 2;

/** A bar's code and the letters that it gives beyond those that the code takes: "11 C"; empty where it has no code. */
export function codeAndExtra(facts: BarFacts): string {
  const taken = facts.kind.ask(lettersTaken, facts);
  return taken === null ? "" : `${taken.code} ${extraOf(facts, taken)}`;
}

interface LettersTaken {
  readonly code: string;
  /** by column: whether the code takes its letter */
  readonly takes: readonly boolean[];
}

function lettersTaken({ definition }: OfKind): LettersTaken | null {
  if (definition === null || definition.dims.length === 0) return null;
  const { code, dims, optionalDims } = definition;
  const takes = DIMENSION_LETTERS.map(
    (letter) => dims.includes(letter) || optionalDims?.includes(letter) === true,
  );
  return { code, takes };
}

function extraOf({ row: { dims } }: BarFacts, { takes }: LettersTaken): string {
  let extra = "";
  for (let column = 0; column < dims.length; column += 1) {
    const value = dims[column];
    if (value !== null && value !== 0 && takes[column] === false) extra += DIMENSION_LETTERS[column];
  }
  return extra;
}

/** Whether the bar gives a letter that its code takes no part of; the radius may stand in the fifth column. */
export function givesMoreThanTaken(facts: BarFacts): boolean {
  const taken = facts.kind.ask(lettersTaken, facts);
  if (taken === null) return false;
  const extra = extraOf(facts, taken);
  const isRadius = extra === "E" && facts.row.dims[DIMENSION_LETTERS.indexOf("E")] === facts.row.radius;
  return extra !== "" && !isRadius;
}

/** Letters that one bar alone of a code gives beyond what the code takes, each with its code: "|11:C|". */
export function strayLetters(bars: readonly BarFacts[]): string {
  const byCode = new Map<string, { bars: number; extra: Map<string, number> }>();
  for (const facts of bars) {
    const taken = facts.kind.ask(lettersTaken, facts);
    if (taken === null) continue;
    let of = byCode.get(taken.code);
    if (of === undefined) {
      of = { bars: 0, extra: new Map<string, number>() };
      byCode.set(taken.code, of);
    }
    of.bars += 1;
    for (const letter of extraOf(facts, taken)) of.extra.set(letter, (of.extra.get(letter) ?? 0) + 1);
  }
  const strays = [...byCode].flatMap(([code, of]) =>
    [...of.extra].flatMap(([letter, given]) =>
      given === 1 && of.bars - given >= FEWEST_WITHOUT ? `${code}:${letter}` : [],
    ),
  );
  return strays.length === 0 ? "" : `|${strays.join("|")}|`;
}
