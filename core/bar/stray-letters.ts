import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { BarFacts } from "./bar-facts";

/** bars of a code that leave a letter blank which another of them gives */
const FEWEST_WITHOUT = 2;

/** A bar's code and the letters that it gives beyond those that the code takes: "11 C"; empty where it has no code. */
export function codeAndExtra({ definition, row }: BarFacts): string {
  if (definition === null || definition.dims.length === 0) return "";
  const { dims, optionalDims } = definition;
  let extra = "";
  for (const [column, value] of row.dims.entries()) {
    const letter = DIMENSION_LETTERS[column];
    if (value === null || value === 0 || letter === undefined) continue;
    if (!dims.includes(letter) && !optionalDims?.includes(letter)) extra += letter;
  }
  return `${definition.code} ${extra}`;
}

/** Letters that one bar alone of a code gives beyond what the code takes, each with its code: "|11:C|". */
export function strayLetters(bars: readonly BarFacts[]): string {
  const byCode = new Map<string, { bars: number; extra: Map<string, number> }>();
  for (const facts of bars) {
    const [code = "", letters = ""] = codeAndExtra(facts).split(" ");
    if (code === "") continue;
    const of = byCode.get(code) ?? { bars: 0, extra: new Map<string, number>() };
    of.bars += 1;
    for (const letter of letters) of.extra.set(letter, (of.extra.get(letter) ?? 0) + 1);
    byCode.set(code, of);
  }
  const strays = [...byCode].flatMap(([code, of]) =>
    [...of.extra].flatMap(([letter, given]) =>
      given === 1 && of.bars - given >= FEWEST_WITHOUT ? `${code}:${letter}` : [],
    ),
  );
  return strays.length === 0 ? "" : `|${strays.join("|")}|`;
}
