import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { FoundColumn } from "./header-blocks";
import type { HeaderSource } from "./header-source";

/** rows under a header whose cells help to say what its words mean */
export const SAMPLED_TYPES = 12;
const STRAIGHT = /^(?:str|straight|bent|st|s)$/i;

const LABEL = /^\p{L}{1,3}\d{1,4}\p{L}?$/u;

/** "N" or "No." over labels such as N1, N2 heads marks and numbers no rows. */
export function serialsByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "mark")) return;
  const index = columns.findIndex(({ meaning, corrected }) => meaning?.serial === true && !corrected);
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts: string[] = [];
  for (let row = bottom + 1; row < Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES); row += 1) {
    const cell = source.cells(row)[one.column];
    if (typeof cell === "string" && cell.trim() !== "") texts.push(cleanText(cell));
  }
  if (texts.length < 2 || texts.filter((text) => LABEL.test(text)).length * 2 <= texts.length) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "mark", serial: false, weak: false } };
}

/** "R1", "Lot 2", "3": the number of a delivery, which no date and no word for yes is */
const LOT = /^(?:(?:r|l|rel\.?|lot|release)\s?-?)?\d{1,2}$/i;

/** "Release" over R1, R2 names the lots in which the bars go out and says of none that it is released. */
export function lotsByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "pour")) return;
  const index = columns.findIndex(
    ({ meaning, header, corrected }) =>
      meaning?.kind === "released" && !corrected && /^release(?: no\.?)?$/i.test(cleanText(header)),
  );
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts: string[] = [];
  for (let row = bottom + 1; row < Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES); row += 1) {
    const cell = source.cells(row)[one.column];
    if (typeof cell === "string" || typeof cell === "number") texts.push(cleanText(String(cell)));
  }
  const lots = texts.filter((text) => LOT.test(text));
  // a column of "1" alone, or of 1 and 0, says yes and no
  const isFlag = lots.every((text) => /^[01]$/.test(text));
  if (isFlag || lots.length < 2 || lots.length * 2 <= texts.filter((text) => text !== "").length) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "pour" } };
}

const LEAST_NUMBERED = 4;
const RUNNING = 0.8;

/** "No." over 1, 2, 3 and so on numbers the rows, where another column counts the bars. */
export function rowNumbersByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  const counts = columns.filter(({ meaning, corrected }) => meaning?.kind === "total" && !corrected);
  const isCounted = counts.length > 1 || columns.some(({ meaning }) => meaning?.kind === "each");
  if (!isCounted) return;
  const hasMark = columns.some(({ meaning }) => meaning?.kind === "mark");
  for (const one of counts) {
    // "Total no." numbers none, whatever stands under it
    if (one.meaning?.weak !== true) continue;
    const numbers: number[] = [];
    for (let row = bottom + 1; row < Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES); row += 1) {
      const cell = source.cells(row)[one.column];
      if (typeof cell === "number") numbers.push(cell);
    }
    const steps = numbers.filter((number, at) => at > 0 && number === (numbers[at - 1] as number) + 1).length;
    if (numbers.length < LEAST_NUMBERED || steps < RUNNING * (numbers.length - 1)) continue;
    const kind = hasMark ? "ignored" : "mark";
    const meaning = { ...(one.meaning as NonNullable<FoundColumn["meaning"]>), kind, weak: false } as const;
    columns[columns.indexOf(one)] = { ...one, meaning };
    return;
  }
}

/** "Bar type" may hold grades, sizes or shapes: where no other column is for them, its first cells tell. */
export function typesByContent(
  columns: FoundColumn[],
  source: HeaderSource,
  bottom: number,
  standard: Standard,
): void {
  const kinds = columns.map(({ meaning }) => meaning?.kind);
  const index = columns.findIndex(
    ({ meaning, header, corrected }) => meaning?.kind === "grade" && !corrected && /typ/i.test(header),
  );
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts: string[] = [];
  for (let row = bottom + 1; row < Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES); row += 1) {
    const cell = source.cells(row)[one.column];
    if (typeof cell === "string" && cell.trim() !== "") texts.push(cleanText(cell));
  }
  const most = (is: (text: string) => boolean) => texts.filter(is).length * 2 > texts.length;
  if (!kinds.includes("size") && most((text) => /\d/.test(text) && isBarSize(text, standard))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "size" } };
  } else if (!kinds.includes("shape") && most((text) => STRAIGHT.test(text))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "shape" } };
  }
}

export function isBarSize(typed: string | number, standard: Standard): boolean {
  if (typeof typed === "string" && typed.length > LONGEST_VALUE) return false;
  const reading = standard.readSize(typed);
  return !isRefusal(reading) && reading.bar !== null;
}
