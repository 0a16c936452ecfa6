/**
 * Names the schedules whose findings differ from those kept for review; with `--accept` writes them. Each change
 * is to be read before it is committed: `npx tsx tests/_support/accept-corpus.ts --accept`.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { CORPUS } from "../corpus/corpus";
import { type KeptFindings, keptFindings } from "../corpus/corpus-findings";

const accepting = process.argv.includes("--accept");

for (const schedule of CORPUS) {
  const file = fileURLToPath(new URL(`../corpus/${schedule.name}.json`, import.meta.url));
  const text = written(keptFindings(schedule));
  if (existsSync(file) && readFileSync(file, "utf8") === text) continue;
  console.log(`${accepting ? "written" : "differs"}: ${schedule.name}`);
  if (accepting) writeFileSync(file, text);
  else process.exitCode = 1;
}

/** One line a rule, as the formatter leaves it. */
function written({ findings, ...head }: KeptFindings): string {
  return `${JSON.stringify({ ...head, findings }, null, 2)}\n`;
}
