import { counted } from "../units/counted";
import type { LengthUnit } from "../units/length-unit";
import { printLength } from "../units/print-length";
import { defineRefusal, isRefusal } from "../units/refusal";
import type { CutRow, RefusedRow } from "./cut-row";
import { type CuttingQuestion, longestStock, type Stock } from "./cutting-question";
import { planCutting } from "./plan-cutting";

const CODE = "rows-want-stock";
const wantStock = defineRefusal(
  CODE,
  "value",
  "{short} of {count} bars want stock: {held} held, {more} needed{all}: order them, or {say}",
);

/** Rows as far as the bars held give them, and what of each is left over for want of stock. */
export interface RowsOfStock<Row> {
  readonly rows: readonly Row[];
  readonly refused: readonly (Row & Pick<RefusedRow, "longestStock" | "reason">)[];
}

type Piece = Pick<CutRow, "length" | "count">;

/** True of bars that no plan has because too few of their stock are held. */
export const isShort = ({ reason }: Pick<RefusedRow, "reason">): boolean => reason.code === CODE;

/**
 * Shares rows out where the bars held do not suffice: to as few more bars of the longest stock as the rows
 * need go the pieces that are short, the last rows of a length first. Null where it cannot be found.
 *
 * @param say what else than an order helps
 */
export function rowsOfStock<Row extends Piece>(
  rows: readonly Row[],
  question: Omit<CuttingQuestion, "pieces">,
  unit: LengthUnit,
  say = "write more bars on the Shop sheet",
): RowsOfStock<Row> | null {
  const { stock, endCrop, kerf } = question;
  const longest = longestStock(stock);
  // what is held costs nothing beside what is wanted
  const held = stock.map((line) => ({ ...line, remnant: true }));
  const wanted: Stock = { length: longest, count: null, remnant: false };
  const plan = planCutting({ ...question, pieces: rows, stock: [...held, wanted] });
  if (isRefusal(plan)) return null;
  const more = plan.barsBought;
  const short = new Map<number, number>();
  for (const { remnant, cuts, times } of plan.patterns)
    if (!remnant)
      for (const { length, count } of cuts) short.set(length, (short.get(length) ?? 0) + count * times);
  fillRests(short, roomsOf(plan.patterns, held, endCrop), kerf);
  const left = [...short].map(([length, count]) => ({ length, count }));
  const shortOf = new Map<Row, number>();
  for (const row of [...rows].reverse()) {
    const own = left.find(({ length, count }) => count > 0 && Math.abs(length - row.length) < SAME);
    if (own === undefined) continue;
    const taken = Math.min(own.count, row.count);
    own.count -= taken;
    if (taken > 0) shortOf.set(row, taken);
  }
  if (shortOf.size === 0) return null;
  const all = shortOf.size === 1 ? "" : " for all rows of the size";
  return {
    rows: rows.flatMap((row) => {
      const count = row.count - (shortOf.get(row) ?? 0);
      return count === 0 && row.count > 0 ? [] : [{ ...row, count }];
    }),
    refused: rows.flatMap((row) => {
      const count = shortOf.get(row);
      if (count === undefined) return [];
      const reason = wantStock({
        ...{ short: count, count: row.count, all, say, held: heldWords(row, question, unit) },
        more: `${counted(more, "more bar")} of ${printLength(longest, unit)} ${more === 1 ? "is" : "are"}`,
      });
      return [{ ...row, count, longestStock: longest, reason }];
    }),
  };
}

/** mm: the noise of kerfs taken on and off a length */
const SAME = 1e-4;

interface Room {
  room: number;
  readonly bars: number;
}

/** What is left of the bars held: rests of those that are cut, and bars that are not. */
function roomsOf(
  patterns: readonly { stock: number; remnant: boolean; times: number; offcut: number }[],
  held: readonly Stock[],
  endCrop: number,
): Room[] {
  const used = patterns.filter(({ remnant }) => remnant);
  const rests = used.map(({ offcut, times }) => ({ room: offcut, bars: times }));
  const lengths = new Set(held.map(({ length }) => length));
  const whole = [...lengths].map((length) => {
    const lines = held.filter((line) => line.length === length);
    const bars = lines.reduce((sum, { count }) => sum + (count ?? 0), 0);
    const cut = used.filter(({ stock }) => stock === length).reduce((sum, { times }) => sum + times, 0);
    return { room: length - endCrop, bars: Math.max(0, bars - cut) };
  });
  return [...rests, ...whole].filter(({ bars }) => bars > 0);
}

/** Takes back from what is short what a rest still gives, the longest first. */
function fillRests(short: Map<number, number>, rooms: readonly Room[], kerf: number): void {
  for (const [length, asked] of [...short].sort(([one], [other]) => other - one)) {
    let count = asked;
    for (const one of rooms) {
      const taken = Math.min(count, Math.floor(one.room / (length + kerf)) * one.bars);
      count -= taken;
      one.room -= Math.ceil(taken / one.bars) * (length + kerf);
    }
    short.set(length, count);
  }
}

/** "20 bars of 12000 mm are" */
function heldWords(
  { length }: Piece,
  { stock, endCrop }: Omit<CuttingQuestion, "pieces">,
  unit: LengthUnit,
): string {
  const bars = new Map<number, number>();
  for (const line of stock)
    if (line.count !== null && line.length - endCrop + SAME >= length)
      bars.set(line.length, (bars.get(line.length) ?? 0) + line.count);
  const words = [...bars].map(([of, count]) => `${counted(count, "bar")} of ${printLength(of, unit)}`);
  const isOne = bars.size === 1 && [...bars.values()][0] === 1;
  return `${words.join(" and ")} ${isOne ? "is" : "are"}`;
}
