import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

interface PageGenerator {
  generate?: () => Promise<Map<string, string>>;
}

const NOT_GENERATORS = new Set(["generate.ts", "generated-pages.ts", "screenshots.ts"]);

/** Every generated page, path under docs/ -> text, from the generators beside this file. */
export async function generatedPages(): Promise<Map<string, string>> {
  const here = fileURLToPath(new URL(".", import.meta.url));
  const pages = new Map<string, string>();
  const files = readdirSync(here).filter((name) => name.endsWith(".ts") && !NOT_GENERATORS.has(name));
  for (const name of files.sort()) {
    const { generate } = (await import(new URL(name, import.meta.url).href)) as PageGenerator;
    if (generate === undefined) continue;
    for (const [path, text] of await generate()) pages.set(path, text);
  }
  return pages;
}
