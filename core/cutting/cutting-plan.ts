/** How one stock bar is cut, and how often. */
export interface CuttingPattern {
  /** mm, stock length */
  readonly stock: number;
  readonly remnant: boolean;
  /** longest first */
  readonly cuts: readonly { readonly length: number; readonly count: number }[];
  readonly times: number;
  /** mm left of each bar after crop, pieces and kerfs */
  readonly offcut: number;
}

export interface CuttingPlan {
  readonly patterns: readonly CuttingPattern[];
  /** stock bars used, remnants among them */
  readonly bars: number;
  /** stock bars bought; remnants on hand are not bought */
  readonly barsBought: number;
  /** mm of stock bought; remnants on hand are not bought */
  readonly stockLength: number;
  /** mm of stock used, remnants among them */
  readonly usedLength: number;
  /** no plan can do with less bought: bars where one stock length is sold, else mm bought */
  readonly lowerBound: number;
  readonly boundIn: "bars" | "mm";
  /** bars bought (or mm bought) equal the bound */
  readonly provenLeast: boolean;
  /** the clock ended the search before its work was done: asked again, the plan may differ */
  readonly isCutShort: boolean;
  /** ms of the time limit that the search was worth, by the work it did */
  readonly effort: number;
  /** pieces cut */
  readonly pieces: number;
  /** (stock used - pieces) / stock used */
  readonly wasteRatio: number;
  /** the plain rule beside it: longest piece first into the first bar that has room */
  readonly firstFit: { readonly bars: number; readonly stockLength: number };
}
