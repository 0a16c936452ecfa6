import type { Cell } from "../schedule/sheet";
import { courseText, figuresOf, isUnsure } from "../standards/figures";
import { NOTHING_OWN, type OwnStandard } from "../standards/own-standard";
import type { ShapeDefinition } from "../standards/port";
import { REGISTRY } from "../standards/registry";
import type { LengthUnit } from "../units/length-unit";
import {
  FIGURE_HEADS,
  FIGURES_TITLE,
  LAP_HEADS,
  LAPS_TITLE,
  OWN_COLUMNS,
  SHAPE_HEADS,
  SHAPES_TITLE,
} from "./own-words.data";

/** A row of a new sheet Standard and what it is, so that a surface can make titles and heads look so. */
export interface OwnRow {
  readonly kind: "title" | "head" | "line" | "blank";
  readonly cells: readonly Cell[];
}

const ROOM = 20;

/**
 * The rows of a new sheet Standard for the documents in force: every figure that nobody has surely read, with
 * what is held and how far it may be trusted, and room to write; then tables of own shapes and laps. What
 * `own` holds already is written in.
 */
export function ownTemplate(documents: readonly string[], own: OwnStandard = NOTHING_OWN): OwnRow[] {
  const tables = REGISTRY.filter(({ id }) => documents.includes(id));
  const lines = tables.flatMap((document) =>
    figuresOf(document)
      .filter(({ cite }) => isUnsure(cite))
      .map(({ name, value, cite }): OwnRow => {
        const trust = cite.conflict === undefined ? cite.provenance : `${cite.provenance}, sources differ`;
        const unit = unitOf(name, value, document.unit);
        const source = [cite.document, cite.clause].filter((part) => part !== undefined).join(", ");
        const looked = own.figures.find((one) => one.standard === document.id && one.figure === name);
        const answer = looked === undefined ? [] : [looked.value, looked.by, looked.on];
        return { kind: "line", cells: [document.id, name, value, unit, trust, source, ...answer] };
      }),
  );
  const head = (columns: readonly (keyof typeof OWN_COLUMNS)[]): OwnRow => ({
    kind: "head",
    cells: columns.map((column) => OWN_COLUMNS[column][0]),
  });
  const room: OwnRow[] = Array.from({ length: ROOM }, () => ({ kind: "blank", cells: [] }));
  return [
    { kind: "title", cells: [FIGURES_TITLE] },
    head(FIGURE_HEADS),
    ...lines,
    { kind: "blank", cells: [] },
    { kind: "title", cells: [SHAPES_TITLE] },
    head(SHAPE_HEADS),
    ...own.shapes.map(
      ({ standard, shape }): OwnRow => ({ kind: "line", cells: shapeCells(standard, shape) }),
    ),
    ...room,
    { kind: "title", cells: [LAPS_TITLE] },
    head(LAP_HEADS),
    ...own.laps.map(
      ({ size, grade, case: situation, lap }): OwnRow => ({
        kind: "line",
        cells: [size, grade, situation, lap],
      }),
    ),
  ];
}

function shapeCells(standard: string | null, shape: ShapeDefinition): Cell[] {
  const { code, words, formula, limits, use, cite } = shape;
  const bounds = limits.map(({ text }) => text).join("; ");
  const signed = [cite.by ?? null, cite.on ?? null];
  return [code, standard, words, courseText(shape), formula, bounds, use ?? null, ...signed];
}

function unitOf(name: string, value: number | string, unit: LengthUnit): string {
  if (typeof value === "string") return "text";
  const said = /, (mm2|in2|kg\/m|lb\/ft|MPa)$/.exec(name)?.[1];
  if (said !== undefined) return said;
  if (/in diameters/.test(name)) return "d";
  if (/, C$/.test(name)) return "C";
  return /^bends from/.test(name) ? "bends" : unit;
}
