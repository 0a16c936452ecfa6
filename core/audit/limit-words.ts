import type { Limits } from "./limits";

/** A figure that a workbook may change, as it is shown, in the order in which they are. */
export interface LimitWords {
  readonly name: keyof Limits;
  readonly words: string;
  readonly unit: "kg" | "mm";
}

export const LIMIT_WORDS: readonly LimitWords[] = [
  { name: "handLift", words: "Lifted by hand up to", unit: "kg" },
  { name: "hoist", words: "Crane or hoist lifts", unit: "kg" },
  { name: "stockLength", words: "Longest stock length", unit: "mm" },
  { name: "transportWidth", words: "Widest for transport", unit: "mm" },
  { name: "accessWidth", words: "Narrowest access on site", unit: "mm" },
];
