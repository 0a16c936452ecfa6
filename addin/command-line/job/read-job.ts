import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { isMainThread } from "node:worker_threads";
import { type Rates, readRates } from "../../../core/estimating";
import { allPapers, type BarFilter, type BookDigest, type JudgedJob, judgeJob } from "../../../core/jobs";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { InputRefused } from "../input-refused";
import type { GivenOptions, OptionDefinition } from "../read-options";
import type { Streams } from "../streams";
import { answerByWorkers } from "./book-worker";
import { type BookAnswer, BookDigester, type JobTask } from "./digest-file";
import { filterOf, refuseUnknown } from "./job-asked";
import { openStore } from "./result-store";

/** Options of every command that takes many books. */
export const JOB_OPTIONS: Readonly<Record<"workers" | "no-cache" | "pour" | "size", OptionDefinition>> = {
  pour: { type: "string", multiple: true },
  size: { type: "string", multiple: true },
  workers: { type: "string" },
  "no-cache": { type: "boolean" },
};

/** A job that was read: its books in order, and what all of them together show. */
export interface JobRead {
  readonly answers: readonly BookAnswer[];
  readonly judged: JudgedJob;
  /** of the first book that holds any; null where none does */
  readonly rates: Rates | null;
  /** the digest of a book that could be read */
  digest(answer: BookAnswer): BookDigest;
  /** 2 where a book could not be read, 1 where something is unsafe or unbendable for certain, else 0 */
  readonly exit: 0 | 1 | 2;
  close(): void;
}

/** Fewer books than this a worker are not worth its start. */
const BOOKS_A_WORKER = 6;
const MOST_WORKERS = 64;

/** Reads all books, on as many workers as the machine has cores, and judges them as one job. */
export async function readJob(
  paths: readonly string[],
  task: JobTask,
  given: GivenOptions,
  streams: Streams,
  /** null where what is asked for may stand in another job */
  filter: BarFilter | null = filterOf(given),
): Promise<JobRead> {
  const { store, close } = openStore(programDigest(), !given.flag("no-cache"));
  try {
    const digester = new BookDigester(store, task);
    const workers = workersFor(given.text("workers"), paths.length);
    const report = progressOf(paths.length, streams);
    const start = { task, folder: store.folder, version: store.version };
    const answers =
      workers < 2
        ? paths.map((path, index) => {
            const answer = digester.answer(path);
            report(index + 1);
            return answer;
          })
        : await answerByWorkers(paths, workers, new URL(import.meta.url), start, report);
    streams.progress("");
    const judged = judgeJob(
      answers.flatMap(({ schedules }) => schedules),
      allPapers(answers),
    );
    const digest = (answer: BookAnswer): BookDigest => digester.digest(answer);
    if (filter !== null)
      refuseUnknown(filter, () =>
        answers.flatMap((answer) => (answer.error === null ? digest(answer).bars : [])),
      );
    const isUnread = answers.some(({ error }) => error !== null);
    const exit = isUnread ? 2 : answers.some(({ isBroken }) => isBroken) ? 1 : 0;
    const rates = ratesOfJob(answers, streams);
    return { answers, judged, rates, digest, exit, close };
  } catch (error) {
    close();
    throw error;
  }
}

function ratesOfJob(answers: readonly BookAnswer[], streams: Streams): Rates | null {
  const [first, ...more] = answers.filter(({ rates }) => rates !== null);
  if (first?.rates == null) return null;
  const own = JSON.stringify(first.rates.block);
  const others = more.filter(({ rates }) => JSON.stringify(rates?.block) !== own);
  if (others.length > 0)
    streams.note(`rates are those of ${first.path}: other ones, in ${others.length} books, are not used`);
  const standard = resolveStandard(first.rates.standard);
  return isRefusal(standard) ? null : readRates(first.rates.block, standard);
}

function workersFor(option: string | null, books: number): number {
  if (option === null) return Math.min(availableParallelism(), Math.floor(books / BOOKS_A_WORKER));
  const asked = Number(option);
  if (!Number.isInteger(asked) || asked < 1 || asked > MOST_WORKERS)
    throw new InputRefused(`--workers ${option}: give a whole number from 1 to ${MOST_WORKERS}`);
  return asked;
}

/** Of this program as it runs: what another version worked out is never taken for its own. */
function programDigest(): string {
  if (!isMainThread) throw new Error("a worker is told the version");
  return createHash("sha256")
    .update(readFileSync(new URL(import.meta.url)))
    .digest("hex");
}

const MS_A_SECOND = 1000;
const EVERY_MS = 200;

function progressOf(total: number, streams: Streams): (done: number) => void {
  const start = Date.now();
  let told = start;
  return (done) => {
    const now = Date.now();
    if (now - told < EVERY_MS) return;
    told = now;
    const left = Math.ceil((((now - start) / done) * (total - done)) / MS_A_SECOND);
    streams.progress(`${done} of ${total} books, about ${left} s left`);
  };
}
