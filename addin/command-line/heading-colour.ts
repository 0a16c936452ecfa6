import { styleText } from "node:util";

/** How much a heading's lines weigh. */
export type Weight = "grave" | "contrary" | "lesser";

const COLOURS = { grave: ["bold", "red"], contrary: ["yellow"], lesser: ["cyan"] } as const;

/** Colour goes to a terminal alone, and nowhere where NO_COLOR says anything (no-color.org). */
export function isColoured(
  { isTTY }: { readonly isTTY?: boolean },
  environment: Readonly<Record<string, string | undefined>>,
): boolean {
  return isTTY === true && (environment.NO_COLOR ?? "") === "" && environment.TERM !== "dumb";
}

/** The text in the colour of its weight. */
export function coloured(text: string, weight: Weight): string {
  let styled = text;
  for (const format of COLOURS[weight]) styled = styleText(format, styled, { validateStream: false });
  return styled;
}
