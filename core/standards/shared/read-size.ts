import { type SizeText, splitSizeText } from "../../bars/split-size-text";
import { fromMillimetres, toMillimetres } from "../../units/convert-length";
import { defineRefusal, type Refusal } from "../../units/refusal";
import type { Bar, SizeReading } from "../port";
import { FOREIGN_SIZE_STEP, LARGEST_DIAMETER, LARGEST_DIAMETER_INCHES } from "./foreign-sizes.data";
import { nearestBars } from "./nearest-bars";
import { ANSWERS_REMEMBERED } from "./remembered.data";
import type { StandardTables } from "./standard-tables";

const sizeUnread = defineRefusal(
  "size-unread",
  "value",
  `size "{typed}" is no bar size: {standard} reads sizes such as {example}`,
);
const sizeNotHeld = defineRefusal(
  "size-not-held",
  "not-held",
  `size "{typed}" is no bar of {standard}: the nearest that it holds is {nearest}`,
);
export const prefixNotHeld = defineRefusal(
  "size-prefix-not-held",
  "not-held",
  `size "{typed}" has the letter {prefix}, which {standard} does not hold ({letters}): the nearest bar that it holds is {nearest}`,
);
const diameterTooLarge = defineRefusal(
  "diameter-too-large",
  "value",
  `size "{typed}" is no bar diameter: {standard} reads a number up to {limit} {unit}; the nearest bar that it holds is {nearest}`,
);

/** Reads the sizes of one standard; texts already read come from memory. */
export function sizeReader(tables: StandardTables, bars: readonly Bar[]) {
  const remembered = new Map<string | number, SizeReading | Refusal>();
  const barNamed = new Map(bars.map((bar) => [bar.size.toUpperCase(), bar]));
  const barNumbered = new Map(
    bars.map((bar) => [splitSizeText(bar.size)?.number ?? 0, bar] as const).reverse(),
  );
  const barThick = new Map(bars.map((bar) => [fromMillimetres(bar.diameter, tables.unit), bar]));
  const letters = new Set(lettersOf(tables, bars));
  const prefixes = new Set([...letters, ...gradeNames(tables)]);
  const example = bars[Math.floor(bars.length / 2)]?.size ?? "";
  const { id, unit, sizesInMillimetres, anyTypeLetters } = tables;

  return (typed: string | number): SizeReading | Refusal => {
    const known = remembered.get(typed);
    if (known !== undefined) return known;
    if (remembered.size >= ANSWERS_REMEMBERED) remembered.clear();
    const reading = read(typed);
    remembered.set(typed, reading);
    return reading;
  };

  function read(typed: string | number): SizeReading | Refusal {
    const text = String(typed);
    const bar = barNamed.get(text.trim().toUpperCase());
    const parts = splitSizeText(text);
    if (parts === null || !Number.isFinite(parts.number)) return sizeUnread({ typed, standard: id, example });
    if (bar !== undefined) return { typed: text, diameter: bar.diameter, bar, prefix: letterOf(parts) };
    if (parts.prefix === "" && parts.suffix !== "M") return plainNumber(text, parts);
    return namedSize(text, parts);
  }

  /** A number alone: the bar of that number or diameter, else any diameter. */
  function plainNumber(typed: string, { number, suffix }: SizeText): SizeReading | Refusal {
    const inMillimetres = suffix === "MM" && !sizesInMillimetres;
    const thickness = inMillimetres ? fromMillimetres(number, unit) : number;
    const bar = (inMillimetres ? undefined : barNumbered.get(number)) ?? barThick.get(thickness);
    if (bar !== undefined) return { typed, diameter: bar.diameter, bar, prefix: "" };
    const limit = unit === "mm" ? LARGEST_DIAMETER : LARGEST_DIAMETER_INCHES;
    if (thickness > limit) {
      return diameterTooLarge({ typed, standard: id, limit, unit, nearest: nearestBars(bars, number) });
    }
    return {
      typed,
      diameter: inMillimetres ? number : toMillimetres(thickness, unit),
      bar: null,
      prefix: "",
    };
  }

  function namedSize(typed: string, parts: SizeText): SizeReading | Refusal {
    const prefix = letterOf(parts);
    const { number } = parts;
    const named = barNamed.get(`${parts.prefix}${number}${parts.suffix}`);
    const bar = named ?? (parts.suffix === "M" || parts.prefix === "#" ? undefined : barNumbered.get(number));
    const nearest = nearestBars(bars, roughDiameter(parts));
    const isHeld = prefix === "" || prefixes.has(prefix) || (anyTypeLetters === true && prefix.length <= 2);
    if (named === undefined && !isHeld) {
      const held = letters.size === 0 ? "it has none" : `it has ${[...letters].join(", ")}`;
      return prefixNotHeld({ typed, prefix, standard: id, letters: held, nearest });
    }
    if (bar === undefined) return sizeNotHeld({ typed, standard: id, nearest });
    return { typed, diameter: bar.diameter, bar, prefix };
  }

  function letterOf({ prefix }: SizeText): string {
    return prefix === "#" ? "" : prefix;
  }

  function roughDiameter({ prefix, number }: SizeText): number {
    return number * (prefix === "#" ? FOREIGN_SIZE_STEP.eighthInch : FOREIGN_SIZE_STEP.metric);
  }
}

/** Type letters, and the letters of the bars' own names. */
function lettersOf({ grades }: StandardTables, bars: readonly Bar[]): string[] {
  const ofBars = bars.map((bar) => splitSizeText(bar.size)?.prefix ?? "");
  const letters = [...ofBars, ...grades.flatMap((grade) => grade.prefixes)];
  return letters.filter((letter) => letter !== "" && letter !== "#");
}

/** Grades that are written before a size, as "B500B 16" or "Fe 500 16". */
function gradeNames({ grades }: StandardTables): string[] {
  return grades.map((grade) => grade.name.toUpperCase().replace(/\s/g, ""));
}
