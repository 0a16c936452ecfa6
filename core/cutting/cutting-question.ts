import type { LengthUnit } from "../units/length-unit";
import { printLength } from "../units/print-length";
import { defineRefusal, type Refusal } from "../units/refusal";

/** Pieces of one length. */
export interface Piece {
  /** mm, cut length */
  readonly length: number;
  readonly count: number;
}

/** Bars to cut from. */
export interface Stock {
  /** mm */
  readonly length: number;
  /** bars at hand or on offer; null is as many as needed */
  readonly count: number | null;
  /** A remnant on hand costs nothing to buy. */
  readonly remnant: boolean;
  /** number of the mill's certificate; null or nothing where it is not written down */
  readonly heat?: string | null;
}

/** One size and grade to be cut. Nothing is split or lapped: that is the designer's to say. */
export interface CuttingQuestion {
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  /** mm taken off each stock bar before the first piece; 0 where ends are clean */
  readonly endCrop: number;
  /** mm lost in each cut; 0 for a shear */
  readonly kerf: number;
  /** ms after which the best plan so far is given with its bound */
  readonly timeLimit: number;
}

const badLength = defineRefusal(
  "cut-length-not-positive",
  "value",
  "a length of {length} cannot be cut: give a length above 0",
);
const badCount = defineRefusal(
  "cut-count-not-whole",
  "value",
  "a count of {count} is no number of bars: give a whole number, 0 or more",
);
const noStock = defineRefusal(
  "no-stock",
  "value",
  "no stock length is given: name at least one, such as 12000",
);
const stockTooShort = defineRefusal(
  "stock-shorter-than-crop",
  "value",
  "stock of {stock} mm leaves nothing after an end crop of {crop} mm: leave it out or lower the crop",
);
const pieceTooLong = defineRefusal(
  "piece-longer-than-stock",
  "value",
  "a piece of {length} is longer than the {usable} that the longest stock gives: order longer stock, or ask the designer for a lap",
);
const pieceTooLongCropped = defineRefusal(
  "piece-longer-than-cropped-stock",
  "value",
  "a piece of {length} is longer than the {usable} that the longest stock gives, {stock} less the end crop: order longer stock, or ask the designer for a lap",
);
const badLoss = defineRefusal(
  "cutting-loss-negative",
  "value",
  "{name} of {value} mm is below 0: give 0 or more",
);
const badStockLength = defineRefusal(
  "stock-length-not-positive",
  "value",
  "a stock length of {length} mm is no bar: give a length above 0",
);

const isLength = (value: number): boolean => Number.isFinite(value) && value > 0;
const isCount = (value: number): boolean => Number.isInteger(value) && value >= 0;

/** The first reason why this cannot be planned, or null. */
export function questionRefusal(question: CuttingQuestion): Refusal | null {
  const refusal = stockRefusal(question);
  if (refusal !== null) return refusal;
  for (const piece of question.pieces) {
    const ofPiece = pieceRefusal(piece, question);
    if (ofPiece !== null) return ofPiece;
  }
  return null;
}

/** Why nothing can be cut from this stock, whatever the pieces; null where it can. */
export function stockRefusal({ stock, endCrop, kerf }: Omit<CuttingQuestion, "pieces">): Refusal | null {
  if (!(endCrop >= 0)) return badLoss({ name: "an end crop", value: endCrop });
  if (!(kerf >= 0)) return badLoss({ name: "a kerf", value: kerf });
  if (stock.length === 0) return noStock({});
  for (const bar of stock) {
    if (!isLength(bar.length)) return badStockLength({ length: bar.length });
    if (bar.count !== null && !isCount(bar.count)) return badCount({ count: bar.count });
    if (bar.length <= endCrop && !bar.remnant) return stockTooShort({ stock: bar.length, crop: endCrop });
  }
  return null;
}

/**
 * Why a piece is no piece or no bar of the stock gives it, in words of `unit`; null where one does. It is
 * never split.
 */
export function pieceRefusal(
  { length, count }: Piece,
  { stock, endCrop }: Pick<CuttingQuestion, "stock" | "endCrop">,
  unit: LengthUnit = "mm",
): Refusal | null {
  const words = (mm: number): string => (Number.isFinite(mm) ? printLength(mm, unit) : `${mm} mm`);
  if (!isLength(length)) return badLength({ length: words(length) });
  if (!isCount(count)) return badCount({ count });
  const longest = longestStock(stock);
  if (count === 0 || length <= longest - endCrop + LENGTH_TOLERANCE) return null;
  const usable = words(longest - endCrop);
  return endCrop > 0
    ? pieceTooLongCropped({ length: words(length), usable, stock: words(longest) })
    : pieceTooLong({ length: words(length), usable });
}

/** mm of the longest bar of which there is one, else of which none is left; 0 where there is none. */
export function longestStock(stock: readonly Stock[]): number {
  const longest = (lines: readonly Stock[]): number =>
    lines.reduce((most, { length }) => Math.max(most, length), 0);
  return longest(stock.filter(({ count }) => count !== 0)) || longest(stock);
}

/** mm: below what any tape or stop can tell, above the noise of inch conversions. */
const LENGTH_TOLERANCE = 1e-6;
