import { type Block, WORKSHEET_FUNCTIONS, type WorksheetFunction } from "../../core/formulas";
import type { Cell } from "../../core/schedule/sheet";
import { FUNCTION_EXAMPLES, type FunctionExample } from "./function-examples.data";

const DEFAULT_STANDARD = "BS8666:2005";
const LIFTS = {
  column: "a cell or a column",
  dims: "a row or a block of rows",
  table: "a whole range",
} as const;

/** docs/functions: a page for each worksheet function, its examples run, and their index. */
export async function generate(): Promise<Map<string, string>> {
  const pages = new Map<string, string>();
  const definitions = [...WORKSHEET_FUNCTIONS.values()];
  for (const definition of definitions) pages.set(`functions/${definition.name}.md`, page(definition));
  pages.set("functions/README.md", index(definitions));
  return pages;
}

function index(definitions: readonly WorksheetFunction[]): string {
  const rows = definitions.map(
    ({ name, description, args }) => `| [BAR.${name}](${name}.md) | ${argumentList(args)} | ${description} |`,
  );
  return [
    "# Worksheet functions",
    "",
    "All stand in namespace `BAR`. Columns of n rows give n rows, one row broadcasts, blank rows stay blank. A refusal",
    "is `#VALUE!` for a bad value and `#N/A` for what the standard does not hold or does not know well enough; its text",
    "names the value, the limit and the remedy. Lengths are in the standard's unit.",
    "",
    "Whole columns end at their last filled row. Excel's own library hands over a million cells for each all the same:",
    "with 10,000 rows filled, two of them take a second, of which a tenth is the calculation. The same rows as a table's",
    "column or as a range that ends take a tenth of a second.",
    "",
    "| function | arguments | gives |",
    "| --- | --- | --- |",
    ...rows,
    "",
  ].join("\n");
}

function page({ name, description, args }: WorksheetFunction): string {
  const examples = FUNCTION_EXAMPLES.filter((example) => example.name === name);
  return [
    `# BAR.${name}`,
    "",
    `${description}.`,
    "",
    `\`BAR.${name}(${argumentList(args)})\``,
    "",
    "| argument | takes | what it is |",
    "| --- | --- | --- |",
    ...args.map(
      (arg) => `| ${arg.optional ? `[${arg.name}]` : arg.name} | ${LIFTS[arg.lifts]} | ${arg.description} |`,
    ),
    ...(examples.length === 0 ? [] : ["", "## Examples"]),
    ...examples.flatMap((example) => ["", "```text", formulaText(example), ...answerLines(example), "```"]),
    "",
  ].join("\n");
}

function argumentList(args: WorksheetFunction["args"]): string {
  return args.map((arg) => (arg.optional ? `[${arg.name}]` : arg.name)).join(", ");
}

function answerLines({ name, args }: FunctionExample): string[] {
  const definition = WORKSHEET_FUNCTIONS.get(name);
  if (definition === undefined) throw new Error(`an example names the unknown function ${name}`);
  const answer = definition.call(args.map(blockOf), { defaultStandard: DEFAULT_STANDARD });
  return answer.map((row) => `  ${row.map(cellText).join(" | ")}`);
}

function blockOf(argument: FunctionExample["args"][number]): Block | undefined {
  if (argument === null) return undefined;
  if (!Array.isArray(argument)) return [[argument as Cell]];
  return argument.every((row) => Array.isArray(row)) ? (argument as Block) : [argument as readonly Cell[]];
}

function cellText(cell: Cell): string {
  if (cell === null) return "";
  return typeof cell === "object" ? `${cell.error} ${cell.message ?? ""}`.trim() : String(cell);
}

function formulaText({ name, args }: FunctionExample): string {
  const texts = args.map((argument) => {
    if (argument === null) return "";
    const rows = blockOf(argument) ?? [];
    const text = rows.map((row) => row.map(written).join(",")).join(";");
    return Array.isArray(argument) ? `{${text}}` : text;
  });
  return `=BAR.${name}(${texts.join(",")})`;
}

function written(cell: Cell): string {
  return typeof cell === "string" ? `"${cell.replaceAll('"', '""')}"` : String(cell);
}
