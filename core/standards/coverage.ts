import type { Provenance } from "./citation";
import { type HeldTable, heldTables } from "./held-tables";
import { withOwn } from "./overlay";
import { NOTHING_OWN, type OwnStandard } from "./own-standard";
import type { LengthUnit, Standard } from "./port";
import { REGISTRY } from "./registry";
import { nameTypedTwice } from "./typed-twice";

export interface CoverageCount {
  /** printed figures, formulas and limits */
  readonly held: number;
  /**
   * of those, how many the tests compare with a second copy of the page, or, for areas and
   * masses, with pi d2/4 and the density of steel
   */
  readonly checked: number;
}

/** How much of a document is held, and how far it may be trusted. */
export interface Coverage {
  readonly id: string;
  readonly title: string;
  readonly unit: LengthUnit;
  readonly bars: number;
  readonly shapes: number;
  readonly tables: number;
  readonly values: Readonly<Record<Provenance, CoverageCount>>;
  /** places where sources differ and one was chosen */
  readonly conflicts: number;
  readonly notHeld: readonly string[];
}

/** Columns that are neither a figure nor a formula of the page. */
const NAMES = new Set([
  "code",
  "words",
  "name",
  "superseded",
  "direction",
  "applies",
  "size",
  "rule",
  "test",
  "conflict",
]);
const MEASURED = new Set(["area", "massPerMetre"]);

/** Counts of what is held of a standard, with what its owner looked up; of both documents for one that joins two. */
export function coverage(standard: Standard, own: OwnStandard = NOTHING_OWN): Coverage {
  const documents = standard.id.split("+");
  const held = REGISTRY.filter((tables) => documents.includes(tables.id)).map((tables) =>
    withOwn(tables, own),
  );
  const tables = held.flatMap((one) => heldTables(one).map((table) => ({ ...table, of: one.id })));
  return {
    id: standard.id,
    title: standard.title,
    unit: standard.unit,
    bars: standard.bars.length,
    shapes: standard.shapes.size,
    tables: tables.length,
    values: {
      published: countOf(tables, "published"),
      confirmed: countOf(tables, "confirmed"),
      own: countOf(tables, "own"),
      geometry: countOf(tables, "geometry"),
      memory: countOf(tables, "memory"),
      "common practice": countOf(tables, "common practice"),
      derived: countOf(tables, "derived"),
    },
    conflicts: tables.flatMap(conflictsOf).length,
    notHeld: held.flatMap((one) => one.notHeld),
  };
}

/** What was decided, and why, wherever sources differ within a table. */
export function conflictsOf({ cite, rows }: HeldTable): string[] {
  const ofRows = rows.flatMap((row) => {
    const { conflict } = row;
    return conflict === undefined ? [] : [`${rowName(row)}${conflict}`];
  });
  return cite.conflict === undefined ? ofRows : [cite.conflict, ...ofRows];
}

/** "25: " for a row of one bar; a row of many has no name. */
function rowName({ size, diameter }: Readonly<Record<string, unknown>>): string {
  const name = size ?? diameter;
  return name === undefined ? "" : `${name}: `;
}

type TableOf = HeldTable & { readonly of: string };

function countOf(tables: readonly TableOf[], provenance: Provenance): CoverageCount {
  const own = tables.filter(({ cite }) => cite.provenance === provenance);
  const held = own.flatMap(({ rows }) => rows.flatMap(figuresOf));
  const checked = own.flatMap(checkedIn);
  return { held: held.length, checked: checked.length };
}

/** All of a page that was typed twice; areas and masses of every bar table. */
function checkedIn(table: TableOf): string[] {
  const figures = table.rows.flatMap(figuresOf);
  if (table.cite.provenance === "published" && nameTypedTwice(table.of, table) !== null) return figures;
  return table.what === "bars" ? figures.filter((column) => MEASURED.has(column)) : [];
}

/** The columns of a row that hold a figure or a formula of the page. */
function figuresOf(row: Readonly<Record<string, unknown>>): string[] {
  return Object.entries(row)
    .filter(([column, value]) => !NAMES.has(column) && isFigure(value))
    .map(([column]) => column);
}

function isFigure(value: unknown): boolean {
  return typeof value === "string" || (typeof value === "number" && Number.isFinite(value));
}
