import { type Citation, citationText, type Provenance } from "../../core/standards/citation";
import { conflictsOf, coverage } from "../../core/standards/coverage";
import { type HeldTable, heldTables } from "../../core/standards/held-tables";
import { resolveStandard } from "../../core/standards/index";
import { REGISTRY } from "../../core/standards/registry";
import type { StandardTables } from "../../core/standards/shared/standard-tables";
import { counted } from "../../core/units/counted";
import { isRefusal } from "../../core/units/refusal";
import { FIRST_VERSION } from "./trust-of-first-version.data";

const TRUST: Readonly<Record<Provenance, string>> = {
  published: "somebody read it in the place named",
  confirmed: "looked up by its owner in their own copy",
  own: "the yard or the workbook's owner wrote it down as their own",
  geometry: "geometry of what stands there",
  memory: "recalled, not yet seen: check it against a bought copy before relying on it",
  "common practice": "a fact of the trade with no source",
  derived: "derived by us from other numbers",
};
/** An owner's values stand in a workbook, not in a document. */
const PROVENANCES = (Object.keys(TRUST) as Provenance[]).filter(
  (trust) => trust !== "confirmed" && trust !== "own",
);

/** The columns of the tables in words; lengths are in the standard's unit. */
const COLUMN_WORDS: Readonly<Record<string, string>> = {
  size: "bar",
  diameter: "d, mm",
  diameterInches: "d, in",
  area: "mm2",
  areaSquareInches: "in2",
  massPerMetre: "kg/m",
  poundsPerFoot: "lb/ft",
  yield: "yield, MPa",
  upTo: "up to",
  madeUpTo: "made up to, mm",
  notWelded: "not to be welded",
  upToSize: "up to bar",
  perDiameter: "diameters",
  straightPerDiameter: "straight, diameters",
  leastStraight: "straight at least",
  roundedUpTo: "up to the next",
  formerPerDiameter: "former, diameters",
  extensionPerDiameter: "straight, diameters",
  leastExtension: "straight at least",
  leastAllowance: "adds at least",
  lengthOfFullHook: "same bar length as the 180 hook",
  endLegOf: "reaches the end leg of use",
  testGrades: "grades",
  testUpTo: "d up to, mm",
  testMandrelPerDiameter: "mandrel, diameters",
  testRadiusPerDiameter: "inside radius, diameters",
};

/** A coverage page for each edition and one that compares them: what is held, whence, and what is not. */
export async function generate(): Promise<Map<string, string>> {
  const pages = new Map([["standards/README.md", overview()]]);
  for (const tables of REGISTRY) pages.set(`standards/${fileOf(tables)}`, page(tables));
  return pages;
}

function overview(): string {
  const rows = REGISTRY.map((tables) => {
    const { id, unit, bars, shapes, values, conflicts } = coverageOf(tables);
    const counts = PROVENANCES.map((trust) => `${values[trust].checked} of ${values[trust].held}`);
    return [`[${id}](${fileOf(tables)})`, unit, bars, shapes, ...counts, conflicts];
  });
  return lines(
    "# Standards",
    "",
    "Generated from `core/standards`. One page an edition: every table held, with its source and how far it may be",
    "trusted, where sources differ and what was decided, and what is not held. Nothing here replaces the standard",
    "itself, the designer, or the plate and manual of the machine.",
    "",
    ...PROVENANCES.map((trust) => `- \`${trust}\`: ${TRUST[trust]}.`),
    "",
    "The columns give figures, formulas and limits: checked of held. Checked is what the tests compare with a second",
    "copy of the page or, for areas and masses, with pi d2/4 and 7850 kg/m3.",
    "",
    ...markdownTable(["standard", "unit", "bars", "shapes", ...PROVENANCES, "conflicts"], rows),
    "",
    "## Since the first version",
    "",
    "Figures held by trust, then and now. Courses of shapes have had a source of their own since, which is why more",
    "is counted as `memory` where shapes are held.",
    "",
    ...markdownTable(
      ["standard", ...SINCE.map((trust) => `${trust}: then, now`)],
      [...REGISTRY.map(sinceFirst), sinceFirstInAll()],
    ),
    "",
    "Two may be joined, as in `BS8666:2005+AS3600:2018`: shapes, rounding and tolerances of the first, bars, formers,",
    "hooks and end legs of the second. Standards with one shape hold the straight bar only: bars are written as paths.",
    "",
  );
}

/** The kinds of trust that the first version knew. */
const SINCE = ["published", "memory", "common practice", "derived"] as const satisfies readonly Provenance[];

function sinceFirst(tables: StandardTables): string[] {
  const { id, values } = coverageOf(tables);
  const then = FIRST_VERSION[id];
  return [id, ...SINCE.map((trust, at) => `${then?.[at] ?? "-"}, ${values[trust].held}`)];
}

/** Of the documents that the first version held, and of all of now. */
function sinceFirstInAll(): string[] {
  const sums = SINCE.map((trust, at) => {
    const then = Object.values(FIRST_VERSION).reduce((sum, figures) => sum + (figures?.[at] ?? 0), 0);
    const now = REGISTRY.reduce((sum, tables) => sum + coverageOf(tables).values[trust].held, 0);
    return `${then}, ${now}`;
  });
  return ["all", ...sums];
}

function page(tables: StandardTables): string {
  const { id, title, unit, bars, shapes, values } = coverageOf(tables);
  const held = heldTables(tables);
  const differing = held.flatMap((table) =>
    conflictsOf(table).map((reason) => `- ${placeOf(table)}: ${reason}.`),
  );
  const counts = PROVENANCES.map((trust) => [trust, values[trust].held, values[trust].checked, TRUST[trust]]);
  return lines(
    `# ${id}`,
    "",
    `${title}. Unit: ${unit}. ${counted(bars, "bar")}, ${counted(shapes, "shape")}. Uses: ${tables.uses.join(", ")}.`,
    "",
    ...markdownTable(["trust", "held", "checked", "meaning"], counts),
    "",
    "## What is held",
    "",
    ...held.flatMap(tableLines),
    "## Where sources differ",
    "",
    ...(differing.length === 0 ? ["Nowhere that is known."] : [...new Set(differing)]),
    "",
    "## What is not held",
    "",
    ...tables.notHeld.map((what) => `- ${what}`),
    "",
  );
}

function tableLines({ what, cite, rows }: HeldTable): string[] {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))].filter(
    (column) => column !== "conflict",
  );
  const body = rows.map((row) => columns.map((column) => cellText(row[column], column)));
  return [
    `### ${what[0]?.toUpperCase()}${what.slice(1)}`,
    "",
    sourceText(cite),
    "",
    ...markdownTable(
      columns.map((column) => COLUMN_WORDS[column] ?? column),
      body,
    ),
    "",
  ];
}

function sourceText({ document, edition, clause, provenance, seen }: Citation): string {
  const name = edition === undefined || document.includes(":") ? document : `${document}:${edition}`;
  const place = clause === undefined ? name : `${name}, ${clause}`;
  return `${place}. Trust: \`${provenance}\`${seen === undefined ? "" : `, read in ${seen}`}.`;
}

function placeOf({ what, cite }: HeldTable): string {
  return cite.clause === undefined ? what : `${what} (${cite.clause})`;
}

function coverageOf(tables: StandardTables) {
  const standard = resolveStandard(tables.id);
  if (isRefusal(standard)) throw new Error(`the registry does not resolve ${tables.id}`);
  return coverage(standard);
}

function fileOf({ id }: StandardTables): string {
  return `${id.toLowerCase().replace(/[^a-z0-9]+/g, "-")}.md`;
}

function markdownTable(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string[] {
  const row = (cells: readonly (string | number)[]) => `| ${cells.join(" | ")} |`;
  return [row(header), row(header.map(() => "---")), ...rows.map(row)];
}

function cellText(value: unknown, column: string): string {
  if (column === "yield" && value === 0) return "as specified";
  if (value === undefined || value === "") return "";
  if (value === Infinity) return "any";
  if (value === true) return "yes";
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return sourced(value, column);
  return (Array.isArray(value) ? value.join(", ") : String(value)).replaceAll("|", "\\|");
}

/** A value with where it is from, or a clause that says it. */
function sourced(value: object, column: string): string {
  if ("value" in value && "cite" in value)
    return `${cellText(value.value, column)} (${citationText(value.cite as Citation)})`;
  return citationText(value as Citation).replaceAll("|", "\\|");
}

function lines(...all: string[]): string {
  return all.join("\n");
}
