import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Rule } from "../../core/audit/rule";

const folder = fileURLToPath(new URL("../../core/audit/rules", import.meta.url));

/** Every rule with the file it stands in, by code. */
export async function ruleFiles(): Promise<readonly { readonly file: string; readonly rule: Rule }[]> {
  const files = readdirSync(folder).filter((name) => name.endsWith(".ts") && name !== "index.ts");
  const rules = await Promise.all(
    files.map(async (name) => {
      const file = name.replace(/\.ts$/, "");
      const { default: rule } = (await import(`../../core/audit/rules/${file}.ts`)) as { default: Rule };
      return { file, rule };
    }),
  );
  return rules.sort((a, b) => (a.rule.code < b.rule.code ? -1 : 1));
}

/** The index of audit rules: one import a file, in order of file, and the list in order of code. */
export async function generate(): Promise<Map<string, string>> {
  const rules = await ruleFiles();
  const imports = rules
    .map(({ file }) => file)
    .sort()
    .map((file) => `import ${camelCase(file)} from "./${file}";`);
  const list = rules.map(({ file }) => `  ${camelCase(file)},`);
  const text = [
    "// Generated from the files beside it: npm run generate.",
    'import type { Rule } from "../rule";',
    ...imports,
    "",
    "/** Every audit rule, in order of code. */",
    "export const RULES: readonly Rule[] = [",
    ...list,
    "];",
    "",
  ].join("\n");
  return new Map([["../core/audit/rules/index.ts", text]]);
}

function camelCase(file: string): string {
  return file.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}
