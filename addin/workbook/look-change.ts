export type Side = "top" | "right" | "bottom" | "left";

/** One edge of a cell: a style's name as files write it, and "#rrggbb". */
export interface Edge {
  readonly style: string;
  readonly colour: string | null;
}

/** What of a cell's look is to be another; what is not named stays. null is none, or the automatic one. */
export interface LookChange {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly fontName?: string | null;
  /** points */
  readonly fontSize?: number | null;
  readonly fontColour?: string | null;
  readonly fill?: string | null;
  readonly numberFormat?: string;
  readonly horizontal?: string | null;
  readonly vertical?: string | null;
  readonly wrap?: boolean;
  /** as files count it: 0 to 90 upward, 91 to 180 downward, 255 one above the other */
  readonly rotation?: number;
  readonly borders?: Readonly<Partial<Record<Side, Edge | null>>>;
}
