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
  "a length of {length} mm cannot be cut: give a length above 0",
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
  "a piece of {length} mm is longer than the {usable} mm that the longest stock gives: order longer stock, or ask the designer for a lap",
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
  const { pieces, stock, endCrop, kerf } = question;
  if (!(endCrop >= 0)) return badLoss({ name: "an end crop", value: endCrop });
  if (!(kerf >= 0)) return badLoss({ name: "a kerf", value: kerf });
  if (stock.length === 0) return noStock({});
  let usable = 0;
  for (const bar of stock) {
    if (!isLength(bar.length)) return badStockLength({ length: bar.length });
    if (bar.count !== null && !isCount(bar.count)) return badCount({ count: bar.count });
    if (bar.length <= endCrop && !bar.remnant) return stockTooShort({ stock: bar.length, crop: endCrop });
    if (bar.count !== 0) usable = Math.max(usable, bar.length - endCrop);
  }
  for (const piece of pieces) {
    if (!isLength(piece.length)) return badLength({ length: piece.length });
    if (!isCount(piece.count)) return badCount({ count: piece.count });
    if (piece.count > 0 && piece.length > usable + LENGTH_TOLERANCE)
      return pieceTooLong({ length: piece.length, usable });
  }
  return null;
}

/** mm: below what any tape or stop can tell, above the noise of inch conversions. */
const LENGTH_TOLERANCE = 1e-6;
