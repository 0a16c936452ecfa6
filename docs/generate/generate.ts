/**
 * Writes every generated page. Each file beside this one that exports `generate` gives pages as
 * path under docs/ -> text; `--check` writes nothing and names the pages that are out of date.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generatedPages } from "./generated-pages";

const docs = fileURLToPath(new URL("..", import.meta.url));
const checking = process.argv.includes("--check");
let stale = 0;

for (const [path, text] of await generatedPages()) {
  const file = join(docs, path);
  if (existsSync(file) && readFileSync(file, "utf8") === text) continue;
  stale += 1;
  console.error(`${checking ? "out of date" : "written"}: ${path}`);
  if (checking) continue;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
process.exitCode = checking && stale > 0 ? 1 : 0;
