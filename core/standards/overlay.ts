import type { Citation } from "./citation";
import { TABLE_NAMES } from "./figure-words.data";
import { type Figure, figuresOf, isUnsure, type LineChange, withLines } from "./figures";
import type { LookedUp, OwnFigure, OwnStandard } from "./own-standard";
import type { ShapeDefinition } from "./port";
import type { StandardTables } from "./shared/standard-tables";

/**
 * A document with what its owner looked up: equal figures are confirmed by that person on that date,
 * different ones are the owner's and in force; own shape codes join its own. A line of several figures is
 * raised when all of them were looked up.
 */
export function withOwn(tables: StandardTables, own: OwnStandard): StandardTables {
  const looked = new Map(
    own.figures.filter(({ standard }) => standard === tables.id).map((one) => [one.figure, one]),
  );
  const joined = joinShapes(tables, own);
  if (looked.size === 0) return joined;
  const figures = figuresOf(joined);
  const changed = withLines(joined, changesOf(figures, looked));
  return { ...changed, caution: remaining(tables.caution, figures, figuresOf(changed)) };
}

function joinShapes(tables: StandardTables, { shapes }: OwnStandard): StandardTables {
  const added = shapes
    .filter(({ standard }) => standard === null || standard === tables.id)
    .map(({ shape }) => shape)
    .filter(({ code }) => tables.shapes.every((held) => held.code !== code));
  return added.length === 0 ? tables : { ...tables, shapes: [...tables.shapes, ...distinct(added)] };
}

function distinct(shapes: readonly ShapeDefinition[]): ShapeDefinition[] {
  return [...new Map(shapes.map((shape) => [shape.code, shape])).values()];
}

function changesOf(
  figures: readonly Figure[],
  looked: ReadonlyMap<string, OwnFigure>,
): ReadonlyMap<string, LineChange> {
  const lines = new Map<string, Figure[]>();
  for (const figure of figures) lines.set(figure.line, [...(lines.get(figure.line) ?? []), figure]);
  const changes = new Map<string, LineChange>();
  for (const [line, ofLine] of lines) {
    const found = ofLine.flatMap((figure) => looked.get(figure.name) ?? []);
    const [first] = found;
    if (first === undefined) continue;
    const columns = Object.fromEntries(
      ofLine.map((figure) => [figure.column, looked.get(figure.name)?.value ?? figure.value]),
    );
    changes.set(line, { columns, cite: citeOf(ofLine, looked, first) });
  }
  return changes;
}

function citeOf(
  line: readonly Figure[],
  looked: ReadonlyMap<string, OwnFigure>,
  { by, on }: LookedUp,
): Citation {
  const { conflict, seen: _, ...cite } = line[0]!.cite;
  const replaced = line.filter(({ name, value }) => looked.has(name) && looked.get(name)?.value !== value);
  const missing = line.filter(({ name }) => !looked.has(name));
  const was = replaced.map(({ value }) => String(value)).join(", ");
  const all = missing.length === 0;
  if (all && replaced.length === 0) return { ...cite, provenance: "confirmed", by, on };
  if (all) return { ...cite, provenance: "own", by, on, was };
  const part = `${line.length - missing.length} of ${line.length} figures of this line were looked up by ${by}, ${on}`;
  return { ...cite, conflict: conflict === undefined ? part : `${conflict}; ${part}` };
}

/** What is still to be known before the edition is relied on; nothing once every figure was looked up. */
function remaining(
  caution: string | null,
  before: readonly Figure[],
  after: readonly Figure[],
): string | null {
  if (caution === null) return null;
  const unsure = after.filter(isOpen).length;
  const all = before.filter(isOpen).length;
  return unsure === 0 ? null : `${caution}; ${unsure} of ${all} figures are not confirmed yet`;
}

/** What the design code beside it asks is no matter of the edition's own text. */
function isOpen({ line, cite }: Figure): boolean {
  return isUnsure(cite) && !line.startsWith(TABLE_NAMES.detailing);
}
