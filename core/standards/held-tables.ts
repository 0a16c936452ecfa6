import type { Citation, Cited, PrintedTable } from "./citation";
import type { Grade, ShapeDefinition } from "./port";
import type { StandardTables } from "./shared/standard-tables";

/** One table, rule or single figure that a standard's folder holds, as printed. */
export interface HeldTable {
  /** "bars", "formers", "shape codes" */
  readonly what: string;
  readonly cite: Citation;
  /** lines as printed, in the standard's unit */
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** Everything that the folder of a standard holds, in the order in which a reader asks for it. */
export function heldTables(tables: StandardTables): readonly HeldTable[] {
  return [
    ...printed("bars", tables.bars),
    ...gradeTables(tables.grades),
    ...printed("formers", tables.formers),
    ...printed("r of the length formulas", tables.formulaRadii === null ? [] : [tables.formulaRadii]),
    ...printed("end legs", tables.endLegs),
    ...printed("hooks", tables.hooks),
    ...printed("hook and bend allowances", tables.allowances ?? []),
    ...shapeTables(tables.shapes),
    {
      what: "rounding of the length",
      cite: tables.lengthRounding.cite,
      rows: [{ step: tables.lengthRounding.step, direction: tables.lengthRounding.direction }],
    },
    ...single("step of the dimensions", tables.dimensionStep),
    ...single("straight between two bends, in diameters", tables.straightBetweenBends),
    ...single("bends from which a shape may be impractical", tables.manyBends),
    ...(tables.tolerances === null
      ? []
      : printed("tolerances", [{ cite: tables.tolerances.cite, rows: tables.tolerances.value }])),
    ...single("cold bending needs leave below, C", tables.coldBending),
    ...single("re-bending", tables.rebending),
    ...printed("radius above which a bar is supplied straight", tables.straightSupplyRadius ?? []),
    ...single("width for transport", tables.transportWidth),
    ...single("stock length", tables.stockLength),
    ...single("largest former for a curve", tables.largestCurveFormer),
    ...siteTables(tables),
    ...printed("bars beside one another", tables.detailing),
    ...printed("mandrels of tests of the bar, never for bending", tables.testMandrels),
  ];
}

/** A row's columns; its own source where it has one. */
type Columns = Record<string, unknown> & { readonly cite?: Citation };

function printed<Row extends object>(
  what: string,
  tables: readonly PrintedTable<Row>[] | PrintedTable<Row>,
): HeldTable[] {
  const list = "rows" in tables ? [tables] : tables;
  return list.flatMap(({ cite, rows }) =>
    byCitation(what, rows, (row) => {
      const { cite: own = cite, ...columns } = Object.fromEntries(Object.entries(row)) as Columns;
      return [{ cite: own, row: columns }];
    }),
  );
}

function single(what: string, cited: Cited<number | string> | null): HeldTable[] {
  return cited === null ? [] : [{ what, cite: cited.cite, rows: [{ value: cited.value }] }];
}

function gradeTables(grades: readonly Grade[]): HeldTable[] {
  return byCitation("grades", grades, ({ cite, ...row }) => [{ cite, row }]);
}

function shapeTables(shapes: readonly ShapeDefinition[]): HeldTable[] {
  return [
    ...byCitation("shape codes", shapes, ({ code, words, formula, minimisedFormula, formulaWhen, cite }) => [
      {
        cite,
        row: {
          code,
          words,
          ...(formula === null ? {} : { formula }),
          ...(minimisedFormula === undefined ? {} : { minimised: minimisedFormula }),
          ...(formulaWhen === undefined ? {} : { [`where ${formulaWhen.limit}`]: formulaWhen.formula }),
        },
      },
    ]),
    ...byCitation("courses of shape codes", shapes, ({ code, path, angles = {}, course }) =>
      course === undefined ? [] : [{ cite: course, row: { code, path, ...equationsOf(angles) } }],
    ),
    ...byCitation("limits of shape codes", shapes, ({ code, limits }) =>
      limits.map(({ text, cite }) => ({ cite, row: { code, limit: text } })),
    ),
  ];
}

function equationsOf(angles: NonNullable<ShapeDefinition["angles"]>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(angles).map(([name, { equation }]) => [`angle ${name}`, equation]),
  );
}

function siteTables({ siteDeductions }: StandardTables): HeldTable[] {
  if (siteDeductions === null) return [];
  const { bends, hooks, leastHook, formerPerDiameter } = siteDeductions.value;
  return [
    ...byCitation("deductions", bends, ({ angle, perDiameter, cite = siteDeductions.cite }) => [
      { cite, row: { angle, perDiameter } },
    ]),
    ...byCitation("what a hook adds", hooks, ({ turn, perDiameter, cite = siteDeductions.cite }) => [
      { cite, row: { turn, perDiameter, least: leastHook } },
    ]),
    {
      what: "former of the geometry beside it",
      cite: { document: "former that the deductions fit", provenance: "common practice" },
      rows: [{ perDiameter: formerPerDiameter }],
    },
  ];
}

/** Rows that share a citation stand in one table, in the order in which the citations first come. */
function byCitation<Item>(
  what: string,
  items: readonly Item[],
  rowsOf: (item: Item) => { cite: Citation; row: Record<string, unknown> }[],
): HeldTable[] {
  const groups = new Map<string, { cite: Citation; rows: Record<string, unknown>[] }>();
  for (const { cite, row } of items.flatMap(rowsOf)) {
    const key = JSON.stringify(cite);
    const group = groups.get(key) ?? { cite, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ cite, rows }) => ({ what, cite, rows }));
}
