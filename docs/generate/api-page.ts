import { fileURLToPath } from "node:url";
import ts from "typescript";

const ENTRY = fileURLToPath(new URL("../../addin/command-line/library.ts", import.meta.url));

/** docs/api.md: what the package's entry gives to other programs, in the words of the docstrings. */
export async function generate(): Promise<Map<string, string>> {
  return new Map([["api.md", page(exportsOf(ENTRY))]]);
}

interface Exported {
  readonly name: string;
  readonly kind: "function" | "class" | "type";
  readonly signature: string;
  readonly says: string;
}

function exportsOf(entry: string): Exported[] {
  const program = ts.createProgram([entry], {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    noEmit: true,
    types: ["node"],
  });
  const checker = program.getTypeChecker();
  const file = checker.getSymbolAtLocation(program.getSourceFile(entry)!);
  return checker.getExportsOfModule(file!).map((symbol) => exported(symbol, checker));
}

function exported(symbol: ts.Symbol, checker: ts.TypeChecker): Exported {
  const own = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const [declaration] = own.declarations ?? [];
  const says = ts.displayPartsToString(own.getDocumentationComment(checker)).replace(/\s+/g, " ").trim();
  const { name } = symbol;
  if (declaration !== undefined && ts.isFunctionDeclaration(declaration)) {
    const { parameters, type } = declaration;
    const given = parameters.map((one) => one.getText().replace(/\s+/g, " ")).join(", ");
    return { name, kind: "function", signature: `${name}(${given}): ${type?.getText() ?? "void"}`, says };
  }
  const isClass = declaration !== undefined && ts.isClassDeclaration(declaration);
  return {
    name,
    kind: isClass ? "class" : "type",
    signature: isClass ? `class ${name}` : `type ${name}`,
    says,
  };
}

function page(all: readonly Exported[]): string {
  const list = (kind: Exported["kind"]): string[] =>
    all
      .filter((one) => one.kind === kind)
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .flatMap(({ name, signature, says }) => [`### ${name}`, "", "```ts", signature, "```", "", says, ""]);
  return [
    "# Barwright as a library",
    "",
    "Generated from the docstrings by `npm run generate`. `npm run package` puts the package together in `addin/dist/package`; `npm pack` there makes the file to install. It depends on no other package; a program in TypeScript sets `skipLibCheck`, as the types behind some of its own name packages that are bundled.",
    "",
    "```ts",
    'import { readFileSync } from "node:fs";',
    'import { checkBooks, checkReport, isRefusal, openBookOf, refusalText } from "barwright";',
    "",
    'const book = openBookOf("schedule.xlsx", readFileSync("schedule.xlsx"));',
    "const [checked] = checkBooks([book], { sheet: null, standard: null });",
    "if (isRefusal(checked)) console.error(refusalText(checked));",
    "else console.log(checkReport(checked, false).counts);",
    "```",
    "",
    "## Functions",
    "",
    ...list("function"),
    "## Classes",
    "",
    ...list("class"),
    "## Types",
    "",
    ...list("type"),
  ]
    .join("\n")
    .replace(/\n+$/, "\n");
}
