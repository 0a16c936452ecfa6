/**
 * Runs every `*.bench.ts` beside this file, or those whose name contains a word given, and prints a
 * table and then JSON. Each bench compares side by side in the same run. What is measured is bundled
 * first, as it is in the product.
 */
import { mkdirSync, readdirSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

export interface Bench {
  readonly name: string;
  run(): Promise<{ figures: Record<string, number | string> }>;
}

const here = fileURLToPath(new URL(".", import.meta.url));
const cache = fileURLToPath(new URL("../../.cache/bench/", import.meta.url));
const wanted = process.argv.slice(2);
const files = readdirSync(here)
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .sort();
mkdirSync(cache, { recursive: true });
const results: Record<string, Record<string, number | string>> = {};

for (const file of files) {
  const outfile = `${cache}${file.replace(/\.ts$/, ".mjs")}`;
  await build({
    entryPoints: [`${here}${file}`],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    // paths that a bench takes from its own place stay those of the source
    define: { "import.meta.url": JSON.stringify(pathToFileURL(`${here}${file}`).href) },
    logLevel: "warning",
  });
  const bench = ((await import(pathToFileURL(outfile).href)) as { default: Bench }).default;
  console.error(`${bench.name} ...`);
  try {
    results[bench.name] = (await bench.run()).figures;
  } catch (error) {
    process.exitCode = 1;
    results[bench.name] = { failed: error instanceof Error ? error.message : String(error) };
  }
}

const rows = Object.entries(results).flatMap(([bench, figures]) =>
  Object.entries(figures).map(([figure, value]) => ({ bench, figure, value })),
);
console.table(rows);
console.log(
  JSON.stringify(
    { node: process.version, processor: cpus()[0]?.model, cores: cpus().length, results },
    null,
    2,
  ),
);
