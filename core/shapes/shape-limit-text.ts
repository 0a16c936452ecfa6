import type { Citation } from "../standards/citation";
import { type Formula, formula } from "./formula";

type LimitRelation = ">=" | "<=" | ">" | "=";

/** One comparison of a printed limit: one dim against one bound. */
export interface CompiledLimit {
  /** the limit as printed, of which this is one part */
  readonly text: string;
  /** the dim's letter, without brackets */
  readonly letter: string;
  readonly actual: Formula;
  readonly relation: LimitRelation;
  readonly bound: Formula;
  readonly cite: Citation | null;
}

/**
 * The comparisons of a limit as a standard prints it: "A, (C) >= P" is two, "(C) <= A or B" is two.
 * Throws for a text that is no limit: limits are data of ours.
 */
export function compileLimits(text: string, cite: Citation | null = null): CompiledLimit[] {
  const [, left, relation, right] = /^(.+?)\s*(>=|<=|>|=)\s*(.+)$/.exec(text) ?? [];
  if (left === undefined || right === undefined) throw new Error(`"${text}" is no limit`);
  return left.split(",").flatMap((dim) =>
    right.split(" or ").map((bound) => ({
      text,
      letter: dim.replace(/[()\s]/g, ""),
      actual: formula(dim.trim()),
      relation: relation as LimitRelation,
      bound: formula(bound.trim()),
      cite,
    })),
  );
}
