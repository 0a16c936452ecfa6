/**
 * Runs every `*.bench.ts` beside this file, or those whose name contains a word given, and prints a
 * table and then JSON. Each bench compares side by side in the same run.
 */
import { readdirSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";

export interface Bench {
  readonly name: string;
  run(): Promise<{ figures: Record<string, number | string> }>;
}

const here = fileURLToPath(new URL(".", import.meta.url));
const wanted = process.argv.slice(2);
const files = readdirSync(here)
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)));
const results: Record<string, Record<string, number | string>> = {};

for (const file of files.sort()) {
  const bench = ((await import(new URL(file, import.meta.url).href)) as { default: Bench }).default;
  console.error(`${bench.name} ...`);
  results[bench.name] = (await bench.run()).figures;
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
