import { type FunctionArgument, WORKSHEET_FUNCTIONS, type WorksheetFunction } from "../../core/formulas";

const LINE_WIDTH = 110;

/**
 * The source that Excel's function wizard is told by: one declared function for each of core, its words
 * as JSDoc. functions.json is made of it at build time.
 */
export async function generate(): Promise<Map<string, string>> {
  const text = [
    "/* biome-ignore-all lint/suspicious/noExplicitAny: functions.json knows a range of anything only as any[][] */",
    "// Generated from core/formulas: npm run generate.",
    'import { callFunction } from "./call-function";',
    ...[...WORKSHEET_FUNCTIONS.values()].map(declaration),
  ].join("\n");
  return new Map([["../addin/functions/functions.ts", `${text}\n`]]);
}

function declaration(definition: WorksheetFunction): string {
  const { name, description, args } = definition;
  const names = args.map((one) => one.name).join(", ");
  return [
    "",
    "/**",
    ` * ${description}`,
    ` * @customfunction ${name}`,
    ...args.map((one) => ` * @param ${one.optional ? `[${one.name}]` : one.name} ${one.description}`),
    " * @returns A block of cells",
    " */",
    signature(name.toLowerCase(), args),
    `  return callFunction("${name}", [${names}]);`,
    "}",
  ].join("\n");
}

function signature(name: string, args: readonly FunctionArgument[]): string {
  const typed = args.map((one) => `${one.name}${one.optional ? "?" : ""}: any[][]`);
  const line = `export async function ${name}(${typed.join(", ")}): Promise<any[][]> {`;
  if (line.length <= LINE_WIDTH) return line;
  const lines = typed.map((one) => `  ${one},`).join("\n");
  return `export async function ${name}(\n${lines}\n): Promise<any[][]> {`;
}
