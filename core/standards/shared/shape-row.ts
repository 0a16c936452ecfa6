import type { Citation } from "../citation";
import type { ShapeDefinition } from "../port";

/** A shape as a document's table has it, without the sources of its parts. */
export interface ShapeRow extends Omit<ShapeDefinition, "cite" | "course" | "limits"> {
  /** as printed: "A, (C) >= P" */
  readonly limits: readonly string[];
  /** Sources differ about the printed formula: what was decided, and why. */
  readonly formulaConflict?: string;
  /** The drawing would bear another course, or another meaning of a letter. */
  readonly courseConflict?: string;
}

/** Where the parts of a table of shapes come from. */
export interface ShapeSources {
  readonly formula: Citation;
  /** of bars with a bend; a straight, a ring or a helix is said by its formula */
  readonly course: Citation;
  readonly limits: Citation;
  /** a limit that stands elsewhere, by code and text: "24 A, (C) >= P" */
  readonly limitElsewhere?: Readonly<Record<string, Citation>>;
}

const BENT = /[+-](\d|[tu(])/;

/** The shapes of one document, each part with its own source. */
export function shapesOf(rows: readonly ShapeRow[], sources: ShapeSources): readonly ShapeDefinition[] {
  return rows.map(({ formulaConflict, courseConflict, limits, ...shape }) => ({
    ...shape,
    limits: limits.map((text) => ({
      text,
      cite: sources.limitElsewhere?.[`${shape.code} ${text}`] ?? sources.limits,
    })),
    cite: ofCode(sources.formula, shape.code, formulaConflict),
    ...(shape.path !== null && BENT.test(shape.path)
      ? { course: ofCode(sources.course, shape.code, courseConflict) }
      : {}),
  }));
}

function ofCode(cite: Citation, code: string, conflict: string | undefined): Citation {
  if (conflict === undefined) return cite;
  return { ...cite, clause: `${cite.clause ?? "shapes"}, code ${code}`, conflict };
}
