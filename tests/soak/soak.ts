/**
 * The long run, by hand and not in CI: npm run soak -- [foreign|packages|schedules|sound|workbench] [FOLDER|COUNT] [SEED]. It needs apt's lists,
 * openpyxl and LibreOffice. FOLDER keeps the fetched workbooks from run to run.
 */
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { resolveStandard, STANDARD_IDS, type Standard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";
import { mutatedPackage } from "../_support/mutate-package";
import { mutatedList, mutatedSchedule } from "../_support/mutate-schedule";
import { scheduleFaults } from "../_support/schedule-faults";
import { auditSound } from "../_support/sound-audit";
import { HABITS } from "../_support/sound-habits";
import { tryPackage } from "../_support/try-package";
import { seeded } from "../corpus/seeded";
import { soakForeignBooks } from "./foreign-books";
import { soakSavedBooks } from "./saved-books";

const [what = "foreign", folder = mkdtempSync(join(tmpdir(), "barwright-books-")), most = "100000"] =
  process.argv.slice(2);
const seed = Number(process.argv[4] ?? 0);
const count = what === "packages" || what === "schedules" ? Number(process.argv[3] ?? 50_000) : 0;

const faults =
  what === "packages"
    ? soakPackages()
    : what === "schedules"
      ? soakSchedules()
      : what === "sound"
        ? soakSound(Number(process.argv[3] ?? 2_000))
        : what === "workbench"
          ? soakSavedBooks()
          : await soakForeignBooks(folder, Number(most));
for (const fault of faults) console.log(fault);
console.log(`${faults.length} faults`);
process.exitCode = faults.length === 0 ? 0 : 1;

/** Packages with spoiled parts: whatever is thrown, or takes more than 2 s of work. */
function soakPackages(): string[] {
  const writers = fileURLToPath(new URL("../_support/workbooks/writers/", import.meta.url));
  const books = readdirSync(writers).map((name) => new Uint8Array(readFileSync(writers + name)));
  const random = seeded(20_260 + seed);
  const found: string[] = [];
  let refused = 0;
  for (let at = 0; at < count; at += 1) {
    const begun = process.cpuUsage();
    try {
      if (tryPackage(mutatedPackage(random.pick(books), random)) === "refused") refused += 1;
    } catch (error) {
      found.push(`package ${at}: ${(error as Error).stack?.split("\n").slice(0, 3).join(" ")}`);
    }
    if (process.cpuUsage(begun).user > 2_000_000) found.push(`package ${at}: over 2 s`);
    if (at % 2_000 === 0 || at === count - 1)
      console.log(`${at + 1} packages, ${refused} refused, ${found.length} faults`);
  }
  return found;
}

/** Sound rows, so many of each country's habit: what is heard of them above a note, and rows and tonnages read wrong. */
function soakSound(rows: number): string[] {
  return HABITS.flatMap((habit) => {
    const { loud, wrong, rows: read } = auditSound(habit, rows, 1 + seed);
    console.log(`${habit.name}: ${read} rows, ${loud.length} alarms, ${wrong.length} read wrong`);
    const told = loud.map(
      ({ seed: at, finding }) => `${at}: ${finding.code} ${finding.cell} ${finding.message}`,
    );
    return [...told, ...wrong].map((fault) => `${habit.name} ${fault}`);
  });
}

/** Schedules with spoiled cells: whatever is thrown, lost, below nought, or takes more than 1 s of work. */
function soakSchedules(): string[] {
  const random = seeded(20_261 + seed);
  const standards = STANDARD_IDS.map((id) => resolveStandard(id)).filter(
    (each): each is Standard => !isRefusal(each),
  );
  const found: string[] = [];
  for (let at = 0; at < count; at += 1) {
    const begun = process.cpuUsage();
    try {
      const faults = scheduleFaults(
        (at % 2 === 0 ? mutatedSchedule : mutatedList)(random),
        random.pick(standards),
      );
      found.push(...faults.map((fault) => `schedule ${at}: ${fault}`));
    } catch (error) {
      found.push(`schedule ${at}: ${(error as Error).stack?.split("\n").slice(0, 3).join(" ")}`);
    }
    if (process.cpuUsage(begun).user > 1_000_000) found.push(`schedule ${at}: over 1 s`);
    if (at % 2_000 === 0 || at === count - 1) console.log(`${at + 1} schedules, ${found.length} faults`);
  }
  return found;
}
