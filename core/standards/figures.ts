import type { Citation, Cited, PrintedTable } from "./citation";
import { COLUMN_NAMES, CONDITION_NAMES, TABLE_NAMES } from "./figure-words.data";
import type { ShapeDefinition } from "./port";
import { rowCitation } from "./shared/row-citation";
import type { StandardTables } from "./shared/standard-tables";

/** One figure, formula, course or limit that a document decides, where its owner may look it up. */
export interface Figure {
  /** unique within the document: "former: up to 16 mm, diameters" */
  readonly name: string;
  /** in the document's unit */
  readonly value: number | string;
  readonly cite: Citation;
  /** of the line that it stands in: figures of one line have one trust */
  readonly line: string;
  /** of the line, as the tables name it */
  readonly column: string;
}

type Row = Readonly<Record<string, unknown>>;

/** Every figure that decides a length, a mass, a former, a shape or a limit, in the order of the document. */
export function figuresOf(tables: StandardTables): readonly Figure[] {
  const figures: Figure[] = [];
  walk(tables, (line, columns, cite) => {
    for (const [column, value] of columns) {
      figures.push({ name: nameOf(line, column), value, cite, line, column });
    }
  });
  return figures;
}

/** True of a figure that nobody has surely read: the owner of the document may raise it. */
export function isUnsure({ provenance, conflict }: Citation): boolean {
  return (
    provenance === "memory" ||
    provenance === "derived" ||
    (provenance === "published" && conflict !== undefined)
  );
}

/** A change of one line: its columns, and where they come from now. */
export interface LineChange {
  readonly columns: Row;
  readonly cite: Citation;
}

/** The same tables with some lines changed; lines go by the name that `figuresOf` gives them. */
export function withLines(tables: StandardTables, changes: ReadonlyMap<string, LineChange>): StandardTables {
  return walk(tables, () => undefined, changes);
}

type Visit = (line: string, columns: readonly (readonly [string, number | string])[], cite: Citation) => void;

const COLUMNS: ReadonlyMap<string, string> = new Map(Object.entries(COLUMN_NAMES));

/** Visits every line once, and gives the tables back with the changed ones in place. */
function walk(
  tables: StandardTables,
  visit: Visit,
  changes: ReadonlyMap<string, LineChange> = new Map(),
): StandardTables {
  const seen = new Map<string, number>();
  const line = (words: string, row: Row, cite: Citation): Row => {
    const times = (seen.get(words) ?? 0) + 1;
    seen.set(words, times);
    const name = times === 1 ? words : `${words} (${times})`;
    const columns = Object.entries(row).filter(isFigure);
    visit(name, columns, cite);
    const change = changes.get(name);
    if (change === undefined) return row;
    const { conflict: _, ...rest } = row;
    return { ...rest, ...change.columns, cite: change.cite };
  };
  const printed = <R extends object>(what: string, table: PrintedTable<R>): PrintedTable<R> => ({
    cite: table.cite,
    rows: table.rows.map((row) => {
      const words = `${what}${conditionOf(row as Row)}`;
      return line(words, row as Row, rowCitation(table.cite, row as { conflict?: string })) as R;
    }),
  });
  const each = <R extends object>(what: string, list: readonly PrintedTable<R>[]) =>
    list.map((table) => printed(what, table));
  const cited = <V>(what: string, one: Cited<V> | null): Cited<V> | null => {
    if (one === null || typeof one.value === "object") return one;
    const changed = line(what, { value: one.value }, one.cite);
    return { value: changed["value"] as V, cite: (changed["cite"] as Citation | undefined) ?? one.cite };
  };
  const names = TABLE_NAMES;
  const rounding = line(
    names.lengthRounding,
    { step: tables.lengthRounding.step },
    tables.lengthRounding.cite,
  );
  return {
    ...tables,
    bars: each(names.bars, tables.bars),
    grades: tables.grades.map((grade) => {
      const words = `${names.grades}: ${grade.name}`;
      const changed = line(words, { yield: grade.yield, letters: grade.prefixes.join(", ") }, grade.cite);
      const letters = String(changed["letters"]).split(",");
      const prefixes = letters.map((letter) => letter.trim()).filter((letter) => letter !== "");
      return {
        ...grade,
        prefixes,
        yield: changed["yield"] as number,
        cite: (changed["cite"] as Citation) ?? grade.cite,
      };
    }),
    formers: each(names.formers, tables.formers),
    formulaRadii: tables.formulaRadii && printed(names.formulaRadii, tables.formulaRadii),
    endLegs: each(names.endLegs, tables.endLegs),
    hooks: each(names.hooks, tables.hooks),
    allowances: tables.allowances && printed(names.allowances, tables.allowances),
    shapes: tables.shapes.map((shape) => shapeLines(shape, line)),
    lengthRounding: {
      ...tables.lengthRounding,
      step: rounding["step"] as number,
      cite: (rounding["cite"] as Citation | undefined) ?? tables.lengthRounding.cite,
    },
    dimensionStep: cited(names.dimensionStep, tables.dimensionStep),
    straightBetweenBends: cited(names.straightBetweenBends, tables.straightBetweenBends),
    manyBends: cited(names.manyBends, tables.manyBends),
    tolerances: tables.tolerances && toleranceLines(tables.tolerances, line),
    coldBending: cited(names.coldBending, tables.coldBending),
    rebending: cited(names.rebending, tables.rebending),
    straightSupplyRadius:
      tables.straightSupplyRadius && printed(names.straightSupplyRadius, tables.straightSupplyRadius),
    transportWidth: cited(names.transportWidth, tables.transportWidth),
    stockLength: cited(names.stockLength, tables.stockLength),
    largestCurveFormer: cited(names.largestCurveFormer, tables.largestCurveFormer),
    detailing: each(names.detailing, tables.detailing),
  };
}

type Line = (words: string, row: Row, cite: Citation) => Row;

function shapeLines(shape: ShapeDefinition, line: Line): ShapeDefinition {
  const { code, formula, minimisedFormula, course } = shape;
  const words = `${TABLE_NAMES.shapes} ${code}`;
  const printed = {
    ...(formula === null ? {} : { formula }),
    ...(minimisedFormula === undefined ? {} : { minimisedFormula }),
  };
  const lengths = formula === null ? {} : line(words, printed, shape.cite);
  const way = course === undefined ? {} : line(`${words}, course`, { course: courseText(shape) }, course);
  const limits = shape.limits.map(({ text, cite }) => {
    const changed = line(`${words}, limit ${text}`, { limit: text }, cite);
    return { text: String(changed["limit"]), cite: (changed["cite"] as Citation | undefined) ?? cite };
  });
  const { cite: ofLengths, ...texts } = lengths as Row & { cite?: Citation };
  const ofCourse = (way as { cite?: Citation }).cite;
  return {
    ...(ofCourse === undefined ? shape : withCourse(shape, String((way as Row)["course"]))),
    ...(texts as Partial<ShapeDefinition>),
    limits,
    cite: ofLengths ?? shape.cite,
    ...(course === undefined ? {} : { course: ofCourse ?? course }),
  };
}

/** The tolerances have one source, so it is raised when every line of theirs is. */
function toleranceLines(
  { value, cite }: NonNullable<StandardTables["tolerances"]>,
  line: Line,
): StandardTables["tolerances"] {
  const lines = value.map((row) => {
    const words = `${TABLE_NAMES.tolerances}: ${row.applies}${row.upTo === Infinity ? "" : ` up to ${row.upTo}`}`;
    const changed = line(words, { plus: row.plus, minus: row.minus }, cite);
    const now = { ...row, plus: changed["plus"] as number, minus: changed["minus"] as number };
    return { now, cite: changed["cite"] as Citation | undefined };
  });
  const cites = lines.map((one) => one.cite);
  const all = cites.every((one) => one !== undefined);
  return { value: lines.map(({ now }) => now), cite: all && cites[0] !== undefined ? cites[0] : cite };
}

/** "A +t B +90 (C); t: D = A sin t, 0 to 90": a course as one text. */
export function courseText({ path, angles = {} }: Pick<ShapeDefinition, "path" | "angles">): string {
  const equations = Object.entries(angles).map(
    ([name, { equation, from, to }]) => `${name}: ${equation}, ${from} to ${to}`,
  );
  return [path ?? "", ...equations].join("; ");
}

/** A course taken apart. */
export interface Course {
  readonly path: string;
  readonly angles: NonNullable<ShapeDefinition["angles"]>;
}

const ANGLE = /^([tu]):\s*(.+?)(?:,\s*(\d+)\s*to\s*(\d+))?$/;
const RIGHT_ANGLE = 90;

/** Path and angles of a course's text; null where a part is no equation of an angle. */
export function courseOfText(text: string): Course | null {
  const [path = "", ...parts] = text.split(";").map((part) => part.trim());
  const angles: Record<string, { equation: string; from: number; to: number }> = {};
  for (const part of parts) {
    const [, name, equation, from = "0", to = String(RIGHT_ANGLE)] = ANGLE.exec(part) ?? [];
    if (name === undefined || equation === undefined) return null;
    angles[name] = { equation, from: Number(from), to: Number(to) };
  }
  return { path, angles };
}

/** The owner saw the drawing: no other reading is left. */
function withCourse(shape: ShapeDefinition, text: string): ShapeDefinition {
  const { otherReading: _, ...rest } = shape;
  const course = text === courseText(shape) ? null : courseOfText(text);
  return course === null ? rest : { ...rest, ...course };
}

function nameOf(line: string, column: string): string {
  const words = COLUMNS.get(column) ?? column;
  return words === "" ? line : `${line}, ${words}`;
}

function isFigure(entry: [string, unknown]): entry is [string, number | string] {
  const [column, value] = entry;
  if (!COLUMNS.has(column)) return false;
  return typeof value === "string" || (typeof value === "number" && Number.isFinite(value));
}

/** ": main, link; up to 16 mm"; empty for a line that speaks of every bar. */
function conditionOf(row: Row): string {
  const parts = Object.entries(CONDITION_NAMES).flatMap(([column, words]) => {
    const value = row[column];
    if (value === undefined || value === Infinity) return [];
    return [words.replace("{}", Array.isArray(value) ? value.join(", ") : String(value))];
  });
  return parts.length === 0 ? "" : `: ${parts.join("; ")}`;
}
